import { tangentLength } from '@footmark/geometry';
import type { Bend } from '@footmark/route';
import { DRAWN_TURN_RAD, ruleValue, type Site, settings } from '@footmark/site';

const DEGREE = Math.PI / 180;

/**
 * Standard bends by name, and by what they turn: 1/16, 1/8, 1/6, and the quarter as a long sweep (Navy manual and ASTM A74's list; the quarter only as
 * a sweep by IRC Table P3005.1).
 */
const TURNS: readonly (readonly [id: string, degrees: number])[] = [
  ['sixteenth', 22.5],
  ['eighth', 45],
  ['sixth', 60],
  ['long-sweep', 90],
];

/** The bends that a new drain on a site may be laid of. */
export function bendTable(site: Site): readonly Bend[] {
  const [most, socket] = [ruleValue(site, 'fittingTurn'), ruleValue(site, 'fittingSocket')];
  return TURNS.flatMap(([id, degrees]): Bend[] => {
    const turn = degrees * DEGREE;
    const sweep = id === 'long-sweep';
    if (!sweep && turn > most + DRAWN_TURN_RAD) return [];
    const radius = sweep ? ruleValue(site, 'longSweepRadius') : settings.bendRadius.value;
    const cleanout =
      turn > ruleValue(site, 'cleanoutTurn') + DRAWN_TURN_RAD ? ruleValue(site, 'routeCleanout') : 0;
    const laying = tangentLength(radius, turn) + socket;
    return [{ id, turn, radius, laying, cost: ruleValue(site, 'routeBend') + cleanout }];
  });
}
