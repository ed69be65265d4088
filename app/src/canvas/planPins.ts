import type { Point } from '@footmark/geometry';
import { create } from 'zustand';

/** What a crew found, beside where it was looked for. */
export type FoundPin = {
  readonly at: Point;
  /** Null where nothing was computed. */
  readonly sought: Point | null;
};

/** What is pinned on the plan besides the site: where the device is, how sure (m), and what was found. */
export type PlanPins = {
  readonly here: { readonly at: Point; readonly accuracy: number } | null;
  readonly found: readonly FoundPin[];
};

export const NO_PINS: PlanPins = { here: null, found: [] };

export const usePlanPins = create<PlanPins>()(() => NO_PINS);
