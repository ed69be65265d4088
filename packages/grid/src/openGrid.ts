import { ok, type Point, type Result } from '@footmark/geometry';
import {
  type DefinitionProblem,
  type EarthFit,
  type EarthPoint,
  earthToPlan,
  type MapProjection,
  mapProjection,
  type ProjectionProblem,
  planToEarth,
} from '@footmark/site';
import type { GridSystem } from './gridSystem';

/** A place in a grid, in the grid's own unit. */
export type GridPoint = { readonly easting: number; readonly northing: number };

/** A system with its projection, ready to compute with. */
export type Grid = { readonly system: GridSystem; readonly projection: MapProjection };

/** Reads a system's definition once, for many points. */
export function openGrid(system: GridSystem): Result<Grid, DefinitionProblem> {
  const projection = mapProjection(system.definition);
  return projection.ok ? ok({ system, projection: projection.value }) : projection;
}

/** The grid coordinates of a place on the earth (WGS 84). */
export function earthToGrid(grid: Grid, place: EarthPoint): Result<GridPoint, ProjectionProblem> {
  const at = grid.projection.fromEarth(place);
  return at.ok ? ok({ easting: at.value.x, northing: at.value.y }) : at;
}

/** The place on the earth (WGS 84) of grid coordinates. */
export function gridToEarth(grid: Grid, at: GridPoint): Result<EarthPoint, ProjectionProblem> {
  return grid.projection.toEarth({ x: at.easting, y: at.northing });
}

/** The grid coordinates of a place in the plan (m) of a site that lies on the earth. */
export function planToGrid(grid: Grid, fit: EarthFit, p: Point): Result<GridPoint, ProjectionProblem> {
  const place = planToEarth(fit, p);
  return place.ok ? earthToGrid(grid, place.value) : place;
}

/** The place in the plan (m) of grid coordinates. */
export function gridToPlan(grid: Grid, fit: EarthFit, at: GridPoint): Result<Point, ProjectionProblem> {
  const place = gridToEarth(grid, at);
  return place.ok ? earthToPlan(fit, place.value) : place;
}
