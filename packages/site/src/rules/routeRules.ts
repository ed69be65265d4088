import type { SettingRow } from './settings';

const FOOT_M = 0.3048;
const INCH_M = 0.0254;
const practice = { title: 'common practice, no source', edition: '', clause: '', basis: 'practice' } as const;

/**
 * What a new pipe is laid of, and what a route around things is weighed by. Weights are in metres of plain pipe: what a crew would go out of its
 * way for. They are no prices.
 */
export const routeRules = {
  /** Of a fitting beyond the end of its arc, to either side. */
  fittingSocket: { value: 2 * INCH_M, unit: 'm', ...practice },
  /** Straight pipe between two fittings. */
  routeStraight: { value: 4 * INCH_M, unit: 'm', ...practice },
  routeBends: { value: 6, unit: '1', ...practice },
  /** From the middle of a tree of which nobody said how large it is. */
  routeTreeUnknown: { value: 10 * FOOT_M, unit: 'm', ...practice },
  /** Over so much from either end a route may be nearer to what its end is already near to. */
  routeEnds: { value: 6 * FOOT_M, unit: 'm', ...practice },
  routeBend: { value: 2 * FOOT_M, unit: 'm', ...practice },
  /** Of a turn that asks for a cleanout of its own, beside the bend. */
  routeCleanout: { value: 8 * FOOT_M, unit: 'm', ...practice },
  /** So many times more of it where a trench needs a protective system. */
  routeDeep: { value: 1, unit: '1', ...practice },
  /** For each metre, so many more. */
  routeRoots: { value: 2, unit: '1', ...practice },
  routePavement: { value: 2, unit: '1', ...practice },
  routeOtherLand: { value: 3, unit: '1', ...practice },
  routeBesideWater: { value: 4, unit: '1', ...practice },
  routeBesideService: { value: 2, unit: '1', ...practice },
  /** Length along the pipe of a pit from which a pipe is bored, burst or lined. */
  routePit: { value: 6 * FOOT_M, unit: 'm', ...practice },
} as const satisfies Record<string, SettingRow>;
