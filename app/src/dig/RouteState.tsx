import { useDeferredValue } from 'react';
import { useDigging } from './digging';

/** The step at a glance: how much must be settled, else how many digs are planned. An edit does not wait for it. */
export function RouteState() {
  // what is deferred is the whole answer, of which nothing is computed before it is read: an older fit is never asked about again
  const { findings, excavations } = useDeferredValue(useDigging());
  const musts = findings.filter((f) => f.severity === 'must').length;
  if (musts > 0) return `${musts} must`;
  return excavations.length === 0 ? 'none' : String(excavations.length);
}
