import type { Site } from '../document/site';
import type { Visit } from '../document/visit';
import { changeById, type Edit, unknown } from './edit';

/** Begins a visit. */
export const addVisit: Edit<{ visit: Visit }> = (site, { visit }) => ({
  ...site,
  visits: [...site.visits, visit],
});

/** Says anew when a visit was and what for; undefined for the date clears it. */
export const changeVisit: Edit<{
  id: string;
  facts: { date?: string | undefined; purpose?: Visit['purpose']; note?: string };
}> = (site, { id, facts }) => ({
  ...site,
  visits: changeById(site.visits, id, 'visit', (old): Visit => {
    const { date, ...rest } = { ...old, ...facts };
    return date === undefined ? rest : { ...rest, date };
  }),
});

/** Takes a visit away; its runs stay and belong to none. */
export const removeVisit: Edit<{ id: string }> = (site, { id }): Site => {
  if (!site.visits.some((v) => v.id === id)) return unknown('visit', id);
  return {
    ...site,
    visits: site.visits.filter((v) => v.id !== id),
    runs: site.runs.map((run) => (run.visit === id ? { ...run, visit: null } : run)),
  };
};
