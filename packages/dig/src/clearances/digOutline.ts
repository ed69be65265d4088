import type { Point } from '@footmark/geometry';

/** What a dig takes at the top, as far as clearances, services and white lines ask. */
export type DigOutline = {
  /** Of the dig. */
  readonly id: string;
  readonly ring: readonly Point[];
  /** Of the bottom below the ground (m); null where not known. */
  readonly depth: number | null;
  /** The stretch of pipe (plan stations, m) that a trench follows, and half its width at the top; null for a pit. */
  readonly along: {
    readonly path: string;
    readonly from: number;
    readonly to: number;
    readonly halfWidth: number;
  } | null;
};
