import type { AsFound } from '../document/asFound';
import type { Site } from '../document/site';
import { changeById, type Edit, unknown } from './edit';
import { type Patch, patched } from './patch';

/** Puts down what was found. */
export const addAsFound: Edit<{ found: AsFound }> = (site, { found }) => ({
  ...site,
  asFound: [...site.asFound, found],
});

export type AsFoundFacts = Patch<Omit<AsFound, 'id' | 'answer'>>;

/** Changes what is said of a find; undefined clears, what is left out stays. */
export const changeAsFound: Edit<{ id: string; facts: AsFoundFacts }> = (site, { id, facts }) => ({
  ...site,
  asFound: changeById(site.asFound, id, 'find', (found) => patched(found, facts)),
});

export const removeAsFound: Edit<{ id: string }> = (site, { id }): Site => {
  if (!site.asFound.some((found) => found.id === id)) return unknown('find', id);
  return { ...site, asFound: site.asFound.filter((found) => found.id !== id) };
};
