import { azimuthBetween, pointAtAzimuth } from './angle';
import { arcLength, longChord } from './curve';
import { distance, type Point } from './point';
import { COINCIDENT_M, MOST_CHORDS } from './tolerances';

// An arc between two points is told by its sweep alone: radians that it turns through on the way, right positive, 0 for the
// straight line, less than a full turn. Its radius follows from the chord. Turned, moved or stretched with its ends it stays an arc.

/** Radius in metres of the arc of this chord and sweep, R = c / (2·sin(Δ/2)); Infinity for a sweep of 0. */
export function radiusOfArc(chord: number, sweep: number): number {
  return sweep === 0 ? Infinity : chord / (2 * Math.sin(Math.abs(sweep) / 2));
}

/** Length in metres along the arc of this chord and sweep. */
export function lengthAlongArc(chord: number, sweep: number): number {
  return sweep === 0 ? chord : arcLength(radiusOfArc(chord, sweep), sweep);
}

/** Area in square metres between an arc and its chord, R²·(|Δ| − sin|Δ|)/2: 0 for a straight leg. */
export function segmentArea(chord: number, sweep: number): number {
  if (sweep === 0) return 0;
  const angle = Math.abs(sweep);
  // under 1e-3 rad Δ − sin Δ cancels: its series Δ³/6 is then exact to 5e-8 of itself
  const excess = angle < 1e-3 ? angle ** 3 / 6 : angle - Math.sin(angle);
  return (radiusOfArc(chord, sweep) ** 2 * excess) / 2;
}

/**
 * Points strictly between the ends of the arc from `a` to `b`, evenly along it and on it, so that no chord is further than
 * `maxSagitta` metres from the arc, as long as `MOST_CHORDS` are enough for that. Empty for a straight leg and for ends within `COINCIDENT_M`. Throws a RangeError unless
 * `maxSagitta` is above 0.
 */
export function pointsOnArc(a: Point, b: Point, sweep: number, maxSagitta: number): readonly Point[] {
  const chord = distance(a, b);
  if (sweep === 0 || chord <= COINCIDENT_M) return [];
  const radius = radiusOfArc(chord, sweep);
  const chords = chordCount(radius, radius * Math.abs(sweep), maxSagitta);
  const tangent = azimuthBetween(a, b) - sweep / 2;
  return Array.from({ length: chords - 1 }, (_, i) => {
    const turned = (sweep * (i + 1)) / chords;
    return pointAtAzimuth(a, tangent + turned / 2, longChord(radius, turned));
  });
}

/**
 * Chords for `length` metres of arc of which none is further than `maxSagitta` metres from it, up to `MOST_CHORDS`: a chord over the angle θ is
 * 2R·sin²(θ/4) from its arc at the middle. Throws a RangeError unless `maxSagitta` is above 0.
 */
export function chordCount(radius: number, length: number, maxSagitta: number): number {
  if (!(maxSagitta > 0)) throw new RangeError(`maxSagitta ${maxSagitta}`);
  const widest = 4 * Math.asin(Math.sqrt(Math.min(1, maxSagitta / radius) / 2));
  return Math.min(MOST_CHORDS, Math.max(1, Math.ceil(length / radius / widest)));
}
