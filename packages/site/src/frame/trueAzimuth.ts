import { normalizeAzimuth } from '@footmark/geometry';

/** How north lies: the true azimuth (rad) of straight up on the plan. */
type Northed = { readonly northAzimuth: number };

/** The azimuth from true north (rad, in [0, 2π)) of a direction that is told from straight up on the plan. */
export function trueAzimuth({ northAzimuth }: Northed, planAzimuth: number): number {
  return normalizeAzimuth(planAzimuth + northAzimuth);
}

/** The azimuth from straight up on the plan (rad, in [0, 2π)) of a direction that is told from true north. */
export function planAzimuth({ northAzimuth }: Northed, fromTrueNorth: number): number {
  return normalizeAzimuth(fromTrueNorth - northAzimuth);
}
