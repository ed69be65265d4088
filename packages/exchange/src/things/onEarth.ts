import { fail, ok, type Result } from '@footmark/geometry';
import { type Derived, type EarthPoint, type ProjectionProblem, planToEarth } from '@footmark/site';
import type { SiteThing } from './siteThings';

/** Why a site cannot go into a file of latitudes and longitudes. */
export type EarthProblem = 'not-on-the-earth' | ProjectionProblem;

/** A thing with its places on the earth instead of those in the plan. */
export type EarthThing = SiteThing & { readonly places: readonly EarthPoint[] };

/** Things with their latitudes and longitudes. A site without a control point is nowhere on the earth. */
export function onEarth(
  things: readonly SiteThing[],
  { frame }: Pick<Derived, 'frame'>,
): Result<readonly EarthThing[], EarthProblem> {
  if (frame.toEarth === null) return fail('not-on-the-earth');
  const placed: EarthThing[] = [];
  for (const thing of things) {
    const places: EarthPoint[] = [];
    for (const p of thing.points) {
      const place = planToEarth(frame.toEarth, p);
      if (!place.ok) return place;
      places.push(place.value);
    }
    placed.push({ ...thing, places });
  }
  return ok(placed);
}

/** Seven decimals of a degree are a centimetre, and all that RFC 7946 has a use for. */
const DEGREE_DECIMALS = 7;

/** Degrees as maps have them, to a centimetre, never −0. */
export function mapDegrees(degrees: number): number {
  return Number(degrees.toFixed(DEGREE_DECIMALS)) + 0;
}
