import { distance } from '@footmark/geometry';
import { type Derived, type DerivedPath, type PathProfile, profileAt, type Site } from '@footmark/site';

/** How deep the invert lies below the ground (m) where a path ends at the main; null where that is not known. */
export type TapDepth = {
  readonly tap: string;
  readonly station: number;
  readonly depth: { readonly depth: number; readonly sigma: number } | null;
};

/** Null for a path that ends at no tap. */
export function tapDepth(
  site: Site,
  { features }: Pick<Derived, 'features'>,
  on: DerivedPath,
  profile: PathProfile,
): TapDepth | null {
  const end = on.points.at(-1);
  if (end === undefined) return null;
  const tied = features.get(on.tiedTo.at(-1) ?? '');
  let [tap, nearest] = [tied?.feature.kind === 'tap' ? tied : undefined, site.entryReach];
  for (const candidate of tap === undefined ? features.values() : []) {
    const [at] = candidate.points;
    if (candidate.feature.kind !== 'tap' || at === undefined) continue;
    const away = distance(at, end);
    if (away <= nearest) [tap, nearest] = [candidate, away];
  }
  if (tap === undefined) return null;
  const here = profileAt(profile, on.length);
  const depth =
    here.ground === null || here.pipe === null
      ? null
      : {
          depth: here.ground.level - here.pipe.invert,
          sigma: Math.hypot(here.ground.sigma, here.pipe.sigma),
        };
  return { tap: tap.feature.id, station: on.length, depth };
}
