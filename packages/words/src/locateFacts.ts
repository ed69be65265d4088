import type { Locate } from '@footmark/site';

/** A receiver that found the sonde less than this (m) to one side found it straight along, or straight across. */
const STRAIGHT_M = 0.03;

/** The same for what was dug out, which is measured to an inch. */
export const DUG_STRAIGHT_M = 0.01;

/** On which side of the computed place something was found, and how far (m): with the flow, then across it. */
export type FoundWay = {
  readonly metres: number;
  readonly to: 'downstream' | 'upstream' | 'right' | 'left';
};

/** `least`: below this (m) a place is not to that side. */
export function foundWays(
  { along, across }: Pick<Locate, 'along' | 'across'>,
  least = STRAIGHT_M,
): readonly FoundWay[] {
  const ways: readonly FoundWay[] = [
    { metres: Math.abs(along), to: along > 0 ? 'downstream' : 'upstream' },
    { metres: Math.abs(across), to: across > 0 ? 'right' : 'left' },
  ];
  return ways.filter(({ metres }) => metres >= least);
}

/** Names of the eight winds, clockwise from north. */
export type Winds = readonly [string, string, string, string, string, string, string, string];

/** The nearest of them to a true azimuth (rad). */
export function windOf(azimuth: number, winds: Winds): string {
  const eighths = Math.round((4 * azimuth) / Math.PI);
  return winds[((eighths % winds.length) + winds.length) % winds.length] ?? winds[0];
}
