import type { Drawing } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import {
  isPath,
  movePoint,
  moveThing,
  type PointOwner,
  pointOwners,
  type Ref,
  resolvePoints,
  type Site,
} from '@footmark/site';
import { answerPick, usePicking } from '../session/picking';
import { currentSite, derivedFrom, edit } from '../session/siteSession';
import { notify, select, show } from '../session/workbench';
import { type Landing, pointFromLanding } from '../tools/tool';
import { placeInTool } from '../tools/useTool';
import { words } from '../words';
import { type Camera, pannedBy, planToScreen, screenToPlan, type ViewSize, zoomedAt } from './camera';
import type { GestureHandlers, PointerKind } from './gestures';
import { hitTest, REACH_PX } from './hitTest';
import { handlesOf, type Overlay } from './overlay';
import { landingAt, SNAP_PX } from './snap';

/** What a hand on the plan sees and can do. All of it is as it is now, not as it was when the hand came down. */
export type PlanUnderHand = {
  readonly camera: () => Camera;
  readonly size: () => ViewSize;
  readonly drawing: () => Drawing;
  readonly overlay: () => Omit<Overlay, 'landing' | 'moved'>;
  /** Moves the view with the hand; `rest` keeps it there. */
  readonly look: (camera: Camera) => void;
  readonly rest: () => void;
  /** Shows where the next press would land, and where dragged points would lie. */
  readonly preview: (what: { landing?: Landing | null; moved?: ReadonlyMap<string, Point> | null }) => void;
};

type Drag =
  | { readonly what: 'point'; readonly ref: Ref; readonly from: Point }
  | { readonly what: 'thing'; readonly id: string; readonly from: Point };

/** What gestures on the plan do: place points, choose things, drag them, answer a measuring form, move the view. */
export function planHand(plan: PlanUnderHand): GestureHandlers {
  let drag: Drag | null = null;
  const toPlan = (at: Point) => screenToPlan(plan.camera(), plan.size(), at);
  const toScreen = (p: Point) => planToScreen(plan.camera(), plan.size(), p);
  const isNear = (p: Point, at: Point, by: PointerKind) =>
    Math.hypot(toScreen(p).x - at.x, toScreen(p).y - at.y) <= REACH_PX[by];
  const landingOf = (at: Point, by: PointerKind): Landing => {
    const { derived, tool } = plan.overlay();
    const reach = SNAP_PX[by] / plan.camera().pxPerMetre;
    return landingAt(derived, toPlan(at), reach, { legs: tool?.subject.what === 'path' });
  };
  const thingUnder = (at: Point, by: PointerKind) =>
    hitTest(plan.drawing(), plan.camera(), plan.size(), at, REACH_PX[by]);
  const handleUnder = (at: Point, by: PointerKind) => {
    const { derived, selected } = plan.overlay();
    return handlesOf(derived, selected).find((handle) => isNear(handle.at, at, by));
  };

  /** A measuring form waits for a point, or shows two places to choose from. */
  const answersForm = (at: Point, by: PointerKind): boolean => {
    const { onPick, candidates } = usePicking.getState();
    if (onPick !== null) {
      const landed = landingOf(at, by);
      if (landed.on === 'point') answerPick(landed.ref);
      else notify('Tap one of the points that are there already.');
      return true;
    }
    if (candidates === null) return false;
    const onOther = candidates.other !== null && isNear(candidates.other, at, by);
    if (onOther) candidates.swap();
    return onOther || isNear(candidates.chosen, at, by);
  };

  const dragFrom = (at: Point, by: PointerKind): Drag | null => {
    const { selected, tool } = plan.overlay();
    if (tool !== null || (selected?.kind !== 'feature' && selected?.kind !== 'path')) return null;
    const owner = pointOwners(currentSite()).find((o) => o.id === selected.id);
    const handle = handleUnder(at, by);
    if (owner !== undefined && handle !== undefined) {
      const held = owner.vertices.find((v) => v.id === handle.vertex)?.spot.by;
      if (held === 'finger' || held === 'course' || held === 'turn') {
        return { what: 'point', ref: { of: owner.id, at: handle.vertex }, from: handle.at };
      }
      notify('This point is held by its measurements. Change them in the card, or let go of it there.');
      return null;
    }
    const under = thingUnder(at, by);
    const onIt = under?.kind === 'feature' && selected.kind === 'feature' && under.id === selected.id;
    const movable = owner?.vertices.some((v) => v.spot.by === 'finger') ?? false;
    return onIt && movable ? { what: 'thing', id: selected.id, from: toPlan(at) } : null;
  };

  const endDrag = (): Drag | null => {
    const done = drag;
    drag = null;
    plan.preview({ moved: null });
    return done;
  };

  return {
    tap: (at, by) => {
      if (answersForm(at, by)) return;
      const { tool, selected } = plan.overlay();
      if (tool !== null) {
        placeInTool(pointFromLanding(tool, landingOf(at, by)));
        return;
      }
      const handle = handleUnder(at, by);
      if (handle !== undefined && selected !== null) {
        select(selected, handle.vertex);
        return;
      }
      const under = thingUnder(at, by);
      if (under === null || under.kind === 'site') select(null);
      else show(under);
    },
    longPress: (at) => {
      const under = thingUnder(at, 'touch');
      if (under !== null && under.kind !== 'site') show(under);
    },
    dragStart: (at, by) => {
      drag = dragFrom(at, by);
      return drag !== null;
    },
    dragMove: (at) => {
      if (drag === null) return;
      const moved = resolvePoints(moveEdit(drag, toPlan(at))(currentSite())).points;
      plan.preview({ moved: new Map([...moved].map(([key, point]) => [key, point.at])) });
    },
    dragEnd: (at) => {
      const to = toPlan(at);
      const done = endDrag();
      if (done !== null) edit(`Move ${nameOfDragged(done)}`, moveEdit(done, to));
    },
    dragCancel: () => void endDrag(),
    pan: (dx, dy) => plan.look(pannedBy(plan.camera(), dx, dy)),
    zoom: (about, factor) => plan.look(zoomedAt(plan.camera(), plan.size(), about, factor)),
    rest: plan.rest,
    hover: (at) => {
      if (plan.overlay().tool !== null)
        plan.preview({ landing: at === null ? null : landingOf(at, 'mouse') });
    },
  };
}

function moveEdit(drag: Drag, to: Point): (site: Site) => Site {
  const places = derivedFrom(currentSite()).points;
  return drag.what === 'point'
    ? (site) => movePoint(site, { ref: drag.ref, to, places })
    : (site) => moveThing(site, { id: drag.id, by: { x: to.x - drag.from.x, y: to.y - drag.from.y } });
}

function nameOfDragged(drag: Drag): string {
  const id = drag.what === 'point' ? drag.ref.of : drag.id;
  const owner: PointOwner | undefined = pointOwners(currentSite()).find((o) => o.id === id);
  if (owner === undefined) return id;
  return owner.name || (isPath(owner) ? 'the pipe' : words.featureKindName(owner.kind).toLowerCase());
}
