import { cutAngleAt } from '@footmark/geometry';
import type { ResolvedPoint } from '../derive/resolvePoints';
import { worstAxis } from '../derive/worstAxis';
import { type PointOwner, pointOwners, refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { Ref } from '../document/spot';
import { settings } from '../rules/settings';

/** A sine below this would make a cut of two tapes endlessly weak: the place is then as sure as a finger. */
const WEAKEST_SINE = 0.05;

/**
 * How sure the place of a point is, as one standard deviation (m) of its worse axis, from how it was measured and from what. The
 * corner that a measured outline hangs on counts as exact: everything taped is told from it.
 */
export function pointSigmas(site: Site, points: ReadonlyMap<string, ResolvedPoint>): (ref: Ref) => number {
  const owners = new Map(pointOwners(site).map((o) => [o.id, o]));
  const known = new Map<string, number>();
  const eye = settings.assumedPointSigma.value;
  const taped = (distance: number) => Math.hypot(site.tape.sigma, settings.tapeRelative.value * distance);
  const sigma = (ref: Ref): number => {
    const key = refKey(ref);
    const before = known.get(key);
    if (before !== undefined) return before;
    known.set(key, eye); // a ring of references cannot be in a sound site, and would end here
    const value = compute(ref);
    known.set(key, value);
    return value;
  };
  const compute = (ref: Ref): number => {
    const owner = owners.get(ref.of);
    const index = owner?.vertices.findIndex((v) => v.id === ref.at) ?? -1;
    const spot = owner?.vertices[index]?.spot;
    const place = points.get(refKey(ref));
    if (owner === undefined || spot === undefined || place === undefined) return eye;
    switch (spot.by) {
      case 'finger':
        return place.measured ? 0 : eye;
      case 'coordinates':
        return spot.sigma ?? 0;
      case 'at':
        return sigma(spot.point);
      case 'between':
        return Math.max(sigma(spot.from), sigma(spot.to));
      case 'bearing':
        return Math.hypot(sigma(spot.from), taped(spot.distance));
      case 'offset':
        return Math.hypot(
          Math.max(sigma(spot.from), sigma(spot.to)),
          taped(Math.hypot(spot.along, spot.out)),
        );
      case 'course':
      case 'turn':
        return Math.hypot(sigmaBefore(owner, index), taped(spot.distance));
      case 'arc':
        return Math.hypot(sigmaBefore(owner, index), taped(Math.abs(spot.radius * spot.sweep)));
      case 'tapes': {
        const [a, b] = spot.tapes;
        const [from, to] = [a && points.get(refKey(a.from)), b && points.get(refKey(b.from))];
        if (!place.measured || a === undefined || b === undefined || !from || !to) return eye;
        const sine = Math.abs(Math.sin(cutAngleAt(place.at, from.at, to.at)));
        const [sa, sb] = [a, b].map((t) => Math.hypot(sigma(t.from), taped(t.distance))) as [number, number];
        return sine < WEAKEST_SINE ? eye : Math.min(eye, worstAxis(sine, sa, sb));
      }
    }
  };
  const sigmaBefore = (owner: PointOwner, index: number) => {
    const earlier = owner.vertices[index - 1];
    return earlier === undefined ? eye : sigma({ of: owner.id, at: earlier.id });
  };
  return sigma;
}
