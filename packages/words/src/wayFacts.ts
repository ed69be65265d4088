import type { EdgeClearance } from '@footmark/dig';
import type { WayFacts } from '@footmark/reroute';
import type { Site } from '@footmark/site';

/** Below this (m or m²) an amount is none. */
const NOTHING = 0.005;

/** Who has to be asked before a way is dug. */
export type Asked = 'one-call' | 'street-owner' | 'easement-holder' | 'neighbour' | 'arborist';

export function askedBefore(facts: WayFacts, site: Site): readonly Asked[] {
  const isProtected = facts.trees.some(({ tree }) =>
    site.features.some((f) => f.id === tree && f.kind === 'tree' && f.fields.protected === true),
  );
  return [
    'one-call',
    ...(facts.public > 0 ? (['street-owner'] as const) : []),
    ...(facts.shared > 0 ? (['easement-holder'] as const) : []),
    ...(facts.others > 0 ? (['neighbour'] as const) : []),
    ...(isProtected ? (['arborist'] as const) : []),
  ];
}

/** What a way comes nearest to, of what it neither crosses nor begins or ends at, whether a rule asks for room or not. */
export function nearestOf({ nearest }: WayFacts): EdgeClearance | null {
  const [first] = nearest
    .filter(({ distance, verdict }) => distance > 0 && verdict !== 'crosses' && verdict !== 'serves')
    .toSorted((a, b) => a.distance - b.distance);
  return first ?? null;
}

/** The tree of whose roots a way takes the largest share. */
export function mostRooted({ trees }: WayFacts): WayFacts['trees'][number] | null {
  const [most] = trees.toSorted((a, b) => b.share - a.share);
  return most ?? null;
}

export function bendCount({ bends }: WayFacts): number {
  return bends.reduce((sum, b) => sum + b.count, 0);
}

/** Those parts of an amount that are not nothing, with what each is of; null where one is not known. */
export function partsOf(
  parts: readonly (readonly [number | null, string])[],
): readonly (readonly [number, string])[] | null {
  const known = parts.flatMap(([value, what]) => (value === null ? [] : [[value, what] as const]));
  return known.length < parts.length ? null : known.filter(([value]) => value > NOTHING);
}
