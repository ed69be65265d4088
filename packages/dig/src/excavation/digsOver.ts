import type { Derived, Site } from '@footmark/site';
import type { Excavation } from './excavation';
import { type ExcavationFinding, sayOf } from './excavationFinding';
import { sayOfFootings } from './footings';
import { sayOfTop } from './overTop';
import { surroundingsOf } from './surroundings';

/**
 * What digs whose ground is known already do to some of all `features`, as it is said when the digs themselves are computed. Boundaries among
 * them are held against all others, along which they may run.
 */
export function digsOver(
  site: Site,
  some: Derived['features'],
  features: Derived['features'],
  excavations: readonly Excavation[],
): readonly ExcavationFinding[] {
  if (some.size === 0) return [];
  const findings: ExcavationFinding[] = [];
  const around = { ...surroundingsOf({ features: some }), lines: surroundingsOf({ features }).lines };
  for (const { dig, ground, bottom, cuts, sides } of excavations) {
    if (ground === null || bottom === null) continue;
    const say = sayOf(dig, null, findings);
    sayOfTop({ ground, cuts }, around, say);
    sayOfFootings(site, { cuts, bottom: bottom.outline, sides, atLeast: ground.atLeast }, around, say);
  }
  return findings;
}
