import type { ReadingRef } from '../document/readingRef';
import type { Pair } from '../document/visit';

/** The readings that pairs say are one thing, directly or by way of others. */
export type SameThings = {
  /** Those of a reading's thing, itself among them; empty when it is in no pair. */
  readonly of: (reading: string) => readonly ReadingRef[];
  /** One text for all readings of a thing: the id of one of them. */
  readonly key: (reading: string) => string;
};

export function sameThings(pairs: readonly Pair[]): SameThings {
  const things = new Map<string, readonly ReadingRef[]>();
  for (const { a, b } of pairs) {
    const [ofA, ofB] = [things.get(a.reading) ?? [a], things.get(b.reading) ?? [b]];
    if (ofA.some((r) => r.reading === b.reading)) continue;
    const both = [...ofA, ...ofB];
    for (const { reading } of both) things.set(reading, both);
  }
  const of = (reading: string) => things.get(reading) ?? [];
  return { of, key: (reading) => of(reading)[0]?.reading ?? reading };
}
