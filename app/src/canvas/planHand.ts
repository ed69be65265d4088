import { type Drawing, drawMoved, type PlacedLabel } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import { movePlanned } from '@footmark/reroute';
import {
  derivePlaces,
  movePoint,
  moveThings,
  type Places,
  pointOwners,
  type Ref,
  type Site,
  type Target,
} from '@footmark/site';
import { diggingFrom } from '../dig/digging';
import { endOfMotion, tellWhileMoved } from '../dig/inMotion';
import { currentFit } from '../fit/fitSession';
import {
  answerPixel,
  cancelPictureDrag,
  endPictureDrag,
  movePictureDrag,
  startPictureDrag,
} from '../pictures/pictureHand';
import { HELD, standsFree } from '../session/chosenThings';
import { answerLine, answerPick, usePicking } from '../session/picking';
import { chosenIds, targetsOf, toggleChosen } from '../session/selection';
import { currentSite, derivedFrom, edit } from '../session/siteSession';
import { notify, type Step, select, selectGroup, selectLeg, show, useWorkbench } from '../session/workbench';
import { type Landing, pointFromLanding } from '../tools/tool';
import { finishDrawing, measureAt, placeInTool } from '../tools/useTool';
import { words } from '../words';
import { type Camera, pannedBy, planToScreen, screenToPlan, type ViewSize, zoomedAt } from './camera';
import { drawingWords } from './drawingWords';
import type { GestureHandlers, PointerKind, Press } from './gestures';
import { hitTest, REACH_PX } from './hitTest';
import { labelUnder } from './labelUnder';
import { handlesOf, type InMotion, type Overlay } from './overlay';
import { type PlannedPoint, plannedPoint, pulledTo, turnsBeside } from './plannedPoint';
import { withoutLayers } from './planScene';
import { landingAt, SNAP_PX } from './snap';
import { thingsInBox } from './thingsInBox';

/** What a hand on the plan sees and can do. All of it is as it is now, not as it was when the hand came down. */
export type PlanUnderHand = {
  readonly camera: () => Camera;
  readonly size: () => ViewSize;
  readonly drawing: () => Drawing;
  readonly labels: () => readonly PlacedLabel[];
  readonly overlay: () => Overlay;
  /** Moves the view with the hand; `rest` keeps it there. */
  readonly look: (camera: Camera) => void;
  readonly rest: () => void;
  /** Shows what is in motion before it is done. */
  readonly preview: (what: Partial<InMotion>) => void;
};

type Move =
  | { readonly what: 'point'; readonly ref: Ref; readonly from: Point; readonly planned: PlannedPoint | null }
  | { readonly what: 'things'; readonly ids: readonly string[]; readonly from: Point };

type Drag = Move | { readonly what: 'marquee'; readonly from: Point } | { readonly what: 'nothing' };

/** How far the word beside a place reaches, right and up. */
const WORD_PX = { wide: 90, high: 34 };

const POINT_HELD = 'This point is held by its measurements. Change them in the card, or let go of it there.';
const LOCKED = 'This is locked. Unlock it in its card to move it.';

/** What gestures on the plan do: place points, choose things, drag them, answer a measuring form, move the view. */
export function planHand(plan: PlanUnderHand): GestureHandlers {
  let drag: Drag | null = null;
  let tell: ((places: Places) => Drawing) | null = null;
  const toPlan = (at: Point) => screenToPlan(plan.camera(), plan.size(), at);
  const toScreen = (p: Point) => planToScreen(plan.camera(), plan.size(), p);
  /** Plan metres from which something pulls. */
  const pull = (by: PointerKind) => SNAP_PX[by] / plan.camera().pxPerMetre;
  const isNear = (p: Point, at: Point, by: PointerKind) =>
    Math.hypot(toScreen(p).x - at.x, toScreen(p).y - at.y) <= REACH_PX[by];
  const landingOf = (at: Point, { by, alt }: Press): Landing => {
    const { derived, tool, draft } = plan.overlay();
    return landingAt(toPlan(at), {
      derived,
      reach: pull(by),
      drawsPipe: tool?.is === 'draw' && tool.subject.what === 'path',
      draft,
      closes: tool?.is === 'draw' && tool.shape === 'area',
      plain: alt,
    });
  };
  const thingUnder = (at: Point, by: PointerKind) =>
    meantIn(
      useWorkbench.getState().step,
      hitTest(plan.drawing(), plan.camera(), plan.size(), at, REACH_PX[by]),
    );
  const handleUnder = (at: Point, by: PointerKind) => {
    const { site, derived, selected } = plan.overlay();
    if (selected?.kind !== 'feature' && selected?.kind !== 'path') return undefined;
    return handlesOf(site, derived, selected.id).find((handle) => isNear(handle.at, at, by));
  };

  /** A measuring form waits for a point, or shows two places to choose from. */
  const answersForm = (at: Point, press: Press): boolean => {
    const { pick, candidates } = usePicking.getState();
    if (pick !== null) {
      const landed = landingOf(at, press);
      const isLine = landed.on === 'line' || landed.on === 'middle';
      if (landed.on === 'point') answerPick(landed.ref);
      else if (!isLine || !answerLine(landed.from, landed.to))
        notify('Tap one of the points that are there already.');
      return true;
    }
    if (candidates === null) return false;
    // the word beside the place counts as the place
    const onWord = (p: Point) => {
      const on = toScreen(p);
      return at.x > on.x && at.x < on.x + WORD_PX.wide && at.y > on.y - WORD_PX.high && at.y < on.y;
    };
    const { other } = candidates;
    const onOther = other !== null && (isNear(other, at, press.by) || onWord(other));
    if (onOther) candidates.swap();
    return onOther || isNear(candidates.chosen, at, press.by);
  };

  /** A tap with a tool in hand puts a point down. */
  const usesTool = (at: Point, press: Press): boolean => {
    const { tool } = plan.overlay();
    if (tool === null) return false;
    const landing = landingOf(at, press);
    if (tool.is === 'measure') measureAt(landing.at);
    else if (landing.on === 'start') finishDrawing();
    else placeInTool(pointFromLanding(landing));
    plan.preview({ landing: press.by === 'mouse' ? landing : null });
    return true;
  };

  const choose = (at: Point, press: Press): void => {
    const { selected } = plan.overlay();
    const gathers = press.shift || useWorkbench.getState().gathering;
    const handle = handleUnder(at, press.by);
    if (handle !== undefined && selected !== null && !gathers) {
      select(selected, handle.vertex);
      return;
    }
    const label = gathers ? null : labelUnder(plan.labels(), plan.camera(), plan.size(), at);
    if (label?.is === 'leg') {
      showLeg(label.target, label.end);
      return;
    }
    const under = thingUnder(at, press.by) ?? meantIn(useWorkbench.getState().step, label?.target ?? null);
    if (under === null || under.kind === 'site') {
      if (!gathers) select(null);
    } else if (gathers) toggleChosen(under);
    else show(under);
  };

  const dragFrom = (at: Point, press: Press): Drag | null => {
    const { selected, tool, site } = plan.overlay();
    if (tool !== null) return null;
    if (press.shift || useWorkbench.getState().gathering) return { what: 'marquee', from: toPlan(at) };
    const ids = chosenIds();
    const handle = handleUnder(at, press.by);
    const owner = pointOwners(site).find((o) => o.id === selectedId(selected));
    if (owner !== undefined && handle !== undefined) {
      if (owner.locked) return refuse(LOCKED);
      const ref = { of: owner.id, at: handle.vertex };
      const planned = plannedPoint(site, plan.overlay().derived, ref, press.alt ? 0 : pull(press.by));
      const held = owner.vertices.find((v) => v.id === handle.vertex)?.spot.by;
      const free = held === 'finger' || held === 'course' || held === 'turn' || held === 'arc';
      // what was only computed is held by nothing
      const computed = planned !== null && held === 'coordinates';
      return free || computed ? { what: 'point', ref, from: handle.at, planned } : refuse(POINT_HELD);
    }
    const under = selectedId(thingUnder(at, press.by));
    if (under === null || !ids.includes(under)) return null;
    const movable = pointOwners(site).filter((o) => ids.includes(o.id) && !o.locked && standsFree(o));
    return movable.length > 0
      ? { what: 'things', ids: movable.map((o) => o.id), from: toPlan(at) }
      : refuse(owner?.locked ? LOCKED : HELD);
  };

  /** A gesture that does nothing, and must not pan either: it would look as if it had moved the thing. */
  const refuse = (why: string): Drag => {
    notify(why);
    return { what: 'nothing' };
  };

  const endDrag = (): Drag | null => {
    const done = drag;
    drag = null;
    tell = null;
    endOfMotion();
    plan.preview({ moved: null, marquee: null, turns: [], concerns: null });
    return done;
  };

  return {
    tap: (at, press) => {
      plan.rest();
      if (answerPixel(toPlan(at))) return;
      if (!answersForm(at, press) && !usesTool(at, press)) choose(at, press);
    },
    longPress: (at) => {
      plan.rest();
      const under = thingUnder(at, 'touch');
      if (plan.overlay().tool === null && under !== null) toggleChosen(under);
    },
    dragStart: (at, press) => {
      plan.rest();
      drag = dragFrom(at, press);
      return drag !== null || startPictureDrag(toPlan(at));
    },
    dragMove: (at) => {
      if (movePictureDrag(toPlan(at))) plan.preview({});
      if (drag === null || drag.what === 'nothing') return;
      if (drag.what === 'marquee') {
        plan.preview({ marquee: { from: drag.from, to: toPlan(at) } });
        return;
      }
      const to = drawnTo(drag, toPlan(at));
      const places = derivePlaces(moveEdit(drag, to)(currentSite()));
      tell ??= tellMoved(movedBy(drag));
      const turns = drag.what === 'point' ? turnsBeside(drag.planned, to) : [];
      plan.preview({ moved: places.points, turns, concerns: tell(places) });
    },
    dragEnd: (at) => {
      const to = toPlan(at);
      endPictureDrag(to);
      const done = endDrag();
      if (done === null || done.what === 'nothing') return;
      if (done.what === 'marquee') selectGroup(thingsInBox(plan.overlay(), { from: done.from, to }));
      else edit(`Move ${nameOfDragged(done)}`, moveEdit(done, drawnTo(done, to)));
    },
    dragCancel: () => {
      cancelPictureDrag();
      endDrag();
    },
    pan: (dx, dy) => plan.look(pannedBy(plan.camera(), dx, dy)),
    zoom: (about, factor) => plan.look(zoomedAt(plan.camera(), plan.size(), about, factor)),
    rest: plan.rest,
    hover: (at, press) => {
      if (plan.overlay().tool !== null) plan.preview({ landing: at === null ? null : landingOf(at, press) });
    },
  };
}

/** Paint that sets a pipe out lies on the pipe: in another step than that of the marks the pipe is meant. */
function meantIn(step: Step, target: Target | null): Target | null {
  return target?.kind === 'set-out' && step !== 'marks' ? { kind: 'path', id: target.path } : target;
}

function selectedId(target: Target | null): string | null {
  return target?.kind === 'feature' || target?.kind === 'path' ? target.id : null;
}

function showLeg(target: Target, end: string): void {
  show(target);
  selectLeg(target, end);
}

/** Where a hand means to put what it drags: a planned pipe turns by bends. */
function drawnTo(drag: Move, to: Point): Point {
  return drag.what === 'point' ? pulledTo(drag.planned, to) : to;
}

function moveEdit(drag: Move, to: Point): (site: Site) => Site {
  const places = derivedFrom(currentSite()).points;
  if (drag.what === 'point') {
    const move = drag.planned === null ? movePoint : movePlanned;
    return (site) => move(site, { ref: drag.ref, to, places });
  }
  const by = { x: to.x - drag.from.x, y: to.y - drag.from.y };
  return (site) => moveThings(site, { ids: drag.ids, by });
}

/** What it is that moves. */
function movedBy(drag: Move): readonly string[] {
  return drag.what === 'point' ? [drag.ref.of] : drag.ids;
}

/** Tells and draws what concerns things while they are moved. */
function tellMoved(ids: readonly string[]): (places: Places) => Drawing {
  const site = currentSite();
  const tell = tellWhileMoved(ids);
  const { excavations } = diggingFrom(site, currentFit().fit);
  const { hiddenLayers } = useWorkbench.getState();
  return (places) =>
    withoutLayers(drawMoved(site, ids, tell(places), excavations, drawingWords), hiddenLayers);
}

function nameOfDragged(drag: Move): string {
  if (drag.what === 'things' && drag.ids.length > 1) return `${drag.ids.length} things`;
  const [id] = movedBy(drag);
  const site = currentSite();
  const [target] = id === undefined ? [] : targetsOf(site, [id]);
  return target === undefined ? '' : words.targetName(target, site);
}
