import { pointAtAzimuth } from './angle';
import { arcLength, longChord } from './curve';
import { add, type Point, scale, subtract } from './point';

/**
 * One side of a traverse as it was measured: metres and radians. An arc is given by its radius, the `sweep` that it turns
 * through (right positive) and the azimuth of its chord.
 */
export type TraverseLeg =
  | Readonly<{ kind: 'straight'; azimuth: number; distance: number }>
  | Readonly<{ kind: 'arc'; radius: number; sweep: number; chordAzimuth: number }>;

/** What the sides of a closed traverse add up to: metres. */
export type TraverseClosure = Readonly<{
  /** Departure (x) and latitude (y) of each side. */
  sides: readonly Point[];
  /** Sum of departures and latitudes: from where the traverse began to where it came out. */
  misclosure: Point;
  misclosureLength: number;
  /** Along the sides, round the arcs. */
  perimeter: number;
  /** The n of 1:n, perimeter over misclosure; Infinity for one that closes. */
  ratio: number;
}>;

const ORIGIN: Point = { x: 0, y: 0 };

/** Departure (x, east-ish) and latitude (y, north-ish) of a side, metres; of an arc, those of its chord. */
export function departureLatitude(leg: TraverseLeg): Point {
  return leg.kind === 'straight'
    ? pointAtAzimuth(ORIGIN, leg.azimuth, leg.distance)
    : pointAtAzimuth(ORIGIN, leg.chordAzimuth, longChord(leg.radius, leg.sweep));
}

/** Length of a side along itself, metres. */
export function lengthOfLeg(leg: TraverseLeg): number {
  return leg.kind === 'straight' ? leg.distance : arcLength(leg.radius, leg.sweep);
}

/** How the sides of a traverse close. No sides close with a perimeter of 0. */
export function traverseClosure(legs: readonly TraverseLeg[]): TraverseClosure {
  const sides = legs.map(departureLatitude);
  const misclosure = sides.reduce(add, ORIGIN);
  const misclosureLength = Math.hypot(misclosure.x, misclosure.y);
  const perimeter = legs.reduce((sum, leg) => sum + lengthOfLeg(leg), 0);
  return {
    sides,
    misclosure,
    misclosureLength,
    perimeter,
    ratio: misclosureLength === 0 ? Infinity : perimeter / misclosureLength,
  };
}

/**
 * Departures and latitudes that close: each side takes of the misclosure the share that its length has of the perimeter (compass
 * rule of Bowditch, any surveying text). An arc shares by its length along, and its chord takes the correction. Sides without any
 * length are given back as they are.
 */
export function compassBalance(legs: readonly TraverseLeg[]): readonly Point[] {
  const { sides, misclosure, perimeter } = traverseClosure(legs);
  if (perimeter === 0) return sides;
  return legs.map((leg, i) => subtract(sides[i] ?? ORIGIN, scale(misclosure, lengthOfLeg(leg) / perimeter)));
}
