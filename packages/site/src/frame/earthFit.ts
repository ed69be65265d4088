import {
  applySimilarity,
  invertSimilarity,
  ok,
  type Point,
  type Result,
  type Similarity,
} from '@footmark/geometry';
import { type EarthPoint, earthToLocal, localToEarth, type ProjectionProblem } from './projection';

/** How the plan lies on the earth: turned and moved, in true size, into the map about `centre`. */
export type EarthFit = {
  readonly centre: EarthPoint;
  /** Plan metres to metres east and north of the centre; its scale is 1. */
  readonly toLocal: Similarity;
};

/** The latitude and longitude of a place in the plan. */
export function planToEarth(fit: EarthFit, p: Point): Result<EarthPoint, ProjectionProblem> {
  return localToEarth(fit.centre, applySimilarity(fit.toLocal, p));
}

/** The place in the plan of a latitude and longitude. */
export function earthToPlan(fit: EarthFit, place: EarthPoint): Result<Point, ProjectionProblem> {
  const local = earthToLocal(fit.centre, place);
  return local.ok ? ok(applySimilarity(invertSimilarity(fit.toLocal), local.value)) : local;
}
