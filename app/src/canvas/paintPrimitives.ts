import {
  type Bounds,
  boundsOf,
  expandPattern,
  type Fill,
  hatchLines,
  type Primitive,
  primitivePoints,
  type Stroke,
} from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import { PX_PER_MM, planToScreen } from './camera';
import { boxesMeet, mmPerMetre, type PaintSetting, type ScreenBox } from './paintSetting';
import { paintSymbol } from './paintSymbol';

/** A line's weight and a symbol's reach beyond its own points, in pixels: generous. */
const REACH_PX = 40;

/** Paints primitives in order; things outside of the region are passed over. */
export function paintPrimitives(primitives: readonly Primitive[], setting: PaintSetting): void {
  for (const primitive of primitives) {
    if (boxesMeet(primitiveBox(primitive, setting), setting.region)) paintPrimitive(primitive, setting);
  }
}

/** What a primitive takes of the paper at the most, pixels. */
export function primitiveBox(
  primitive: Primitive,
  { camera, size }: Pick<PaintSetting, 'camera' | 'size'>,
): ScreenBox {
  const { minX, minY, maxX, maxY } = boundsOfPrimitive(primitive);
  const topLeft = planToScreen(camera, size, { x: minX, y: maxY });
  const bottomRight = planToScreen(camera, size, { x: maxX, y: minY });
  return {
    minX: topLeft.x - REACH_PX,
    minY: topLeft.y - REACH_PX,
    maxX: bottomRight.x + REACH_PX,
    maxY: bottomRight.y + REACH_PX,
  };
}

const EMPTY: Bounds = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
const known = new WeakMap<Primitive, Bounds>();

/** The box around a primitive's points (m); worked out once, as primitives never change. */
function boundsOfPrimitive(primitive: Primitive): Bounds {
  const bounds = known.get(primitive) ?? boundsOf(primitivePoints(primitive)) ?? EMPTY;
  known.set(primitive, bounds);
  return bounds;
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
