import { crownOutline } from './crown';
import { strokeLetters } from './letters';
import { markSymbols } from './markSymbols';
import { circle, diagonals, line, ORIGIN, ring, square, triangle } from './parts';
import type { SymbolName, SymbolPart, SymbolShape } from './symbolShape';

const paperCrown = crownOutline(ORIGIN, 4, 1.7, 11);

/**
 * The point symbols, in paper mm. Letters and forms are general drafting practice (common practice, no source).
 */
export const symbols: Readonly<Record<SymbolName, SymbolShape>> = {
  cleanout: { parts: [circle('cover', 1.9), ...strokeLetters('CO', 1.3)], clear: 2.1 },
  stack: { parts: [circle('cover', 1.5), ...strokeLetters('S', 1.45)], clear: 1.7 },
  'floor-drain': {
    parts: [square('cover', 1.4), circle('stroke', 1.05), ...diagonals(0.74)],
    clear: 2,
  },
  fixture: { parts: [circle('cover', 1.1), circle('ink', 0.35)], clear: 1.3 },
  manhole: {
    parts: [circle('cover', 2.6), circle('stroke', 2.15), ...strokeLetters('MH', 1.35)],
    clear: 2.8,
  },
  tap: { parts: [circle('cover', 1.2), circle('ink', 0.6)], clear: 1.4 },
  tree: { parts: [{ paint: 'stroke', kind: 'line', points: paperCrown, closed: true }], clear: 1.4 },
  trunk: { parts: [circle('ink', 0.6), circle('stroke', 1.1)], clear: 1.3 },
  well: { parts: [circle('cover', 1.9), ...strokeLetters('W', 1.3)], clear: 2.1 },
  pole: { parts: [circle('cover', 1.1), circle('ink', 0.5), line('stroke', [-2, 0], [2, 0])], clear: 1.8 },
  hydrant: {
    parts: [
      circle('cover', 1.2),
      line('stroke', [-2, 0], [-1.2, 0]),
      line('stroke', [1.2, 0], [2, 0]),
      line('stroke', [-2, -0.6], [-2, 0.6]),
      line('stroke', [2, -0.6], [2, 0.6]),
      circle('ink', 0.45),
    ],
    clear: 2.1,
  },
  meter: { parts: [square('cover', 1.4), ...strokeLetters('M', 1.4)], clear: 2 },
  // a cross that reaches the ring: what a receiver's sweeps from two directions leave on the ground
  locate: {
    parts: [circle('cover', 1.3), line('stroke', [-1.3, 0], [1.3, 0]), line('stroke', [0, -1.3], [0, 1.3])],
    clear: 1.5,
  },
  'reference-point': { parts: [triangle('cover', 1.9), circle('ink', 0.32)], clear: 1.9 },
  benchmark: {
    parts: [
      circle('cover', 1.5),
      ring('ink', [0, 0], [1.5, 0], [1.06, 1.06], [0, 1.5]),
      ring('ink', [0, 0], [-1.5, 0], [-1.06, -1.06], [0, -1.5]),
      line('stroke', [-2.2, 0], [2.2, 0]),
      line('stroke', [0, -2.2], [0, 2.2]),
    ],
    clear: 2.3,
  },
  'spot-level': { parts: [...diagonals(0.8)], clear: 1.1 },
  note: { parts: [circle('ink', 0.5)], clear: 0.9 },
  'photo-point': {
    parts: [ring('cover', [-1.6, -1.1], [1.6, -1.1], [1.6, 1.1], [-1.6, 1.1]), circle('stroke', 0.65)],
    clear: 1.9,
  },
  ...markSymbols,
  'mark-chosen': {
    parts: [
      circle('stroke', 3.1),
      line('stroke', [0, 2.6], [0, 4]),
      line('stroke', [0, -2.6], [0, -4]),
      line('stroke', [2.6, 0], [4, 0]),
      line('stroke', [-2.6, 0], [-4, 0]),
    ],
    clear: 4,
  },
  // a ring with gaps: what is below is not painted here
  'mark-open': { parts: [...gappedRing(1.2), circle('ink', 0.3)], clear: 1.4 },
  // a nail in a square, at a bend in a diamond
  'set-out-point': { parts: [square('cover', 0.95), circle('ink', 0.3)], clear: 1.4 },
  'set-out-bend': {
    parts: [ring('cover', [0, 1.75], [1.75, 0], [0, -1.75], [-1.75, 0]), circle('ink', 0.3)],
    clear: 1.9,
  },
  'mark-fitted': { parts: [circle('cover', 0.75)], clear: 0.9 },
  'fitted-point': { parts: [circle('cover', 0.55)], clear: 0.7 },
  'sonde-computed': { parts: [circle('ink', 0.45)], clear: 0.5 },
  'tie-end': { parts: [circle('cover', 0.8), circle('ink', 0.3)], clear: 1 },
  'tie-end-around': { parts: [circle('stroke', 2.25)], clear: 2.4 },
  'flow-arrow': { parts: [ring('ink', [0, 1.5], [0.85, -0.9], [0, -0.45], [-0.85, -0.9])], clear: 1.5 },
  'station-tick': { parts: [line('stroke', [-1.1, 0], [1.1, 0])], clear: 1.2 },
  'land-crossing': { parts: [line('stroke', [-3, 0], [3, 0])], clear: 3 },
  'pipe-change': {
    parts: [line('stroke', [-1.5, 0.35], [1.5, 0.35]), line('stroke', [-1.5, -0.35], [1.5, -0.35])],
    clear: 1.5,
  },
  'pipe-end': { parts: [line('stroke', [-1, 0], [1, 0])], clear: 1 },
  'dimension-end': { parts: [line('stroke', [-0.7, -0.7], [0.7, 0.7])], clear: 0.7 },
  ladder: {
    parts: [
      ring('bare', [-0.8, -2.2], [0.8, -2.2], [0.8, 2.2], [-0.8, 2.2]),
      line('stroke', [-0.8, -2.2], [-0.8, 2.2]),
      line('stroke', [0.8, -2.2], [0.8, 2.2]),
      ...[-1.5, -0.5, 0.5, 1.5].map((y) => line('stroke', [-0.8, y], [0.8, y])),
    ],
    clear: 2.3,
  },
};

/** Four arcs of a ring, each with as much of a gap after it. */
function gappedRing(radius: number): readonly SymbolPart[] {
  const steps = 6;
  return [0, 1, 2, 3].map((quarter) =>
    line(
      'stroke',
      ...Array.from({ length: steps + 1 }, (_, i): readonly [number, number] => {
        const angle = (Math.PI / 2) * (quarter - 0.28 + (0.56 * i) / steps);
        return [radius * Math.cos(angle), radius * Math.sin(angle)];
      }),
    ),
  );
}
