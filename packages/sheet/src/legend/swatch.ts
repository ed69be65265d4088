import type { LinePrimitive, Primitive } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';

/** A sample of what is drawn in a legend, mm. */
export const SWATCH = { width: 11, height: 4.6 } as const;

/** Crowns, trunks and other discs are sampled this large (radius, mm) at most. */
const DISC_MM = 1.9;

const MIDDLE: Point = { x: SWATCH.width / 2, y: SWATCH.height / 2 };
const LEVEL: readonly Point[] = [
  { x: 0, y: SWATCH.height / 2 },
  { x: SWATCH.width, y: SWATCH.height / 2 },
];
const PATCH: readonly Point[] = [
  { x: 0, y: 0.4 },
  { x: SWATCH.width, y: 0.4 },
  { x: SWATCH.width, y: SWATCH.height - 0.4 },
  { x: 0, y: SWATCH.height - 0.4 },
];

/** The primitives of one thing as a sample of a millimetre to the metre, to be painted at a scale of 1. */
export function swatchOf(primitives: readonly Primitive[]): readonly Primitive[] {
  const upright = primitives.filter((p) => p.kind === 'symbol' && p.azimuth === 0);
  // a thing of one symbol is that; lines lead from it to something else
  const own = upright.length > 0 ? primitives.filter((p) => p.kind !== 'line' || p.closed) : primitives;
  return samplesOf(own);
}

function samplesOf(primitives: readonly Primitive[]): readonly Primitive[] {
  const largest = Math.max(0, ...primitives.map((p) => (p.kind === 'circle' ? p.radius : 0)));
  const seen = new Set<string>();
  return primitives.flatMap((primitive) => {
    const sample = shortDashes(sampleOf(primitive, largest));
    // parts that differ in place only are sampled once
    const key = lookOf(primitive) + (primitive.kind === 'circle' ? primitive.radius : '');
    if (seen.has(key)) return [];
    seen.add(key);
    return [sample];
  });
}

function sampleOf(of: Primitive, largest: number): Primitive {
  switch (of.kind) {
    case 'symbol':
      return { ...of, at: MIDDLE, azimuth: turnsWithPlan(of.azimuth) ? Math.PI / 2 : 0 };
    case 'circle':
      return { ...of, centre: MIDDLE, radius: Math.max(0.35, (of.radius / largest) * DISC_MM) };
    case 'line':
      return isRound(of.points, of.closed)
        ? { ...of, points: ringOf(DISC_MM) }
        : isArea(of)
          ? { ...of, points: PATCH }
          : { ...of, points: LEVEL, closed: false };
    case 'pattern':
      return { ...of, points: LEVEL, closed: false };
  }
}

const turnsWithPlan = (azimuth: number) => azimuth !== 0;

/** A line whose dashes are longer than a sample is sampled with shorter ones. */
function shortDashes(of: Primitive): Primitive {
  if ((of.kind !== 'line' && of.kind !== 'circle') || of.stroke?.dash === undefined) return of;
  const period = of.stroke.dash.reduce((sum, d) => sum + d, 0);
  const factor = Math.min(1, SWATCH.width / (PERIODS * period));
  return { ...of, stroke: { ...of.stroke, dash: of.stroke.dash.map((d) => d * factor) } };
}

/** How often a sample shows a line's dashes. */
const PERIODS = 1.3;

/** Crowns and zones are drawn as outlines of many points. */
function isRound(points: readonly Point[], closed: boolean): boolean {
  if (!closed || points.length <= MOST_CORNERS) return false;
  const n = points.length;
  const centre = {
    x: points.reduce((sum, p) => sum + p.x, 0) / n,
    y: points.reduce((sum, p) => sum + p.y, 0) / n,
  };
  const angles = points.map((p) => Math.atan2(p.y - centre.y, p.x - centre.x)).sort((a, b) => a - b);
  const gaps = angles.map((a, i) => (angles[(i + 1) % n] ?? a) - a + (i === n - 1 ? 2 * Math.PI : 0));
  // corners all around
  return Math.max(...gaps) < WIDEST_GAP;
}

const WIDEST_GAP = Math.PI / 4;

/** An outline without anything inside is known by its line. */
function isArea({ closed, fill, stroke }: LinePrimitive): boolean {
  return closed && (fill !== undefined || (stroke?.dash?.length ?? 0) < 4);
}

const MOST_CORNERS = 16;

function ringOf(radius: number): readonly Point[] {
  return Array.from({ length: 32 }, (_, i) => {
    const angle = (i / 32) * 2 * Math.PI;
    return { x: MIDDLE.x + radius * Math.cos(angle), y: MIDDLE.y + radius * Math.sin(angle) };
  });
}

/** All that makes a primitive look as it does, without where it is. */
export function lookOf(of: Primitive): string {
  switch (of.kind) {
    case 'line':
      return JSON.stringify([of.kind, of.closed, of.stroke, of.fill]);
    case 'circle':
      return JSON.stringify([of.kind, of.stroke, of.fill]);
    case 'symbol':
      return JSON.stringify([of.symbol, of.stroke, of.fill]);
    case 'pattern':
      return JSON.stringify([of.pattern, of.stroke]);
  }
}
