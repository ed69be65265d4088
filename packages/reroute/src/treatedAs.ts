import { ruleValue, type Site } from '@footmark/site';
import type { Treatment } from './treatment';

/** As dear again as a metre is anyway. */
const ONCE_MORE = 1;

/** A thing treated in one of the three ways: as it usually is where that is it, else kept as clear of as a service, or at a metre's cost more. */
export function treatedAs(site: Site, usual: Treatment, as: Treatment['as']): Treatment {
  if (as === usual.as) return usual;
  switch (as) {
    case 'clear':
      return { as, clearance: ruleValue(site, 'otherService') };
    case 'cost':
      return { as, perMetre: ONCE_MORE };
    case 'free':
      return { as };
  }
}

/** Whether two treatments come to the same. */
export function sameTreatment(a: Treatment, b: Treatment): boolean {
  if (a.as === 'clear') return b.as === 'clear' && a.clearance === b.clearance;
  if (a.as === 'cost') return b.as === 'cost' && a.perMetre === b.perMetre;
  return b.as === 'free';
}
