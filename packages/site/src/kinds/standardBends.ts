/** A bend that drains are made of: its name is the share of a circle that it turns by (rad). */
export type StandardBend = { readonly name: string; readonly turn: number };

/** 1/16 to 1/4 as ASTM A74 lists them, 1/32 as plumbers' manuals do; from the least turn to the largest. */
export const standardBends: readonly StandardBend[] = [32, 16, 8, 6, 5, 4].map((parts) => ({
  name: `1/${parts}`,
  turn: (2 * Math.PI) / parts,
}));

const IN_DRAINS: readonly string[] = ['1/16', '1/8', '1/6', '1/4'];

/** Those that a drain that lies turns with: the quarter as a long sweep only (IRC Table P3005.1, from horizontal to horizontal). */
export const drainBends = standardBends.filter((bend) => IN_DRAINS.includes(bend.name));

/** Files keep turns to a millionth of a radian and better. */
export const SAME_TURN_RAD = 1e-6;

/** The standard bend that turns by so much (rad, to either side), give or take `within`; null without. */
export function standardBendOf(turn: number, within: number): StandardBend | null {
  return standardBends.find((bend) => Math.abs(bend.turn - Math.abs(turn)) <= within) ?? null;
}
