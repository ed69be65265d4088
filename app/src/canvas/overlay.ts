import type { Drawing } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import { type Derived, pointOwners, refKey, type Site, type Target } from '@footmark/site';
import type { PipePlace } from '../profile/profilePointer';
import type { Candidates } from '../session/picking';
import type { Landing, Tool } from '../tools/tool';
import type { PlanPins } from './planPins';

/** A box that is being drawn around things, by two opposite corners in the plan. */
export type Marquee = { readonly from: Point; readonly to: Point };

/** What lies over the drawing: the chosen things and their handles, what is in hand, and where the next press would land. */
export type Overlay = {
  readonly site: Site;
  readonly derived: Derived;
  readonly selected: Target | null;
  readonly group: readonly string[];
  readonly vertex: string | null;
  readonly tool: Tool | null;
  /** Places of the draft's points so far. */
  readonly draft: readonly Point[];
  /** The places that a measuring form allows. */
  readonly candidates: Candidates | null;
  /** Ways that are being compared, while their card is open. */
  readonly ways: readonly WayOnPlan[];
  readonly pins: PlanPins;
};

/** A way's pipe on the plan with its number; the chosen one is strong. */
export type WayOnPlan = {
  readonly line: readonly Point[];
  readonly number: number;
  readonly isChosen: boolean;
};

/** Places by `of/at`. */
export type Places = ReadonlyMap<string, { readonly at: Point }>;

/** What changes while a hand is down or moves, without a render. */
export type InMotion = {
  /** Where the pointer is, and on what; null when there is none. */
  readonly landing: Landing | null;
  /** While dragging: new places by `of/at`. */
  readonly moved: Places | null;
  readonly marquee: Marquee | null;
  /** While a point of a planned pipe is dragged: how the pipe turns there and beside it, degrees, right positive. */
  readonly turns: readonly { readonly at: Point; readonly degrees: number }[];
  /** What concerns the things that are dragged, as drawn. */
  readonly concerns: Drawing | null;
  /** The place of a pipe that the profile shows. */
  readonly pointer: PipePlace | null;
};

/** A point of a chosen thing that can be held. */
export type Handle = { readonly at: Point; readonly vertex: string; readonly key: string };

/** The points of a thing that can be held, where they are now. */
export function handlesOf(site: Site, derived: Derived, id: string): readonly Handle[] {
  const owner = pointOwners(site).find((o) => o.id === id);
  return (owner?.vertices ?? []).flatMap((v) => {
    const key = refKey({ of: id, at: v.id });
    const at = derived.points.get(key)?.at;
    return at === undefined ? [] : [{ at, vertex: v.id, key }];
  });
}
