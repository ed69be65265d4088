import type { EdgeClearance, Excavation, Land, TreeZones } from '@footmark/dig';

/** What stands in the way, as far as it is to be drawn. */
export type DigDrawing = Readonly<{
  excavations: readonly Excavation[];
  /** Trees whose root zones are shown. */
  treeZones: readonly TreeZones[];
  /** The worst first; drawn of what is chosen. */
  clearances?: readonly EdgeClearance[];
  /** Whose land pipes are on. */
  land?: Land;
}>;
