import type { Point } from '@footmark/geometry';
import { type Derived, pointOwners, refKey, type Site, type Target } from '@footmark/site';
import type { Candidates } from '../session/picking';
import type { Landing, Tool } from '../tools/tool';
import { planToScreen } from './camera';
import { paintDraft } from './paintDraft';
import type { PaintSetting } from './paintPrimitives';
import { paintSelection } from './paintSelection';
import { paintRing, paintTag } from './paintTag';

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
};

/** What changes while a hand is down or moves, without a render. */
export type InMotion = {
  /** Where the pointer is, and on what; null when there is none. */
  readonly landing: Landing | null;
  /** While dragging: new places by `of/at`. */
  readonly moved: ReadonlyMap<string, Point> | null;
  readonly marquee: Marquee | null;
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

export function paintOverlay(overlay: Overlay, motion: InMotion, setting: PaintSetting): void {
  paintSelection(overlay, motion.moved, setting);
  paintDraft(overlay, motion.landing, setting);
  paintCandidates(overlay.candidates, setting);
  if (motion.marquee !== null) paintMarquee(motion.marquee, setting);
}

function paintCandidates(candidates: Candidates | null, setting: PaintSetting): void {
  if (candidates === null) return;
  const { context, camera, size, palette } = setting;
  const at = planToScreen(camera, size, candidates.chosen);
  context.beginPath();
  context.arc(at.x, at.y, 7, 0, 2 * Math.PI);
  context.fillStyle = palette.chosen;
  context.fill();
  paintTag('here', at, setting);
  if (candidates.other === null) return;
  context.setLineDash([4, 4]);
  paintRing(candidates.other, 9, setting);
  context.setLineDash([]);
  paintTag('or here', planToScreen(camera, size, candidates.other), setting);
}

function paintMarquee({ from, to }: Marquee, { context, camera, size, palette }: PaintSetting): void {
  const [a, b] = [planToScreen(camera, size, from), planToScreen(camera, size, to)];
  context.strokeStyle = palette.chosen;
  context.lineWidth = 1.5;
  context.setLineDash([6, 4]);
  context.strokeRect(a.x, a.y, b.x - a.x, b.y - a.y);
  context.setLineDash([]);
  context.globalAlpha = 0.08;
  context.fillStyle = palette.chosen;
  context.fillRect(a.x, a.y, b.x - a.x, b.y - a.y);
  context.globalAlpha = 1;
}
