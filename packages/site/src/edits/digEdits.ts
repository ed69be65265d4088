import type { Dig, Digging, OneCall, SiteNote } from '../document/dig';
import type { Site } from '../document/site';
import { changeById, type Edit, unknown } from './edit';

/** Plans a dig. */
export const addDig: Edit<{ dig: Dig }> = (site, { dig }) =>
  withDigging(site, { digs: [...site.digging.digs, dig] });

/** Puts a dig in the place of the one with its id. */
export const changeDig: Edit<{ dig: Dig }> = (site, { dig }) =>
  withDigging(site, { digs: changeById(site.digging.digs, dig.id, 'dig', () => dig) });

export const removeDig: Edit<{ id: string }> = (site, { id }) => {
  if (!site.digging.digs.some((d) => d.id === id)) return unknown('dig', id);
  return withDigging(site, { digs: site.digging.digs.filter((d) => d.id !== id) });
};

/** Says what the ground is and how its sides are kept. */
export const changeGround: Edit<Partial<Pick<Digging, 'soil' | 'disturbed' | 'protection'>>> = (
  site,
  facts,
) => withDigging(site, facts);

/** Keeps the one-call ticket; undefined takes it away. */
export const setOneCall: Edit<{ oneCall: OneCall | undefined }> = (site, { oneCall }) => {
  const { oneCall: _, ...rest } = site.digging;
  return { ...site, digging: oneCall === undefined ? rest : { ...rest, oneCall } };
};

/** Writes down what was said or seen. */
export const addSiteNote: Edit<{ note: SiteNote }> = (site, { note }) =>
  withDigging(site, { notes: [...site.digging.notes, note] });

export const removeSiteNote: Edit<{ id: string }> = (site, { id }) => {
  if (!site.digging.notes.some((n) => n.id === id)) return unknown('note', id);
  return withDigging(site, { notes: site.digging.notes.filter((n) => n.id !== id) });
};

function withDigging(site: Site, facts: Partial<Digging>): Site {
  return { ...site, digging: { ...site.digging, ...facts } };
}
