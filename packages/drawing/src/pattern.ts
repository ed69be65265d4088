import { azimuthBetween, distance, interpolate, type Point, pointAtAzimuth } from '@footmark/geometry';
import type { LinePrimitive, PatternPrimitive, Stroke, SymbolPrimitive } from './primitive';

/** Ornaments on one line: beyond it they are spaced wider, so that a mistyped kilometre cannot stop the program. */
const MOST_ORNAMENTS = 4000;
const FENCE_CROSS_MM = 0.9;
const HEDGE_HALF_WIDTH_MM = 1.4;
const CURB_WIDTH_MM = 0.9;
const WALL_TOOTH_MM = 1.2;
const UNSEEN_HALF_WIDTH_MM = 1.6;
const SLOPE_TICK_MM = 3;
const SCALLOP_POINTS = 6;
const RIGHT = Math.PI / 2;
/** How far (rad) the strokes over what nobody has seen lean to the right of the line. */
const UNSEEN_LEAN = Math.PI / 4;

type Place = Readonly<{ point: Point; azimuth: number }>;

/**
 * The lines and symbols that a pattern is at a scale (`mmPerMetre`: paper mm to a metre of plan). A line without length gives
 * nothing.
 */
export function expandPattern(
  of: PatternPrimitive,
  mmPerMetre: number,
): readonly (LinePrimitive | SymbolPrimitive)[] {
  const metres = (mm: number) => mm / mmPerMetre;
  const places = placesAlong(of.points, of.closed, metres(of.spacing));
  if (places.length === 0) return [];
  const { dash: _dash, ...solid } = of.stroke;
  const base = lineOf(of, of.points, of.closed, of.stroke);
  const bit = (points: readonly Point[]) => lineOf(of, points, false, solid);
  switch (of.pattern) {
    case 'fence':
      return [
        base,
        ...places.flatMap(({ point, azimuth }) =>
          [Math.PI / 4, -Math.PI / 4].map((turn) =>
            bit([
              pointAtAzimuth(point, azimuth + turn, metres(FENCE_CROSS_MM)),
              pointAtAzimuth(point, azimuth + turn, -metres(FENCE_CROSS_MM)),
            ]),
          ),
        ),
      ];
    case 'retaining-wall':
      return [
        base,
        ...places.map(({ point, azimuth }) =>
          bit([point, pointAtAzimuth(point, azimuth + RIGHT, metres(WALL_TOOTH_MM))]),
        ),
      ];
    case 'slope':
      return places.map(({ point, azimuth }, i) => {
        const down = Math.min(metres(SLOPE_TICK_MM), of.reach ?? Infinity) / (i % 2 === 0 ? 1 : 2);
        return bit([point, pointAtAzimuth(point, azimuth + RIGHT, down)]);
      });
    case 'curb':
      return [
        base,
        lineOf(of, offsetBeside(of.points, of.closed, metres(CURB_WIDTH_MM)), of.closed, of.stroke),
      ];
    case 'hedge':
      return [lineOf(of, scallops(places, metres(of.spacing), metres(HEDGE_HALF_WIDTH_MM)), true, of.stroke)];
    case 'unseen':
      return places.map(({ point, azimuth }) =>
        bit([
          pointAtAzimuth(point, azimuth + UNSEEN_LEAN, -metres(UNSEEN_HALF_WIDTH_MM) / Math.sin(UNSEEN_LEAN)),
          pointAtAzimuth(point, azimuth + UNSEEN_LEAN, metres(UNSEEN_HALF_WIDTH_MM) / Math.sin(UNSEEN_LEAN)),
        ]),
      );
    case 'flow':
      return places.map(({ point, azimuth }) => ({
        kind: 'symbol',
        at: point,
        symbol: 'flow-arrow',
        azimuth,
        stroke: solid,
        ...(of.target === undefined ? {} : { target: of.target }),
      }));
  }
}

function lineOf(
  of: PatternPrimitive,
  points: readonly Point[],
  closed: boolean,
  stroke: Stroke,
): LinePrimitive {
  return { kind: 'line', points, closed, stroke, ...(of.target === undefined ? {} : { target: of.target }) };
}

/** Places every `spacing` metres, the rest shared by both ends; at least one, in the middle. */
function placesAlong(points: readonly Point[], closed: boolean, spacing: number): readonly Place[] {
  const [first] = points;
  const course = closed && first !== undefined ? [...points, first] : points;
  const legs = course.slice(1).map((to, i) => {
    const from = course[i] ?? to;
    return { from, to, length: distance(from, to), azimuth: azimuthBetween(from, to) };
  });
  const length = legs.reduce((sum, leg) => sum + leg.length, 0);
  if (!(length > 0)) return [];
  const step = Math.max(spacing, length / MOST_ORNAMENTS);
  const count = Math.max(1, Math.floor(length / step));
  const places: Place[] = [];
  let leg = 0;
  let passed = 0;
  for (let k = 0; k < count; k += 1) {
    const along = (length - (count - 1) * step) / 2 + k * step;
    while (leg < legs.length - 1 && passed + (legs[leg]?.length ?? 0) < along) {
      passed += legs[leg]?.length ?? 0;
      leg += 1;
    }
    const on = legs[leg];
    if (on === undefined || on.length === 0) continue;
    places.push({ point: interpolate(on.from, on.to, (along - passed) / on.length), azimuth: on.azimuth });
  }
  return places;
}

/** Corners moved to the left along the bisector; good for the gentle turns of a curb. */
function offsetBeside(points: readonly Point[], closed: boolean, left: number): readonly Point[] {
  return points.map((p, i) => {
    const before = points[i - 1] ?? (closed ? points.at(-1) : undefined);
    const after = points[i + 1] ?? (closed ? points[0] : undefined);
    const into = before === undefined ? undefined : azimuthBetween(before, p);
    const out = after === undefined ? undefined : azimuthBetween(p, after);
    const a = into ?? out ?? 0;
    const b = out ?? a;
    const half = Math.atan2(Math.sin(b - a), Math.cos(b - a)) / 2;
    return pointAtAzimuth(p, a + half - RIGHT, left / Math.max(0.5, Math.cos(half)));
  });
}

/** Round scallops up one side of the line and down the other. */
function scallops(places: readonly Place[], width: number, half: number): readonly Point[] {
  const side = (on: readonly Place[], reversed: boolean) =>
    on.flatMap(({ point, azimuth }) =>
      Array.from({ length: SCALLOP_POINTS }, (_, i) => {
        const t = (i + 0.5) / SCALLOP_POINTS;
        const along = pointAtAzimuth(point, azimuth, (reversed ? 0.5 - t : t - 0.5) * width);
        const out = half * (0.5 + 0.5 * Math.sin(Math.PI * t));
        return pointAtAzimuth(along, azimuth + (reversed ? RIGHT : -RIGHT), out);
      }),
    );
  return [...side(places, false), ...side(places.toReversed(), true)];
}
