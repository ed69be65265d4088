import type { Point } from '@footmark/geometry';
import { movePoint, moveThing, type Ref, refKey, resolvePoints, type Site } from '@footmark/site';
import type Konva from 'konva';
import { useEffect, useMemo, useRef } from 'react';
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import { answerPick, usePicking } from '../session/picking';
import { currentSite, derivedFrom, edit, useDerived, useSite } from '../session/siteSession';
import { notify, select, show, useWorkbench } from '../session/workbench';
import { type DraftPoint, type Landing, pointFromLanding } from '../tools/tool';
import { placeInTool } from '../tools/useTool';
import { words } from '../words';
import { type Camera, cameraFor, pannedBy, planToScreen, screenToPlan, zoomedAt } from './camera';
import { attachGestures, type PointerKind } from './gestures';
import { hitTest, REACH_PX } from './hitTest';
import { handlesOf, type Overlay, paintOverlay } from './overlay';
import styles from './PlanCanvas.module.css';
import { paintGrid } from './paintGrid';
import { paintLabels, textMeasurer } from './paintLabels';
import { mmPerMetre, paintPrimitives } from './paintPrimitives';
import { palettes } from './palette';
import { drawingOf, labelsAt } from './planScene';
import { usePlanView } from './planView';
import { landingAt, SNAP_PX } from './snap';

/** Paper painted beyond the view on every side, as a share of it, so that a pan shows no bare edge at once. */
const OVERSCAN = 0.3;

type Drag =
  | { readonly what: 'point'; readonly ref: Ref; readonly from: Point }
  | { readonly what: 'thing'; readonly id: string; readonly from: Point };

/** Places of a draft's points in the site. */
function draftPlaces(site: Site, points: readonly DraftPoint[]): readonly Point[] {
  const id = 'draft-in-hand';
  const vertices = points.map((p, i) => ({ id: `p${i}`, spot: p.spot }));
  const withDraft: Site = {
    ...site,
    features: [...site.features, { id, kind: 'fence', name: '', vertices, fields: {} }],
  };
  const resolved = resolvePoints(withDraft).points;
  return vertices.flatMap((v) => resolved.get(refKey({ of: id, at: v.id }))?.at ?? []);
}

/**
 * The plan: the drawing at rest on one canvas, what is in hand on another above it. A pan or zoom moves the painted canvases and
 * they are painted anew when the hand rests; React renders neither per frame nor per thing.
 */
export function PlanCanvas() {
  const site = useSite();
  const derived = useDerived();
  const { selected, vertex, tool } = useWorkbench();
  const candidates = usePicking((p) => p.candidates);
  const { camera, size, theme } = usePlanView();
  const box = useRef<HTMLDivElement>(null);
  const stage = useRef<Konva.Stage>(null);
  const live = useRef<Camera | null>(camera);
  const painted = useRef<Camera | null>(null);
  const landing = useRef<Landing | null>(null);
  const drag = useRef<Drag | null>(null);
  const moved = useRef<ReadonlyMap<string, Point> | null>(null);

  const drawing = useMemo(() => drawingOf(site, derived, selected), [site, derived, selected]);
  const draft = useMemo(() => draftPlaces(site, tool?.points ?? []), [site, tool]);
  const measure = useMemo(() => {
    const context = document.createElement('canvas').getContext('2d');
    if (context === null) throw new Error('this browser has no 2D canvas');
    return textMeasurer(context);
  }, []);
  const scale = camera === null ? 1 : mmPerMetre(camera);
  const labels = useMemo(() => labelsAt(drawing, scale, measure), [drawing, scale, measure]);

  const whole = {
    width: Math.round(size.width * (1 + 2 * OVERSCAN)),
    height: Math.round(size.height * (1 + 2 * OVERSCAN)),
  };
  const overlay: Omit<Overlay, 'landing' | 'moved'> = {
    candidates,
    derived,
    units: site.units,
    selected,
    vertex,
    tool,
    draft,
  };
  const now = useRef({ overlay, drawing, size, whole, camera, theme, labels, site });
  now.current = { overlay, drawing, size, whole, camera, theme, labels, site };

  // paint: what is at rest, and what is in hand
  const setting = (context: Konva.Context) => ({
    context: context._context as CanvasRenderingContext2D, // Konva's wrapper of the very context of its canvas
    camera: live.current ?? cameraFor(null, now.current.size, 0),
    size: now.current.whole,
    palette: palettes[now.current.theme],
  });
  const paintPlan = (context: Konva.Context) => {
    const at = setting(context);
    painted.current = at.camera;
    paintGrid(now.current.site.units.length !== 'm', at);
    for (const layer of now.current.drawing.layers) paintPrimitives(layer.primitives, at);
    paintLabels(now.current.labels, at);
  };
  const paintHand = (context: Konva.Context) => {
    paintOverlay(
      { ...now.current.overlay, landing: landing.current, moved: moved.current },
      setting(context),
    );
  };
  const repaint = () => {
    const layers = stage.current?.getLayers() ?? [];
    const content = stage.current?.content;
    if (content) content.style.transform = '';
    for (const layer of layers) layer.draw();
  };
  const repaintHand = () => stage.current?.getLayers()[1]?.batchDraw();

  useEffect(() => {
    live.current = camera;
    repaint();
  });

  // the view's size, and the first look at a site
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry === undefined || entry.contentRect.width === 0) return;
      const next = { width: entry.contentRect.width, height: entry.contentRect.height };
      usePlanView.setState(({ camera: before, size: old }) => ({
        size: next,
        camera:
          before === null || (old.width === 800 && old.height === 600)
            ? cameraFor(now.current.drawing.bounds, next, Math.min(48, next.width / 10))
            : before,
      }));
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);

  useEffect(() => {
    const repaintWithFont = () =>
      usePlanView.setState((view) => ({ camera: view.camera && { ...view.camera } }));
    void document.fonts?.ready.then(repaintWithFont);
  }, []);

  // gestures
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const shift = (next: Camera) => {
      live.current = next;
      const content = stage.current?.content;
      const from = painted.current;
      if (content === undefined || from === null) return;
      const factor = next.pxPerMetre / from.pxPerMetre;
      const { whole: all } = now.current;
      const middle = planToScreen(next, all, from.centre);
      const dx = middle.x - (all.width / 2) * factor;
      const dy = middle.y - (all.height / 2) * factor;
      content.style.transformOrigin = '0 0';
      content.style.transform = `translate(${dx}px, ${dy}px) scale(${factor})`;
      const bare =
        Math.abs(middle.x - all.width / 2) > all.width * 0.18 ||
        Math.abs(middle.y - all.height / 2) > all.height * 0.18 ||
        factor < 0.7 ||
        factor > 2.5;
      if (bare) settle();
    };
    const settle = () => {
      if (live.current !== null) usePlanView.setState({ camera: live.current });
    };
    const plan = (at: Point) =>
      screenToPlan(live.current ?? cameraFor(null, now.current.size, 0), now.current.size, at);
    const landingOf = (at: Point, by: PointerKind): Landing => {
      const px = SNAP_PX[by] / (live.current?.pxPerMetre ?? 1);
      const { overlay: hand } = now.current;
      return landingAt(hand.derived, plan(at), px, { legs: hand.tool?.subject.what === 'path' });
    };
    const hit = (at: Point, by: PointerKind) =>
      live.current && hitTest(now.current.drawing, live.current, now.current.size, at, REACH_PX[by]);
    const handleUnder = (at: Point, by: PointerKind) => {
      const view = live.current;
      if (view === null) return undefined;
      return handlesOf(now.current.overlay.derived, now.current.overlay.selected).find((handle) => {
        const on = planToScreen(view, now.current.size, handle.at);
        return Math.hypot(on.x - at.x, on.y - at.y) <= REACH_PX[by];
      });
    };
    const off = attachGestures(element, {
      tap: (at, by) => {
        const { tool: inHand, selected: chosen } = now.current.overlay;
        if (answeredForm(at, by)) return;
        if (inHand !== null) {
          placeInTool(pointFromLanding(inHand, landingOf(at, by)));
          return;
        }
        const handle = handleUnder(at, by);
        if (handle !== undefined && (chosen?.kind === 'feature' || chosen?.kind === 'path')) {
          select(chosen, handle.vertex);
          return;
        }
        const target = hit(at, by);
        if (target === null || target.kind === 'site') select(null);
        else show(target);
      },
      longPress: (at) => {
        const target = hit(at, 'touch');
        if (target !== null && target.kind !== 'site') show(target);
      },
      dragStart: (at, by) => {
        drag.current = dragFrom(at, by);
        return drag.current !== null;
      },
      dragMove: (at) => {
        if (drag.current === null) return;
        moved.current = placesWhile(drag.current, plan(at));
        repaintHand();
      },
      dragEnd: (at) => {
        const done = drag.current;
        drag.current = null;
        moved.current = null;
        if (done !== null) commit(done, plan(at));
      },
      dragCancel: () => {
        drag.current = null;
        moved.current = null;
        repaintHand();
      },
      pan: (dx, dy) => live.current && shift(pannedBy(live.current, dx, dy)),
      zoom: (about, factor) => live.current && shift(zoomedAt(live.current, now.current.size, about, factor)),
      rest: settle,
      hover: (at) => {
        if (now.current.overlay.tool === null) return;
        landing.current = at === null ? null : landingOf(at, 'mouse');
        repaintHand();
      },
    });

    /** A measuring form waits for a point, or shows two places to choose from. */
    function answeredForm(at: Point, by: PointerKind): boolean {
      const { onPick, candidates: shown } = usePicking.getState();
      if (onPick !== null) {
        const landed = landingOf(at, by);
        if (landed.on === 'point') answerPick(landed.ref);
        else notify('Tap one of the points that are there already.');
        return true;
      }
      if (shown === null || live.current === null) return false;
      const other = shown.other && planToScreen(live.current, now.current.size, shown.other);
      const near = (p: Point | null) => p !== null && Math.hypot(p.x - at.x, p.y - at.y) <= REACH_PX[by];
      if (near(other)) shown.swap();
      return near(other) || near(planToScreen(live.current, now.current.size, shown.chosen));
    }

    function dragFrom(at: Point, by: PointerKind): Drag | null {
      const { selected: chosen, derived: places, tool: inHand } = now.current.overlay;
      if (inHand !== null || (chosen?.kind !== 'feature' && chosen?.kind !== 'path')) return null;
      const handle = handleUnder(at, by);
      const owner = ownerOf(chosen.id);
      if (handle !== undefined && owner !== undefined) {
        const held = owner.vertices.find((v) => v.id === handle.vertex);
        if (held?.spot.by === 'finger' || held?.spot.by === 'course' || held?.spot.by === 'turn') {
          return { what: 'point', ref: { of: chosen.id, at: handle.vertex }, from: handle.at };
        }
        notify('This point is held by its measurements. Change them in the card, or let go of them there.');
        return null;
      }
      const target = hit(at, by);
      const same = target?.kind === chosen.kind && 'id' in target && target.id === chosen.id;
      const free = owner?.vertices.some((v) => v.spot.by === 'finger') ?? false;
      return same && free && places.features.has(chosen.id)
        ? { what: 'thing', id: chosen.id, from: plan(at) }
        : null;
    }

    function ownerOf(id: string) {
      const open = currentSite();
      return open.features.find((f) => f.id === id) ?? open.paths.find((p) => p.id === id);
    }

    function moveEdit(what: Drag, to: Point): (open: Site) => Site {
      const places = derivedFrom(currentSite()).points;
      return what.what === 'point'
        ? (open) => movePoint(open, { ref: what.ref, to, places })
        : (open) => moveThing(open, { id: what.id, by: { x: to.x - what.from.x, y: to.y - what.from.y } });
    }

    function placesWhile(what: Drag, to: Point): ReadonlyMap<string, Point> {
      const resolved = resolvePoints(moveEdit(what, to)(currentSite())).points;
      return new Map([...resolved].map(([key, point]) => [key, point.at]));
    }

    function commit(what: Drag, to: Point): void {
      const owner = ownerOf(what.what === 'point' ? what.ref.of : what.id);
      const name =
        owner === undefined
          ? ''
          : owner.name || ('kind' in owner ? words.featureKindName(owner.kind) : 'pipe');
      edit(what.what === 'point' ? `Move a point of ${name}` : `Move ${name}`, moveEdit(what, to));
    }
    return off;
  }, []);

  useEffect(() => {
    if (tool !== null) return;
    landing.current = null;
  }, [tool]);

  return (
    <div ref={box} className={styles.view} data-tool={tool === null ? 'none' : tool.subject.what}>
      <Stage
        ref={stage}
        width={whole.width}
        height={whole.height}
        listening={false}
        style={{
          position: 'absolute',
          left: (size.width - whole.width) / 2,
          top: (size.height - whole.height) / 2,
        }}
      >
        <Layer listening={false}>
          <Shape sceneFunc={paintPlan} listening={false} perfectDrawEnabled={false} />
        </Layer>
        <Layer listening={false}>
          <Shape sceneFunc={paintHand} listening={false} perfectDrawEnabled={false} />
        </Layer>
      </Stage>
    </div>
  );
}
