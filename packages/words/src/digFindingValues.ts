import type {
  ClearanceFindingValues,
  DrainFindingValues,
  ExcavationFindingValues,
  LandFindingValues,
  ServiceFindingValues,
  TreeFindingValues,
} from '@footmark/dig';

/** Values of everything that stands in the way, by code. */
export type DigFindingValues = ClearanceFindingValues &
  DrainFindingValues &
  ExcavationFindingValues &
  LandFindingValues &
  ServiceFindingValues &
  TreeFindingValues;
