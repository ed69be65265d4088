import type { Pair } from '../document/visit';
import { type Edit, unknown } from './edit';

/** Says that two readings saw one thing. The same two again change nothing. */
export const addPair: Edit<{ pair: Pair }> = (site, { pair }) => {
  const known = site.pairs.some(
    ({ a, b }) =>
      (a.reading === pair.a.reading && b.reading === pair.b.reading) ||
      (a.reading === pair.b.reading && b.reading === pair.a.reading),
  );
  return known ? site : { ...site, pairs: [...site.pairs, pair] };
};

/** Takes that back. */
export const removePair: Edit<{ id: string }> = (site, { id }) => {
  if (!site.pairs.some((p) => p.id === id)) return unknown('pair', id);
  return { ...site, pairs: site.pairs.filter((p) => p.id !== id) };
};
