import type { Point } from '@footmark/geometry';

/** What a hand did on the plan, in CSS pixels from the view's top left corner. */
export type GestureHandlers = {
  readonly tap: (at: Point, press: Press) => void;
  readonly longPress: (at: Point) => void;
  /** A press that begins to move. True: this gesture drags a thing; false: it pans. */
  readonly dragStart: (at: Point, press: Press) => boolean;
  readonly dragMove: (at: Point) => void;
  readonly dragEnd: (at: Point) => void;
  readonly dragCancel: () => void;
  readonly pan: (dx: number, dy: number) => void;
  readonly zoom: (about: Point, factor: number) => void;
  readonly rest: () => void;
  readonly hover: (at: Point | null, press: Press) => void;
};

export type PointerKind = 'touch' | 'mouse';

/** How a press was made: with what, and with which keys held. */
export type Press = { readonly by: PointerKind; readonly shift: boolean; readonly alt: boolean };

/** A press that moves less is a tap. A gloved finger trembles more than a mouse. */
const STILL_PX = { touch: 10, mouse: 4 };
const LONG_PRESS_MS = 550;
/** The wheel is at rest when it has not turned for this long. */
const WHEEL_REST_MS = 110;
/** Wheel pixels that double the scale. */
const WHEEL_DOUBLE_PX = 320;

type Finger = Press & { readonly id: number; readonly start: Point; at: Point };

/** Turns pointer and wheel events of an element into gestures. Returns what takes it off again. */
export function attachGestures(element: HTMLElement, on: GestureHandlers): () => void {
  const presses = new Map<number, Finger>();
  let mode: 'idle' | 'pressed' | 'pan' | 'drag' | 'pinch' = 'idle';
  let longPress = 0;
  let wheelRest = 0;
  let turns = 0;

  const place = (event: { clientX: number; clientY: number }): Point => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const pair = () => [...presses.values()].slice(0, 2) as [Finger, Finger]; // called with two fingers down

  const down = (event: PointerEvent) => {
    if (event.button > 1) return;
    element.setPointerCapture(event.pointerId);
    const at = place(event);
    presses.set(event.pointerId, { ...pressOf(event), id: event.pointerId, start: at, at });
    window.clearTimeout(longPress);
    if (presses.size === 2) {
      if (mode === 'drag') on.dragCancel();
      mode = 'pinch';
      return;
    }
    if (presses.size > 2) return;
    mode = 'pressed';
    longPress = window.setTimeout(() => {
      if (mode !== 'pressed') return;
      mode = 'idle';
      on.longPress(at);
    }, LONG_PRESS_MS);
  };

  const move = (event: PointerEvent) => {
    const press = presses.get(event.pointerId);
    const at = place(event);
    if (press === undefined) {
      on.hover(at, pressOf(event));
      return;
    }
    const before = press.at;
    if (mode === 'pinch') {
      const [a, b] = pair();
      const was = { gap: Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y), mid: middle(a.at, b.at) };
      press.at = at;
      const now = { gap: Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y), mid: middle(a.at, b.at) };
      on.pan(now.mid.x - was.mid.x, now.mid.y - was.mid.y);
      if (was.gap > 0) on.zoom(now.mid, now.gap / was.gap);
      return;
    }
    press.at = at;
    if (mode === 'pressed') {
      if (Math.hypot(at.x - press.start.x, at.y - press.start.y) < STILL_PX[press.by]) return;
      window.clearTimeout(longPress);
      mode = on.dragStart(press.start, press) ? 'drag' : 'pan';
      if (mode === 'pan') on.pan(at.x - press.start.x, at.y - press.start.y);
      else on.dragMove(at);
      return;
    }
    if (mode === 'pan') on.pan(at.x - before.x, at.y - before.y);
    if (mode === 'drag') on.dragMove(at);
  };

  const up = (event: PointerEvent) => {
    const press = presses.get(event.pointerId);
    if (press === undefined) return;
    presses.delete(event.pointerId);
    window.clearTimeout(longPress);
    const was = mode;
    if (was === 'pressed') on.tap(place(event), press);
    if (was === 'drag') on.dragEnd(place(event));
    if (was === 'pan' || was === 'pinch') on.rest();
    // the finger that stays after a pinch neither taps nor drags
    mode = presses.size > 0 && was === 'pinch' ? 'pan' : 'idle';
  };

  const cancel = (event: PointerEvent) => {
    if (!presses.delete(event.pointerId)) return;
    window.clearTimeout(longPress);
    if (mode === 'drag') on.dragCancel();
    else if (mode !== 'idle') on.rest();
    mode = 'idle';
  };

  const wheel = (event: WheelEvent) => {
    event.preventDefault();
    const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
    if (event.ctrlKey || !isTrackpadPan(event)) {
      const factor = 2 ** ((-event.deltaY * lines * (event.ctrlKey ? 4 : 1)) / WHEEL_DOUBLE_PX);
      on.zoom(place(event), factor);
    } else on.pan(-event.deltaX, -event.deltaY);
    turns += 1;
    restAfter(turns);
  };

  /** Rests when the wheel has stood still for a while and a frame has passed: a late frame is no rest. */
  const restAfter = (turn: number) => {
    window.clearTimeout(wheelRest);
    wheelRest = window.setTimeout(
      () => window.requestAnimationFrame(() => window.setTimeout(() => turn === turns && on.rest())),
      WHEEL_REST_MS,
    );
  };

  const leave = (event: PointerEvent) => on.hover(null, pressOf(event));
  element.addEventListener('pointerdown', down);
  element.addEventListener('pointermove', move);
  element.addEventListener('pointerup', up);
  element.addEventListener('pointercancel', cancel);
  element.addEventListener('pointerleave', leave);
  element.addEventListener('wheel', wheel, { passive: false });
  return () => {
    window.clearTimeout(longPress);
    turns += 1;
    window.clearTimeout(wheelRest);
    element.removeEventListener('pointerdown', down);
    element.removeEventListener('pointermove', move);
    element.removeEventListener('pointerup', up);
    element.removeEventListener('pointercancel', cancel);
    element.removeEventListener('pointerleave', leave);
    element.removeEventListener('wheel', wheel);
  };
}

function pressOf(event: PointerEvent): Press {
  const by = event.pointerType === 'mouse' ? 'mouse' : 'touch';
  return { by, shift: event.shiftKey, alt: event.altKey };
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** A trackpad's two-finger swipe comes in small steps with a part to the side; a wheel turns straight. */
function isTrackpadPan(event: WheelEvent): boolean {
  return event.deltaMode === WheelEvent.DOM_DELTA_PIXEL && event.deltaX !== 0;
}
