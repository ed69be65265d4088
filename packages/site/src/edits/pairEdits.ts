import type { Pair } from '../document/visit';
import { type Edit, unknown } from './edit';
import { releaseSetAside } from './releaseSetAside';

/** Says that two readings saw one thing, whatever was said of them before. The same two again change nothing. */
export const addPair: Edit<{ pair: Pair }> = (site, { pair }) => {
  if (site.pairs.some((other) => areSame(other, pair))) return site;
  const different = site.different.filter((other) => !areSame(other, pair));
  return {
    ...site,
    pairs: [...site.pairs, pair],
    different: different.length === site.different.length ? site.different : different,
  };
};

/** Takes that back. */
export const removePair: Edit<{ id: string }> = (site, { id }) => {
  if (!site.pairs.some((p) => p.id === id)) return unknown('pair', id);
  return releaseSetAside({ ...site, pairs: site.pairs.filter((p) => p.id !== id) });
};

/** Says that two readings that look like one thing are two, so that nobody is asked again. */
export const tellApart: Edit<{ pair: Pair }> = (site, { pair }) => {
  if (site.different.some((other) => areSame(other, pair))) return site;
  const pairs = site.pairs.filter((other) => !areSame(other, pair));
  return releaseSetAside({
    ...site,
    pairs: pairs.length === site.pairs.length ? site.pairs : pairs,
    different: [...site.different, pair],
  });
};

/** Whether two pairs are of the same two readings. */
function areSame(one: Pair, other: Pair): boolean {
  const [a, b] = [one.a.reading, one.b.reading];
  return (a === other.a.reading && b === other.b.reading) || (a === other.b.reading && b === other.a.reading);
}
