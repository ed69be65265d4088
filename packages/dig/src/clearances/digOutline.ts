import type { Point } from '@footmark/geometry';

/** What a dig takes at the top, as far as clearances, services and white lines ask. */
export type DigOutline = {
  /** Of the dig. */
  readonly id: string;
  readonly ring: readonly Point[];
  /** Of the bottom below the ground (m); null where not known. */
  readonly depth: number | null;
  /** Of a trench its middle line, as far as the top reaches past both ends of the bottom, and half the width at the top (m); null for a pit. */
  readonly along: { readonly line: readonly Point[]; readonly halfWidth: number } | null;
};
