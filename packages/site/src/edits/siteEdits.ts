import { SITE_FORMAT, SITE_VERSION, type Site, type Units } from '../document/site';
import { settings } from '../rules/settings';
import type { SigmaName } from '../rules/sigmas';
import type { Edit } from './edit';

/** A site with nothing in it yet. `createdAt` is an ISO instant. */
export function newSite(args: { id: string; name: string; createdAt: string; units: Units }): Site {
  return {
    format: SITE_FORMAT,
    version: SITE_VERSION,
    id: args.id,
    name: args.name,
    address: '',
    note: '',
    createdAt: args.createdAt,
    units: args.units,
    frame: { north: { by: 'assumed' }, control: [] },
    tape: { length: settings.tapeLength.value, sigma: settings.tapeSigma.value },
    entryReach: settings.entryReach.value,
    sigmas: {},
    underlays: [],
    features: [],
    paths: [],
    visits: [],
    runs: [],
    pairs: [],
    different: [],
    rules: { set: 'us-ipc', changed: [] },
    digging: { soil: 'not-chosen', disturbed: true, protection: 'slope', digs: [], notes: [] },
    asFound: [],
    setAside: [],
  };
}

export type SiteFacts = Partial<
  Pick<Site, 'name' | 'address' | 'note' | 'units' | 'frame' | 'tape' | 'entryReach'>
>;

/** Changes what the site says of itself. */
export const changeSite: Edit<SiteFacts> = (site, facts) => ({ ...site, ...facts });

/** Gives a kind of measurement this site's own standard deviation (m, rad or a share); undefined goes back to the table's. */
export const setSigma: Edit<{ name: SigmaName; value: number | undefined }> = (site, { name, value }) => {
  const { [name]: _, ...others } = site.sigmas;
  return { ...site, sigmas: value === undefined ? others : { ...others, [name]: value } };
};

/** Leaves an observation out of the fit, or takes it in again. `observation` is its name there. */
export const setAside: Edit<{ observation: string; aside: boolean }> = (site, { observation, aside }) => {
  const others = site.setAside.filter((name) => name !== observation);
  return { ...site, setAside: aside ? [...others, observation] : others };
};
