import { WITHIN_95 } from '../rules/sigmas';
import { invertAt, lineThrough } from './profileLine';
import type { ProfileDrop, ProfilePoint } from './profilePoints';

/** A place this many times less sure than the line that runs past it says nothing that bends the line, unless it contradicts it. */
const LESS_SURE = 2;

/**
 * The places, by station, through which the line of a pipe is drawn. A rough depth between two good levels is left out of it where the
 * straight line between them agrees with it (95 %): its error would bend the pipe that is not bent.
 */
export function firmPoints(
  points: readonly ProfilePoint[],
  drops: readonly ProfileDrop[],
): readonly ProfilePoint[] {
  const firm: ProfilePoint[] = [];
  for (const point of points.toSorted((a, b) => a.sigma - b.sigma)) {
    const there = invertAt(lineThrough(firm, drops, []), point.station);
    const agrees =
      there?.by === 'between' &&
      point.sigma > LESS_SURE * there.sigma &&
      Math.abs(point.invert - there.invert) <= WITHIN_95 * Math.hypot(point.sigma, there.sigma);
    if (agrees) continue;
    firm.push(point);
    firm.sort((a, b) => a.station - b.station);
  }
  return firm;
}
