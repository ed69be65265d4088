import { useDeferredValue } from 'react';
import { useFit } from '../fit/fitSession';
import { useSite } from '../session/siteSession';
import { diggingFrom } from './digging';

/** The step at a glance: how much must be settled, else how many digs are planned. An edit does not wait for it. */
export function RouteState() {
  const site = useDeferredValue(useSite());
  const fit = useDeferredValue(useFit().fit);
  const musts = diggingFrom(site, fit).findings.filter((f) => f.severity === 'must').length;
  const digs = site.digging.digs.length;
  if (musts > 0) return `${musts} must`;
  return digs === 0 ? 'none' : String(digs);
}
