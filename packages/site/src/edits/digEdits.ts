import type { Dig, Digging, OneCall, SiteNote } from '../document/dig';
import type { Site } from '../document/site';
import { changeById, type Edit, unknown } from './edit';
import { type Patch, patched } from './patch';

type Pit = Extract<Dig, { is: 'pit' }>;
type Trench = Extract<Dig, { is: 'trench' }>;

/** What is said of a pit, or of a trench; where it is dug stays. */
export type DigFacts = Patch<Omit<Pit, 'id' | 'is' | 'at'>> | Patch<Omit<Trench, 'id' | 'is' | 'path'>>;

/** Plans a dig. */
export const addDig: Edit<{ dig: Dig }> = (site, { dig }) =>
  withDigging(site, { digs: [...site.digging.digs, dig] });

/** Changes facts of a dig; undefined clears, what is left out stays. */
export const changeDig: Edit<{ id: string; facts: DigFacts }> = (site, { id, facts }) =>
  withDigging(site, { digs: changeById(site.digging.digs, id, 'dig', (dig) => patched(dig, facts)) });

export const removeDig: Edit<{ id: string }> = (site, { id }) => {
  if (!site.digging.digs.some((d) => d.id === id)) return unknown('dig', id);
  return withDigging(site, { digs: site.digging.digs.filter((d) => d.id !== id) });
};

/** Says what the ground is and how its sides are kept. */
export const changeGround: Edit<Partial<Pick<Digging, 'soil' | 'disturbed' | 'protection'>>> = (
  site,
  facts,
) => withDigging(site, facts);

/** Changes facts of the one-call ticket; undefined clears. One without a number and without days is none. */
export const changeOneCall: Edit<{ facts: Patch<OneCall> }> = (site, { facts }) => {
  const { oneCall = { ticket: '' }, ...rest } = site.digging;
  const changed = patched(oneCall, facts);
  const isNone = Object.values(changed).every((value) => value === '');
  return { ...site, digging: isNone ? rest : { ...rest, oneCall: changed } };
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
