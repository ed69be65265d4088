import type { GroundState } from '@footmark/site';
import { groundStates, type MarkBase, type MarkSymbolName, markBases } from './markSymbolNames';
import { circle, diagonals, line, ring, square } from './parts';
import type { SymbolPart, SymbolShape } from './symbolShape';

type Ground = GroundState['state'];

/** Radius of a mark's ring, its parts while nothing was done about it, and those when it is painted. */
type Base = Readonly<{
  radius: number;
  parts: readonly SymbolPart[];
  painted: readonly SymbolPart[];
  clear: number;
}>;

/** Half the bare cross that a painted defect leaves, mm. */
const HALF_GAP = 0.26;
const ARC_STEPS = 8;

const BASES: Readonly<Record<MarkBase, Base>> = {
  'mark-defect': {
    radius: 1.7,
    parts: [circle('cover', 1.7), ...diagonals(1.02)],
    painted: [circle('cover', 1.7), ...[0, 1, 2, 3].map((quarter) => quarterDisc(1.7, quarter))],
    clear: 2,
  },
  'mark-landmark': {
    radius: 1.05,
    parts: [circle('cover', 1.05)],
    painted: [circle('cover', 1.05), circle('ink', 1.05)],
    clear: 1.4,
  },
  // outside of the largest symbol of the drain but the manhole's
  'mark-landmark-around': {
    radius: 2.6,
    parts: [circle('stroke', 2.6)],
    painted: [{ ...circle('stroke', 2.6), weight: 2 }],
    clear: 3.1,
  },
};

/**
 * The marks, in paper mm: what a paint can draws, and by form, not by colour, what was done about them. Painted: filled; flagged: a flag
 * stands on it; dug: in the square of a hole, hatched; found: ticked off.
 */
export const markSymbols = Object.fromEntries(
  markBases.flatMap((name) => [
    [name, { parts: BASES[name].parts, clear: BASES[name].clear }],
    ...groundStates.map((state) => [`${name}-${state}`, shapeOf(BASES[name], state)]),
  ]),
) as Readonly<Record<MarkSymbolName, SymbolShape>>; // one entry for each base, and for each of its states

function shapeOf({ radius, parts, painted, clear }: Base, state: Ground): SymbolShape {
  switch (state) {
    case 'painted':
      return { parts: painted, clear };
    case 'flagged':
      return { parts: [...flag(radius), ...parts], clear: radius + 2.9 };
    case 'dug': {
      const half = radius + 0.7;
      return { parts: [square('stroke', half), ...hatch(half, radius), ...parts], clear: half * Math.SQRT2 };
    }
    case 'found': {
      const at = radius * Math.SQRT1_2;
      return { parts: [...parts, ...tick(at)], clear: Math.hypot(at + 2, at + 1.9) };
    }
  }
}

/** A pennant on a staff that stands on the ring, on bare paper, so that it is seen before the pipe. */
function flag(radius: number): readonly SymbolPart[] {
  const top = radius + 2.9;
  return [
    ring('bare', [-0.5, radius], [-0.5, top + 0.5], [2.9, top - 0.95], [0.5, top - 2.4], [0.5, radius]),
    line('stroke', [0, radius], [0, top]),
    ring('ink', [0, top], [2.1, top - 0.95], [0, top - 1.9]),
  ];
}

/** A tick to the upper right of a place on the diagonal, on bare paper. */
function tick(at: number): readonly SymbolPart[] {
  const [left, foot, tip] = [
    [at + 0.15, at + 0.4],
    [at + 0.8, at - 0.3],
    [at + 2, at + 1.9],
  ] as const;
  const behind = ring(
    'bare',
    [left[0] - 0.45, left[1] + 0.2],
    [foot[0] - 0.05, foot[1] - 0.75],
    [tip[0] + 0.6, tip[1] - 0.1],
    [tip[0] - 0.15, tip[1] + 0.6],
    [foot[0] - 0.05, foot[1] + 0.65],
    [left[0] + 0.2, left[1] + 0.55],
  );
  return [behind, { ...line('stroke', left, foot, tip), weight: 1.6 }];
}

/** A quarter of a disc about +x turned by `quarter` right angles, without a gap along both diagonals. */
function quarterDisc(radius: number, quarter: number): SymbolPart {
  const axis = (quarter * Math.PI) / 2;
  const half = Math.PI / 4 - Math.asin(HALF_GAP / radius);
  const tip = HALF_GAP * Math.SQRT2;
  const rim = Array.from({ length: ARC_STEPS + 1 }, (_, i): readonly [number, number] => {
    const angle = axis - half + (2 * half * i) / ARC_STEPS;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
  return ring('ink', [tip * Math.cos(axis), tip * Math.sin(axis)], ...rim);
}

/** Hatching from lower left to upper right in a square of half a side, but for the disc in its middle. */
function hatch(half: number, radius: number): readonly SymbolPart[] {
  const spacing = 0.8;
  const parts: SymbolPart[] = [];
  const reach = Math.floor((half * Math.SQRT2 - 0.2) / spacing);
  for (let k = -reach; k <= reach; k += 1) {
    const off = k * spacing;
    // along the line from its middle: to the square's side, and to the disc's rim
    const toSide = half * Math.SQRT2 - Math.abs(off);
    const toRim = Math.abs(off) < radius ? Math.sqrt(radius ** 2 - off ** 2) : 0;
    if (toSide <= toRim) continue;
    const at = (along: number): readonly [number, number] => [
      (along - off) * Math.SQRT1_2,
      (along + off) * Math.SQRT1_2,
    ];
    const pieces = toRim === 0 ? [[-toSide, toSide]] : [[-toSide, -toRim], [toRim, toSide]]; // biome-ignore format: pairs
    for (const [from = 0, to = 0] of pieces)
      parts.push({ ...line('stroke', at(from), at(to)), weight: 0.45 });
  }
  return parts;
}
