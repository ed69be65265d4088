import type { GroundState } from '@footmark/site';

/** A cross in a ring where something is wrong, a ring where something belongs, a ring round a thing of the drain that belongs. */
export const markBases = ['mark-defect', 'mark-landmark', 'mark-landmark-around'] as const;
export type MarkBase = (typeof markBases)[number];

export const groundStates = [
  'painted',
  'flagged',
  'dug',
  'found',
] as const satisfies readonly GroundState['state'][];

/** A mark by what it is and, after a hyphen, by what was done about it on the ground. */
export type MarkSymbolName = MarkBase | `${MarkBase}-${GroundState['state']}`;

export const markSymbolNames: readonly MarkSymbolName[] = markBases.flatMap((base): MarkSymbolName[] => [
  base,
  ...groundStates.map((state) => `${base}-${state}` as const),
]);
