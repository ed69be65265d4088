import { ok, type Result } from '@footmark/geometry';
import type { EarthPoint, ProjectionProblem } from '@footmark/site';
import type { Grid } from './openGrid';

/**
 * Mean radius of the earth (m) for reducing a distance to the ellipsoid. Source: J. E. Stem, State Plane Coordinate System of 1983, NOAA Manual
 * NOS NGS 5 (1989), the practice of the National Geodetic Survey; the value is from memory.
 */
export const MEAN_RADIUS_M = 6_372_000;

/** Step (rad) of the differences: 64 m, where both what they leave out and what rounding leaves are below 1e-9. */
const STEP_RAD = 1e-5;

/** A projection whose scales north and east differ by more is not conformal: no one factor holds for all directions. */
const CONFORMAL_TO = 1e-7;

/** What turns true directions and ground distances at a place into those of a grid. */
export type GridFactors = {
  /** True azimuth less grid azimuth (rad): positive where grid north lies east of true north, as it does east of the central meridian in the northern hemisphere. */
  readonly convergence: number;
  /** Grid distance over distance on the ellipsoid; along the meridian where the projection is not conformal. */
  readonly pointScale: number;
  readonly conformal: boolean;
  /** Distance on the ellipsoid over distance on the ground: R / (R + h); null without a height. */
  readonly elevationFactor: number | null;
  /** Grid distance over ground distance, the product of the two; null without a height. */
  readonly combined: number | null;
};

/**
 * The factors at a place for a height (m) above the ellipsoid, or above sea level where people know no better: the 30 m between the two are
 * 5 millionths. Scales are in metres of the grid per metre, whatever its unit.
 */
export function gridFactors(
  grid: Grid,
  place: EarthPoint,
  heightM: number | null,
): Result<GridFactors, ProjectionProblem> {
  const { own, metresPerUnit } = grid.projection;
  const at = grid.projection.fromEarth(place);
  if (!at.ok) return at;
  const geodetic = own.unproject({ x: at.value.x * metresPerUnit, y: at.value.y * metresPerUnit });
  if (!geodetic.ok) return geodetic;
  const { latitude, longitude } = geodetic.value;
  const north = own.project({ latitude: latitude + STEP_RAD, longitude });
  const south = own.project({ latitude: latitude - STEP_RAD, longitude });
  const east = own.project({ latitude, longitude: longitude + STEP_RAD });
  const west = own.project({ latitude, longitude: longitude - STEP_RAD });
  if (!north.ok) return north;
  if (!south.ok) return south;
  if (!east.ok) return east;
  if (!west.ok) return west;
  const radii = radiiAt(own.semiMajorM, own.eccentricitySquared, latitude);
  const [dx, dy] = [north.value.x - south.value.x, north.value.y - south.value.y];
  const alongMeridian = Math.hypot(dx, dy) / (2 * STEP_RAD * radii.meridian);
  const alongParallel =
    Math.hypot(east.value.x - west.value.x, east.value.y - west.value.y) / (2 * STEP_RAD * radii.parallel);
  const elevationFactor = heightM === null ? null : MEAN_RADIUS_M / (MEAN_RADIUS_M + heightM);
  return ok({
    convergence: -Math.atan2(dx, dy),
    pointScale: alongMeridian,
    conformal: Math.abs(alongMeridian / alongParallel - 1) < CONFORMAL_TO,
    elevationFactor,
    combined: elevationFactor === null ? null : alongMeridian * elevationFactor,
  });
}

/** Radius of the meridian and of the parallel (m) at a latitude of an ellipsoid (any text on geodesy). */
function radiiAt(semiMajorM: number, eccentricitySquared: number, latitude: number) {
  const w2 = 1 - eccentricitySquared * Math.sin(latitude) ** 2;
  return {
    meridian: (semiMajorM * (1 - eccentricitySquared)) / w2 ** 1.5,
    parallel: (semiMajorM * Math.cos(latitude)) / Math.sqrt(w2),
  };
}
