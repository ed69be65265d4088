import { cross, dot, locate, nearestOnPolyline, type Point, subtract } from '@footmark/geometry';
import {
  type Derived,
  type DerivedFeature,
  type DerivedPath,
  type ProfileCrossing,
  profileAt,
  profileCrossings,
  type Site,
} from '@footmark/site';

/** What is not known of the heights at a crossing. */
export type MissingHeight = 'service-depth' | 'pipe-depth' | 'ground';

/** A service or main that a path crosses in plan. Metres and radians. */
export type ServiceCrossing = {
  readonly path: string;
  readonly feature: string;
  readonly kind: 'service' | 'main';
  readonly station: number;
  readonly at: Point;
  /** Between the two, 0 to π/2. */
  readonly angle: number;
  /** In height between the outsides of both, negative when they would run into each other; null where `missing` says what is not known. */
  readonly gap: number | null;
  /** Which lies higher; null where not known. */
  readonly over: 'service' | 'pipe' | null;
  readonly missing: readonly MissingHeight[];
  /** The pipe's level is carried on past the last that is known. */
  readonly carriedOn: boolean;
  /** The main that the pipe begins or ends at. */
  readonly joins: boolean;
};

/** Where a path crosses services and mains, by station. A service's depth is to its top. */
export function serviceCrossings(site: Site, derived: Derived, on: DerivedPath): readonly ServiceCrossing[] {
  const profile = derived.profiles.get(on.path.id);
  if (profile === undefined) return [];
  return profileCrossings(profile, derived).flatMap((crossing) => {
    const { feature: id, station } = crossing;
    const crossed = derived.features.get(id);
    const kind = crossed?.feature.kind;
    if (crossed === undefined || (kind !== 'service' && kind !== 'main')) return [];
    const { point: at, azimuth } = locate(on.line, station);
    const fromEnd = Math.min(station, on.length - station);
    const height = profileAt(profile, station);
    return [
      {
        path: on.path.id,
        feature: id,
        kind,
        station,
        at,
        angle: angleTo(crossed, at, azimuth),
        gap: crossing.clear,
        over: overAt(crossing, height),
        missing: missingAt(crossed, height),
        carriedOn: height.pipe?.by === 'beyond',
        joins: kind === 'main' && fromEnd <= site.entryReach,
      },
    ];
  });
}

function angleTo({ outline }: DerivedFeature, at: Point, azimuth: number): number {
  const { leg } = nearestOnPolyline(at, outline, false);
  const [c, d] = [outline[leg] ?? at, outline[leg + 1] ?? at];
  const line = subtract(d, c);
  const flow = { x: Math.sin(azimuth), y: Math.cos(azimuth) };
  return Math.atan2(Math.abs(cross(flow, line)), Math.abs(dot(flow, line)));
}

type Height = ReturnType<typeof profileAt>;

/** By the middles of both. */
function overAt({ top, diameter }: ProfileCrossing, { pipe, size }: Height): 'service' | 'pipe' | null {
  if (top === null || pipe === null) return null;
  return top - diameter / 2 >= pipe.invert + size.diameter / 2 ? 'service' : 'pipe';
}

function missingAt({ feature }: DerivedFeature, { ground, pipe }: Height): readonly MissingHeight[] {
  const missing: MissingHeight[] = [];
  const hasDepth =
    (feature.kind === 'service' || feature.kind === 'main') && feature.fields.depth !== undefined;
  if (!hasDepth) missing.push('service-depth');
  if (pipe === null) missing.push('pipe-depth');
  if (ground === null) missing.push('ground');
  return missing;
}
