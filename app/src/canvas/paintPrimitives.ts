import {
  type Bounds,
  boundsOf,
  expandPattern,
  type Fill,
  hatchLines,
  type Primitive,
  type Stroke,
} from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import { PX_PER_MM, planToScreen } from './camera';
import { mmPerMetre, type PaintSetting } from './paintSetting';
import { paintSymbol } from './paintSymbol';

/** A line's weight and a symbol's reach beyond its own points, in pixels: generous. */
const REACH_PX = 40;

/** Paints primitives in order; things outside of the view are passed over. */
export function paintPrimitives(primitives: readonly Primitive[], setting: PaintSetting): void {
  const { camera, size } = setting;
  const half = {
    x: (size.width / 2 + REACH_PX) / camera.pxPerMetre,
    y: (size.height / 2 + REACH_PX) / camera.pxPerMetre,
  };
  for (const primitive of primitives) {
    const box = boxOf(primitive);
    const inView =
      box.minX <= camera.centre.x + half.x &&
      box.maxX >= camera.centre.x - half.x &&
      box.minY <= camera.centre.y + half.y &&
      box.maxY >= camera.centre.y - half.y;
    if (inView) paintPrimitive(primitive, setting);
  }
}

const boxes = new WeakMap<Primitive, Bounds>();

/** The box around a primitive's points (m); worked out once, as primitives never change. */
function boxOf(primitive: Primitive): Bounds {
  const known = boxes.get(primitive);
  if (known !== undefined) return known;
  const box = freshBoxOf(primitive);
  boxes.set(primitive, box);
  return box;
}

const EMPTY: Bounds = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

function freshBoxOf(primitive: Primitive): Bounds {
  switch (primitive.kind) {
    case 'symbol':
      return boundsOf([primitive.at]) ?? EMPTY;
    case 'circle': {
      const { centre, radius } = primitive;
      return {
        minX: centre.x - radius,
        minY: centre.y - radius,
        maxX: centre.x + radius,
        maxY: centre.y + radius,
      };
    }
    default:
      return boundsOf(primitive.points) ?? EMPTY;
  }
}

function paintPrimitive(primitive: Primitive, setting: PaintSetting): void {
  const { context, camera } = setting;
  switch (primitive.kind) {
    case 'line': {
      tracePlan(primitive.points, primitive.closed, setting);
      if (primitive.fill) fillTrace(primitive.fill, primitive.points, setting);
      if (primitive.stroke) strokeTrace(primitive.stroke, setting);
      return;
    }
    case 'circle': {
      const centre = planToScreen(camera, setting.size, primitive.centre);
      context.beginPath();
      context.arc(centre.x, centre.y, primitive.radius * camera.pxPerMetre, 0, 2 * Math.PI);
      if (primitive.fill) fillTrace(primitive.fill, [], setting);
      if (primitive.stroke) strokeTrace(primitive.stroke, setting);
      return;
    }
    case 'pattern':
      paintPrimitives(expandPattern(primitive, mmPerMetre(camera)), setting);
      return;
    case 'symbol':
      paintSymbol(primitive, setting);
  }
}

function tracePlan(points: readonly Point[], closed: boolean, { context, camera, size }: PaintSetting): void {
  context.beginPath();
  for (const [i, p] of points.entries()) {
    const at = planToScreen(camera, size, p);
    if (i === 0) context.moveTo(at.x, at.y);
    else context.lineTo(at.x, at.y);
  }
  if (closed) context.closePath();
}

function strokeTrace(stroke: Stroke, { context, palette }: PaintSetting): void {
  context.strokeStyle = palette[stroke.ink];
  context.lineWidth = Math.max(0.6, stroke.weight * PX_PER_MM);
  context.lineJoin = 'round';
  context.lineCap = stroke.dash === undefined ? 'round' : 'butt';
  context.setLineDash(stroke.dash?.map((mm) => mm * PX_PER_MM) ?? []);
  context.globalAlpha = stroke.opacity ?? 1;
  context.stroke();
  context.globalAlpha = 1;
  context.setLineDash([]);
}

function fillTrace(fill: Fill, ring: readonly Point[], setting: PaintSetting): void {
  const { context, palette, camera, size } = setting;
  context.globalAlpha = fill.opacity;
  if (fill.hatch === undefined) {
    context.fillStyle = palette[fill.ink];
    context.fill('evenodd');
  } else {
    context.strokeStyle = palette[fill.ink];
    context.lineWidth = 0.7;
    for (const [a, b] of hatchLines(ring, mmPerMetre(camera))) {
      const [from, to] = [planToScreen(camera, size, a), planToScreen(camera, size, b)];
      context.beginPath();
      context.moveTo(from.x, from.y);
      context.lineTo(to.x, to.y);
      context.stroke();
    }
    tracePlan(ring, true, setting);
  }
  context.globalAlpha = 1;
}
