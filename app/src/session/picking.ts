import type { Point } from '@footmark/geometry';
import type { Ref } from '@footmark/site';
import { create } from 'zustand';

/** The two places that measurements allow: the one that is chosen, and the other, which a tap on it chooses. */
export type Candidates = { readonly chosen: Point; readonly other: Point | null; readonly swap: () => void };

/** Who waits for a point of the plan, and what it does with it. */
type Pick = {
  readonly by: string;
  readonly take: (ref: Ref) => void;
  /** Takes both ends of a line that was tapped between them, where a line is wanted. */
  readonly takeLine: ((from: Ref, to: Ref) => void) | null;
};

type Picking = {
  /** Takes the next point that is tapped on the plan; null when nobody waits for one. */
  readonly pick: Pick | null;
  readonly candidates: Candidates | null;
};

/** What a measuring form asks of the plan. */
export const usePicking = create<Picking>()(() => ({ pick: null, candidates: null }));

/** Lets the next tap on a point of the plan answer a field, known by a name of its own. */
export function pickPoint(by: string, take: (ref: Ref) => void, takeLine: Pick['takeLine'] = null): void {
  usePicking.setState({ pick: { by, take, takeLine } });
}

/** A field no longer waits. */
export function dropPick(by: string): void {
  usePicking.setState(({ pick }) => (pick?.by === by ? { pick: null } : {}));
}

/** Hands a tapped point to the field that waits; false when none does. */
export function answerPick(ref: Ref): boolean {
  const { pick } = usePicking.getState();
  if (pick === null) return false;
  usePicking.setState({ pick: null });
  pick.take(ref);
  return true;
}

/** Hands both ends of a tapped line to the field that waits; false when none does or it wants a point. */
export function answerLine(from: Ref, to: Ref): boolean {
  const { pick } = usePicking.getState();
  if (!pick?.takeLine) return false;
  usePicking.setState({ pick: null });
  pick.takeLine(from, to);
  return true;
}

export function showCandidates(candidates: Candidates | null): void {
  usePicking.setState({ candidates });
}
