import { tangentLength } from '@footmark/geometry';
import type { Bend } from '@footmark/route';
import { DRAWN_TURN_RAD, ruleValue, type Site, settings, standardBends } from '@footmark/site';

/** Of the standard bends those that drains are laid of: the quarter as a long sweep only (IRC Table P3005.1). */
const LAID: readonly string[] = ['1/16', '1/8', '1/6', '1/4'];
const SWEEP = '1/4';

/** The bends that a new drain on a site may be laid of, the gentlest first. */
export function bendTable(site: Site): readonly Bend[] {
  const [most, socket] = [ruleValue(site, 'fittingTurn'), ruleValue(site, 'fittingSocket')];
  return standardBends.flatMap(({ name: id, turn }): Bend[] => {
    const sweep = id === SWEEP;
    if (!LAID.includes(id)) return [];
    if (!sweep && turn > most + DRAWN_TURN_RAD) return [];
    const radius = sweep ? ruleValue(site, 'longSweepRadius') : settings.bendRadius.value;
    const cleanout =
      turn > ruleValue(site, 'cleanoutTurn') + DRAWN_TURN_RAD ? ruleValue(site, 'routeCleanout') : 0;
    const laying = tangentLength(radius, turn) + socket;
    return [{ id, turn, radius, laying, cost: ruleValue(site, 'routeBend') + cleanout }];
  });
}
