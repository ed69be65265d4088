import { requestOf, usualAskOf, type Way, waysOf } from '@footmark/reroute';
import type { SheetSetting } from '../setting';

/** What a proposed pipe takes as it is drawn, laid in one trench; null where it has no line. */
export function plannedWay(path: string, { site, derived, options }: SheetSetting): Way | null {
  const usual = usualAskOf(derived, path);
  if (usual === null) return null;
  const ask = { ...usual, from: 0 };
  const rerouting = requestOf(site, derived, ask);
  if (!rerouting.ok) return null;
  return (
    waysOf(site, derived, ask, rerouting.value, [], options.date).find((way) => way.is === 'drawn') ?? null
  );
}
