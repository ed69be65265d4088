import type { Underlay } from '../document/underlay';
import { changeById, type Edit, unknown } from './edit';

/** Puts a picture under the plan, above those that are there. */
export const addUnderlay: Edit<{ underlay: Underlay }> = (site, { underlay }) => ({
  ...site,
  underlays: [...site.underlays, underlay],
});

/** Changes how a picture lies, shows or is called. */
export const changeUnderlay: Edit<{ id: string; facts: Partial<Omit<Underlay, 'id'>> }> = (
  site,
  { id, facts },
) => ({ ...site, underlays: changeById(site.underlays, id, 'picture', (u) => ({ ...u, ...facts })) });

/** Takes a picture away. Its file stays in the device's store. */
export const removeUnderlay: Edit<{ id: string }> = (site, { id }) => {
  if (!site.underlays.some((u) => u.id === id)) return unknown('picture', id);
  return { ...site, underlays: site.underlays.filter((u) => u.id !== id) };
};
