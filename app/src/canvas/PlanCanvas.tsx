import type Konva from 'konva';
import { useEffect, useMemo, useRef } from 'react';
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import { boundsToShow } from '../pictures/boundsToShow';
import { paintPictureInHand } from '../pictures/paintPictures';
import { useProfilePointer } from '../profile/profilePointer';
import { useWaysOnPlan } from '../reroute/useWaysOnPlan';
import { usePicking } from '../session/picking';
import { useDerived, useSite } from '../session/siteSession';
import { useWorkbench } from '../session/workbench';
import { placesInHand } from '../tools/draftPlaces';
import { type Camera, cameraFor, planToScreen, type ViewSize } from './camera';
import { attachGestures } from './gestures';
import type { InMotion, Overlay } from './overlay';
import styles from './PlanCanvas.module.css';
import { paintConcerns } from './paintConcerns';
import { textMeasurer } from './paintLabels';
import { paintOverlay } from './paintOverlay';
import { type PaintedPlan, type PlanPicture, paintPlan } from './paintPlan';
import { wholePaper } from './paintSetting';
import { palettes } from './palette';
import { planHand } from './planHand';
import { usePlanPins } from './planPins';
import { fitMargin, usePlanView } from './planView';
import { usePlanPicture } from './usePlanPicture';

/** Paper painted beyond the view on every side, as a share of it, so that a pan shows no bare edge at once. */
const OVERSCAN = 0.3;

/** A gesture that goes further than this before it rests is painted in between: shares of the painted paper, and factors. */
const BARE = { shift: 0.18, smaller: 0.7, larger: 2.5 };

/** What changes between renders: the camera under the hand, the one that rests in the store, the one that was painted for. */
type LiveView = { camera: Camera; rested: Camera | null; painted: PaintedPlan | null } & InMotion;

/**
 * The plan: the drawing at rest on one canvas, what is in hand on another above it. A pan or zoom moves the painted drawing, which is painted anew when
 * the hand rests, and paints the little that is in hand; React renders neither per frame nor per thing. `hand`: what gestures do, the same at every render.
 */
export function PlanCanvas({ hand = planHand }: { readonly hand?: typeof planHand }) {
  const site = useSite();
  const derived = useDerived();
  const { selected, group, vertex, tool } = useWorkbench();
  const candidates = usePicking((p) => p.candidates);
  const { camera, size, theme } = usePlanView();
  const box = useRef<HTMLDivElement>(null);
  const paperStage = useRef<Konva.Stage>(null);
  const handStage = useRef<Konva.Stage>(null);

  const draft = useMemo(() => placesInHand(site, tool), [site, tool]);
  const measure = useMemo(() => textMeasurer(scratchContext()), []);
  const picture = usePlanPicture(measure);
  const { width, height } = size;
  const paperWidth = Math.round(width * (1 + 2 * OVERSCAN));
  const paperHeight = Math.round(height * (1 + 2 * OVERSCAN));
  const ways = useWaysOnPlan();
  const pins = usePlanPins();
  const overlay: Overlay = { site, derived, selected, group, vertex, tool, draft, candidates, ways, pins };

  // what gestures and painters read: as it is at this render, and what changes between renders
  const paper = { width: paperWidth, height: paperHeight };
  const now = useRef({ picture, overlay, size, paper, theme });
  now.current = { picture, overlay, size, paper, theme };
  const live = useRef<LiveView>({
    camera: camera ?? cameraFor(null, size, fitMargin(size)),
    rested: camera,
    painted: null,
    landing: null,
    moved: null,
    turns: [],
    marquee: null,
    concerns: null,
    pointer: null,
  });

  // the same at every render: Konva would paint anew for another function
  const paint = useMemo(() => {
    const setting = (context: Konva.Context, size: ViewSize) => ({
      context: context._context as CanvasRenderingContext2D, // Konva's wrapper of the very context of its canvas
      camera: live.current.camera,
      size,
      palette: palettes[now.current.theme],
      density: context.canvas.getPixelRatio(),
    });
    return {
      plan: (context: Konva.Context) => {
        const { picture, paper } = now.current;
        live.current.painted = paintPlan(picture, setting(context, paper), live.current.painted);
      },
      hand: (context: Konva.Context) => {
        const { overlay, size } = now.current;
        const at = { ...setting(context, size), region: wholePaper(size) };
        paintPictureInHand(overlay.derived, at);
        paintConcerns(live.current.concerns, measure, at);
        paintOverlay(overlay, live.current, at);
      },
    };
  }, [measure]);

  // the plan when something of it is another, what is in hand also when that alone is: each once
  const ofPlan = [picture, camera, size, theme];
  const ofHand = [selected, group, vertex, tool, draft, candidates, ways, pins];
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the painters read from `now`
  useEffect(() => {
    if (camera !== null && camera !== live.current.rested) {
      live.current.rested = camera;
      live.current.camera = camera;
    }
    if (paperStage.current !== null) redrawPlan(paperStage.current);
  }, [...ofPlan]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the painters read from `now`
  useEffect(() => {
    if (tool === null) live.current = { ...live.current, landing: null };
    handStage.current?.draw();
  }, [...ofPlan, ...ofHand]);

  // the view's size, and the first look at a site
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry === undefined || entry.contentRect.width === 0) return;
      const { width, height } = entry.contentRect;
      const next = { width, height };
      usePlanView.setState((view) => {
        const fitted = view.camera === null ? wholeOf(now.current) : view.fitted;
        const kept = view.camera !== null && fitted === null;
        return { size: next, fitted, camera: kept ? view.camera : cameraFor(fitted, next, fitMargin(next)) };
      });
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);

  // the place that the profile shows moves with the hand: it is painted without a render
  useEffect(
    () =>
      useProfilePointer.subscribe(({ place }) => {
        live.current = { ...live.current, pointer: place };
        handStage.current?.batchDraw();
      }),
    [],
  );

  // canvases that the browser has thrown away come back bare
  useEffect(() => {
    const element = box.current;
    const bare = () => {
      live.current.painted = null;
      if (paperStage.current !== null) redrawPlan(paperStage.current);
      handStage.current?.draw();
    };
    // it does not bubble
    element?.addEventListener('contextrestored', bare, true);
    return () => element?.removeEventListener('contextrestored', bare, true);
  }, []);

  // labels are measured anew when the lettering has come
  useEffect(() => {
    void document.fonts.ready.then(() =>
      usePlanView.setState((view) => ({ camera: view.camera && { ...view.camera } })),
    );
  }, []);

  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const rest = () => {
      if (live.current.camera !== live.current.rested)
        usePlanView.setState({ camera: live.current.camera, fitted: null });
    };
    return attachGestures(
      element,
      hand({
        camera: () => live.current.camera,
        size: () => now.current.size,
        drawing: () => now.current.picture.drawing,
        labels: () => now.current.picture.labels,
        overlay: () => now.current.overlay,
        look: (next) => {
          live.current.camera = next;
          handStage.current?.batchDraw();
          const content = paperStage.current?.content;
          const { painted } = live.current;
          if (content === undefined || painted === null) return;
          const { moved, transform } = paperShift(painted.setting.camera, next, now.current.paper);
          content.style.transformOrigin = '0 0';
          content.style.transform = transform;
          if (moved) rest();
        },
        rest,
        preview: (what) => {
          Object.assign(live.current, what);
          handStage.current?.batchDraw();
        },
      }),
    );
  }, [hand]);

  // Konva's own renderer goes through its things each time it is asked: only where the paper is another
  const canvases = useMemo(
    () => (
      <>
        <Stage
          ref={paperStage}
          width={paperWidth}
          height={paperHeight}
          listening={false}
          style={{ position: 'absolute', left: (width - paperWidth) / 2, top: (height - paperHeight) / 2 }}
        >
          <Layer listening={false} clearBeforeDraw={false}>
            <Shape sceneFunc={paint.plan} listening={false} perfectDrawEnabled={false} />
          </Layer>
        </Stage>
        <Stage
          ref={handStage}
          width={width}
          height={height}
          listening={false}
          style={{ position: 'absolute', left: 0, top: 0 }}
        >
          <Layer listening={false}>
            <Shape sceneFunc={paint.hand} listening={false} perfectDrawEnabled={false} />
          </Layer>
        </Stage>
      </>
    ),
    [paint, width, height, paperWidth, paperHeight],
  );

  return (
    <div ref={box} className={styles.view} data-tool={tool === null ? 'none' : tool.is}>
      {canvases}
    </div>
  );
}

/** Paints what has changed of the plan; where a gesture has moved the painted paper it comes back to where it lies. */
function redrawPlan(paper: Konva.Stage): void {
  paper.draw();
  paper.content.style.transform = '';
}

/** The CSS transform that shows paper painted for one camera as another sees it, and whether bare paper comes near. */
function paperShift(painted: Camera, seen: Camera, paper: { width: number; height: number }) {
  const factor = seen.pxPerMetre / painted.pxPerMetre;
  const middle = planToScreen(seen, paper, painted.centre);
  const dx = middle.x - (paper.width / 2) * factor;
  const dy = middle.y - (paper.height / 2) * factor;
  const moved =
    Math.abs(middle.x - paper.width / 2) > paper.width * BARE.shift ||
    Math.abs(middle.y - paper.height / 2) > paper.height * BARE.shift ||
    factor < BARE.smaller ||
    factor > BARE.larger;
  return { moved, transform: `translate(${dx}px, ${dy}px) scale(${factor})` };
}

function wholeOf({ picture: { drawing, site, derived } }: { picture: PlanPicture }) {
  return boundsToShow(drawing, site, derived);
}

function scratchContext(): CanvasRenderingContext2D {
  const context = document.createElement('canvas').getContext('2d');
  if (context === null) throw new Error('this browser has no 2D canvas');
  return context;
}
