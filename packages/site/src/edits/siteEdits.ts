import { SITE_FORMAT, SITE_VERSION, type Site, type Units } from '../document/site';
import { settings } from '../rules/settings';
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
    underlays: [],
    features: [],
    paths: [],
    runs: [],
  };
}

export type SiteFacts = Partial<
  Pick<Site, 'name' | 'address' | 'note' | 'units' | 'frame' | 'tape' | 'entryReach'>
>;

/** Changes what the site says of itself. */
export const changeSite: Edit<SiteFacts> = (site, facts) => ({ ...site, ...facts });
