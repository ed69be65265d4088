import type { Point } from '@footmark/geometry';
import type { Ref } from '@footmark/site';
import { create } from 'zustand';

/** The two places that measurements allow: the one that is chosen, and the other, which a tap on it chooses. */
export type Candidates = { readonly chosen: Point; readonly other: Point | null; readonly swap: () => void };

type Picking = {
  /** Takes the next point that is tapped on the plan; null when no form waits for one. */
  readonly onPick: ((ref: Ref) => void) | null;
  readonly candidates: Candidates | null;
};

/** What a measuring form asks of the plan. */
export const usePicking = create<Picking>()(() => ({ onPick: null, candidates: null }));

/** Lets the next tap on a point of the plan answer a form. */
export function pickPoint(onPick: (ref: Ref) => void): void {
  usePicking.setState({ onPick });
}

/** Hands a tapped point to the form that waits; false when none does. */
export function answerPick(ref: Ref): boolean {
  const { onPick } = usePicking.getState();
  if (onPick === null) return false;
  usePicking.setState({ onPick: null });
  onPick(ref);
  return true;
}

export function showCandidates(candidates: Candidates | null): void {
  usePicking.setState({ candidates });
}
