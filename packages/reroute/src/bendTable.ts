import { tangentLength } from '@footmark/geometry';
import type { Bend } from '@footmark/route';
import { DRAWN_TURN_RAD, drainBends, ruleValue, type Site, settings } from '@footmark/site';

/** A quarter is laid as a long sweep. */
const SWEEP = '1/4';

/** The bends that a new drain on a site may be laid of, the gentlest first. */
export function bendTable(site: Site): readonly Bend[] {
  const [most, socket] = [ruleValue(site, 'fittingTurn'), ruleValue(site, 'fittingSocket')];
  return drainBends.flatMap(({ name: id, turn }): Bend[] => {
    const sweep = id === SWEEP;
    if (!sweep && turn > most + DRAWN_TURN_RAD) return [];
    const radius = sweep ? ruleValue(site, 'longSweepRadius') : settings.bendRadius.value;
    const cleanout =
      turn > ruleValue(site, 'cleanoutTurn') + DRAWN_TURN_RAD ? ruleValue(site, 'routeCleanout') : 0;
    const laying = tangentLength(radius, turn) + socket;
    return [{ id, turn, radius, laying, cost: ruleValue(site, 'routeBend') + cleanout }];
  });
}
