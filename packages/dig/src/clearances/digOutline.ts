import type { Point } from '@footmark/geometry';

/** The ground that a dig takes, as far as clearances, services and white lines ask. */
export type DigOutline = {
  /** Of the dig. */
  readonly id: string;
  readonly ring: readonly Point[];
  /** Of the bottom below the ground (m); null where it is not known all along: then the dig may reach further than the ring. */
  readonly depth: number | null;
  /** Of a trench its middle line, as far as it reaches past both ends of the bottom, and half its width (m); null for a pit. */
  readonly along: { readonly line: readonly Point[]; readonly halfWidth: number } | null;
};

/** Those whose edge is known. How near others come is not, as long as their depth is not: no clearance is told of them. */
export function withKnownEdge(outlines: readonly DigOutline[]): readonly DigOutline[] {
  return outlines.filter(({ depth }) => depth !== null);
}
