import { fail, ok, type Point, type Result } from '@footmark/geometry';
import { type Grid, type GridUnit, planToGrid } from '@footmark/grid';
import type { Derived, Site } from '@footmark/site';
import { tableUnit } from '../tableCells';
import type { EarthProblem } from './onEarth';

/** Which coordinates a file has: those of the plan in the site's unit, or those of a grid in its own. */
export type Coordinates = { readonly is: 'site' } | { readonly is: 'grid'; readonly grid: Grid };

/** A way from the plan (m) into a file's coordinates: x east, y north, in `unit`. */
export type FileFrame = {
  readonly unit: GridUnit;
  place(p: Point): Result<Point, EarthProblem>;
};

/** How places of a site are given in a file. A grid needs a site that lies on the earth. */
export function fileFrame(
  site: Site,
  { frame }: Pick<Derived, 'frame'>,
  coordinates: Coordinates,
): Result<FileFrame, EarthProblem> {
  if (coordinates.is === 'site') {
    const unit = tableUnit(site);
    return ok({ unit, place: ({ x, y }) => ok({ x: x / unit.metres, y: y / unit.metres }) });
  }
  const { toEarth } = frame;
  if (toEarth === null) return fail('not-on-the-earth');
  const { grid } = coordinates;
  return ok({
    unit: grid.system.unit,
    place: (p) => {
      const at = planToGrid(grid, toEarth, p);
      return at.ok ? ok({ x: at.value.easting, y: at.value.northing }) : at;
    },
  });
}
