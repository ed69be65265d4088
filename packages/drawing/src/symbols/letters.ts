import type { Point } from '@footmark/geometry';
import type { SymbolPart } from './symbolShape';

type Glyph = Readonly<{ width: number; strokes: readonly (readonly Point[])[] }>;

const ARC_STEPS = 14;

/** An elliptic arc; angles in degrees, counter-clockwise from +x. */
function arc(x: number, y: number, rx: number, ry: number, from: number, to: number): readonly Point[] {
  return Array.from({ length: ARC_STEPS + 1 }, (_, i) => {
    const angle = ((from + ((to - from) * i) / ARC_STEPS) * Math.PI) / 180;
    return { x: x + rx * Math.cos(angle), y: y + ry * Math.sin(angle) };
  });
}

function line(...xy: readonly (readonly [number, number])[]): readonly Point[] {
  return xy.map(([x, y]) => ({ x, y }));
}

/** Single-stroke capitals as drawn with a lettering guide, one unit high from y = 0. */
const glyphs: Readonly<Record<string, Glyph>> = {
  C: { width: 0.7, strokes: [arc(0.4, 0.5, 0.4, 0.5, 48, 312)] },
  D: {
    width: 0.7,
    strokes: [[...line([0.25, 0], [0, 0], [0, 1], [0.25, 1]), ...arc(0.25, 0.5, 0.45, 0.5, 90, -90)]],
  },
  F: { width: 0.58, strokes: [line([0, 0], [0, 1], [0.58, 1]), line([0, 0.52], [0.48, 0.52])] },
  H: {
    width: 0.66,
    strokes: [line([0, 0], [0, 1]), line([0.66, 0], [0.66, 1]), line([0, 0.52], [0.66, 0.52])],
  },
  M: { width: 0.8, strokes: [line([0, 0], [0, 1], [0.4, 0.3], [0.8, 1], [0.8, 0])] },
  O: { width: 0.8, strokes: [arc(0.4, 0.5, 0.4, 0.5, 0, 360)] },
  S: {
    width: 0.6,
    strokes: [[...arc(0.3, 0.74, 0.29, 0.26, 40, 270), ...arc(0.3, 0.24, 0.3, 0.24, 90, -140)]],
  },
  W: { width: 1, strokes: [line([0, 1], [0.25, 0], [0.5, 0.8], [0.75, 0], [1, 1])] },
};

/** Share of the height between two letters. */
const SPACING = 0.24;

/**
 * A word in single strokes, `height` mm tall and centred on (0, 0). Throws a RangeError for a letter that has no
 * glyph yet.
 */
export function strokeLetters(word: string, height: number): readonly SymbolPart[] {
  const shapes = [...word].map((letter) => {
    const glyph = glyphs[letter];
    if (glyph === undefined) throw new RangeError(`no glyph for ${letter}`);
    return glyph;
  });
  const total = shapes.reduce((sum, g) => sum + g.width, 0) + SPACING * (shapes.length - 1);
  const parts: SymbolPart[] = [];
  let left = -total / 2;
  for (const glyph of shapes) {
    for (const stroke of glyph.strokes) {
      const points = stroke.map((p) => ({ x: (left + p.x) * height, y: (p.y - 0.5) * height }));
      parts.push({ paint: 'stroke', kind: 'line', points, closed: false });
    }
    left += glyph.width + SPACING;
  }
  return parts;
}
