import { fail, ok, type Result } from '@footmark/geometry';
import { gridToEarth } from '@footmark/grid';
import type { EarthPoint, ProjectionProblem } from '@footmark/site';
import type { IncomingPoint } from '../incoming';
import type { IncomingFrame } from './incomingAnswers';

/** Easting (or longitude) and northing (or latitude) of a point, by the order in which its file has them. */
export function eastNorth(
  p: IncomingPoint,
  { order }: Pick<IncomingFrame, 'order'>,
): readonly [number, number] {
  return order === 'NE' ? [p.second, p.first] : [p.first, p.second];
}

/** The place on the earth of degrees or of coordinates in a grid, which are in the frame's unit. */
export function toEarth(
  [east, north]: readonly [number, number],
  { coordinates }: Pick<IncomingFrame, 'coordinates'>,
): Result<EarthPoint, ProjectionProblem> {
  if (coordinates.is === 'grid') {
    const factor = coordinates.unit.metres / coordinates.grid.system.unit.metres;
    return gridToEarth(coordinates.grid, { easting: east * factor, northing: north * factor });
  }
  if (Math.abs(north) > 90 || Math.abs(east) > 180) return fail('off-the-map');
  return ok({ latitudeDeg: north, longitudeDeg: east });
}
