import { distance } from '@footmark/geometry';
import {
  type DepthAt,
  type Derived,
  type DerivedFeature,
  type DerivedPath,
  type FeatureOf,
  groundAt,
  type PathProfile,
  profileAt,
  type Site,
  sigmaOf,
} from '@footmark/site';

/** Where a path ends at the main. */
export type TapDepth = {
  readonly tap: string;
  readonly station: number;
  /** How deep the invert lies below the ground (m); null where that is not known. */
  readonly depth: DepthAt | null;
  /** How far the path's own invert lies below the tap's (m, less than nothing: above); null where one of them is not known. */
  readonly below: { readonly by: number; readonly sigma: number } | null;
};

type Tap = DerivedFeature & { readonly feature: FeatureOf<'tap'> };
type Invert = { readonly invert: number; readonly sigma: number };

const isTap = (thing: DerivedFeature | undefined): thing is Tap => thing?.feature.kind === 'tap';

/** Null for a path that ends at no tap. */
export function tapDepth(
  site: Site,
  { features }: Pick<Derived, 'features'>,
  on: DerivedPath,
  profile: PathProfile,
): TapDepth | null {
  const tap = tapOf(site, features, on);
  if (tap === null) return null;
  const { depth } = profileAt(profile, on.length);
  const [own, main] = [ownInvert(tap, on, profile), tapInvert(site, tap, on, profile)];
  const below =
    own === null || main === null
      ? null
      : { by: main.invert - own.invert, sigma: Math.hypot(own.sigma, main.sigma) };
  return { tap: tap.feature.id, station: on.length, depth, below };
}

/** The one that the path is tied to, else the nearest to its end within the site's reach of entries. */
function tapOf(site: Site, features: Derived['features'], on: DerivedPath): Tap | null {
  const tied = features.get(on.tiedTo.at(-1) ?? '');
  if (isTap(tied)) return tied;
  const end = on.points.at(-1);
  let [found, nearest]: [Tap | null, number] = [null, site.entryReach];
  for (const candidate of end === undefined ? [] : features.values()) {
    const [at] = candidate.points;
    if (!isTap(candidate) || at === undefined || end === undefined) continue;
    const away = distance(at, end);
    if (away <= nearest) [found, nearest] = [candidate, away];
  }
  return found;
}

/** What the path's end was measured or planned at, without what the tap tells of it; else where its slope leads. */
function ownInvert({ feature }: Tap, on: DerivedPath, profile: PathProfile): Invert | null {
  const atEnd = profile.points.flatMap((p) => p.known).filter((k) => k.sounding.station === on.length);
  const own = atEnd.find(
    ({ sounding: { source } }) => !(source.is === 'feature' && source.feature === feature.id),
  );
  if (own !== undefined) return own;
  return atEnd.length === 0 ? profileAt(profile, on.length).pipe : null;
}

function tapInvert(site: Site, { feature }: Tap, on: DerivedPath, profile: PathProfile): Invert | null {
  const { invert, depth } = feature.fields;
  const taped = sigmaOf(site, 'tapedLevel');
  if (invert !== undefined && profile.heights === 'levels') return { invert, sigma: taped };
  const ground = groundAt(profile.ground, on.length);
  if (depth === undefined || ground === null) return null;
  return { invert: ground.level - depth, sigma: Math.hypot(ground.sigma, taped) };
}
