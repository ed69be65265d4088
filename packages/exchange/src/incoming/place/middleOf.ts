import type { IncomingThing } from '../incoming';
import type { IncomingFrame } from './incomingAnswers';
import { eastNorth } from './toEarth';

/** The middle of the box about all points, in the file's own coordinates; of degrees, across the date line too. Null without a point. */
export function middleOf(
  things: readonly IncomingThing[],
  frame: IncomingFrame,
): readonly [number, number] | null {
  const first = things[0]?.points[0];
  if (first === undefined) return null;
  const [from] = eastNorth(first, frame);
  const earth = frame.coordinates.is === 'earth';
  // degrees the short way round from the first of them
  const eastward = (e: number) => (earth ? e - 360 * Math.round((e - from) / 360) : e);
  let [west, east, south, north] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { points } of things) {
    for (const p of points) {
      const [e, n] = eastNorth(p, frame);
      west = Math.min(west, eastward(e));
      east = Math.max(east, eastward(e));
      south = Math.min(south, n);
      north = Math.max(north, n);
    }
  }
  const middle = (west + east) / 2;
  return [earth && Math.abs(middle) > 180 ? middle - 360 * Math.sign(middle) : middle, (south + north) / 2];
}
