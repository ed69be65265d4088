import { tangentLength } from '@footmark/geometry';
import type { Bend } from '@footmark/route';
import {
  DRAWN_TURN_RAD,
  drainBends,
  NOMINAL_SHARE,
  type RuleName,
  ruleValue,
  type Site,
} from '@footmark/site';

/** A quarter is laid as a long sweep. */
const SWEEP = '1/4';

/** Of these bends (by their names) none is laid, and a fitting reaches so far (m) past its arc; absent: as the site's rules have it. */
type Fittings = { readonly withoutBends?: readonly string[]; readonly socket?: number };

/** The bends that a new drain of an inside diameter (m) on a site may be laid of, the gentlest first. */
export function bendTable(
  site: Site,
  diameter: number,
  { withoutBends = [], socket = ruleValue(site, 'fittingSocket') }: Fittings = {},
): readonly Bend[] {
  const most = ruleValue(site, 'fittingTurn');
  const radius = ruleValue(site, sweepRadius(diameter));
  return drainBends.flatMap(({ name: id, turn }): Bend[] => {
    if (withoutBends.includes(id) || (id !== SWEEP && turn > most + DRAWN_TURN_RAD)) return [];
    const cleanout =
      turn > ruleValue(site, 'cleanoutTurn') + DRAWN_TURN_RAD ? ruleValue(site, 'routeCleanout') : 0;
    const laying = tangentLength(radius, turn) + socket;
    return [{ id, turn, radius, laying, cost: ruleValue(site, 'routeBend') + cleanout }];
  });
}

/** All bends of a size are as wide as its long sweep is: others are tighter, and leave room. */
function sweepRadius(diameter: number): RuleName {
  const is = (inches: number) => diameter >= (1 - NOMINAL_SHARE) * inches * INCH_M;
  if (is(6)) return 'sweepRadius6';
  return is(4) ? 'sweepRadius4' : 'longSweepRadius';
}

const INCH_M = 0.0254;
