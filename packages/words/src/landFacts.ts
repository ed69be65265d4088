import type { LandStretch, Whose } from '@footmark/dig';
import type { Site } from '@footmark/site';

/** How much (m) of a site's pipes lies on land that is not its own, the longest first. */
export function landLengths(stretches: readonly LandStretch[]): readonly (readonly [Whose, number])[] {
  const lengths = new Map<Whose, number>();
  for (const { whose, from, to } of stretches) lengths.set(whose, (lengths.get(whose) ?? 0) + to - from);
  lengths.delete('private');
  return [...lengths].sort(([, a], [, b]) => b - a);
}

/** Who holds an easement or a right of way, where that is told. */
export function holderOf(id: string, site: Site): string | undefined {
  const fields = site.features.find((f) => f.id === id)?.fields;
  return fields !== undefined && 'holder' in fields ? fields.holder : undefined;
}
