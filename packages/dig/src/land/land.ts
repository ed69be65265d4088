import type { Point } from '@footmark/geometry';
import type { FeatureKind } from '@footmark/site';
import type { LandFinding } from './landFinding';
import type { Whose, WhoseAt } from './whose';

/** A piece of a path on one kind of land. Stations in plan metres. */
export type LandStretch = WhoseAt & { readonly path: string; readonly from: number; readonly to: number };

/** Where a path crosses a boundary, an easement's edge or a right-of-way line, and whose land it comes from and goes to with the flow. */
export type LandCrossing = {
  readonly path: string;
  readonly station: number;
  readonly at: Point;
  readonly feature: string;
  readonly kind: FeatureKind;
  readonly from: Whose;
  readonly to: Whose;
};

export type LandMark = WhoseAt & { readonly run: string; readonly reading: string };

/** Whose land pipes and marks are on. */
export type Land = {
  /** Path by path, with the flow, without gaps. */
  readonly stretches: readonly LandStretch[];
  /** Path by path, with the flow. */
  readonly crossings: readonly LandCrossing[];
  readonly marks: readonly LandMark[];
  readonly findings: readonly LandFinding[];
};
