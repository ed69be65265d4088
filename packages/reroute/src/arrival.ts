import type { Derived, FeatureKind } from '@footmark/site';

/**
 * Where a new pipe arrives: back at a station of the old one (plan metres; null: at its end), at a thing of the plan, or anywhere on a pipe that
 * lies there, past a station of that.
 */
export type Arrival =
  | { readonly is: 'station'; readonly station: number | null }
  | { readonly is: 'thing'; readonly feature: string }
  | { readonly is: 'pipe'; readonly path: string; readonly past: number };

/** Back at the end of the old pipe. */
export const AT_ITS_END: Arrival = { is: 'station', station: null };

/** A drain can be brought to these. */
const ARRIVES_AT: readonly FeatureKind[] = ['tap', 'cleanout', 'manhole'];

/**
 * The things and pipes of a site that a pipe may be brought to instead, in the order of the site. Into the old pipe itself past all that was seen
 * in it.
 */
export function arrivalsOn({ features, paths, marks }: Derived, old: string): readonly Arrival[] {
  const things = [...features.values()].flatMap(({ feature: { id, kind } }): Arrival[] =>
    ARRIVES_AT.includes(kind) ? [{ is: 'thing', feature: id }] : [],
  );
  const pipes = [...paths.values()].flatMap(({ path: { id, state } }): Arrival[] => {
    const seen = marks.flatMap(({ place }) => (place?.path === id ? [place.station] : []));
    const past = id === old ? Math.max(0, ...seen) : 0;
    return state === 'existing' ? [{ is: 'pipe', path: id, past }] : [];
  });
  return [...things, ...pipes];
}
