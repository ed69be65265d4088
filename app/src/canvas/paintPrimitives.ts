import {
  expandPattern,
  type Fill,
  hatchLines,
  type Primitive,
  type Stroke,
  type SymbolPrimitive,
  symbols,
} from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import { type Camera, PX_PER_MM, planToScreen, type ViewSize } from './camera';
import type { Palette } from './palette';

/** What a painter needs besides what it paints. */
export type PaintSetting = {
  readonly context: CanvasRenderingContext2D;
  readonly camera: Camera;
  readonly size: ViewSize;
  readonly palette: Palette;
};

/** Paper millimetres to one metre of plan at a camera's scale. */
export function mmPerMetre(camera: Camera): number {
  return camera.pxPerMetre / PX_PER_MM;
}

/** Paints primitives in order; things outside of the view are passed over. */
export function paintPrimitives(primitives: readonly Primitive[], setting: PaintSetting): void {
  for (const primitive of primitives) paintPrimitive(primitive, setting);
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

/** Symbols keep their size down to this scale (paper mm to a metre, 1:200), then shrink with it, to this share of it at the least. */
const SHRINK = { below: 5, least: 0.55 };

function symbolShrink(mmPerM: number): number {
  return Math.max(SHRINK.least, Math.min(1, mmPerM / SHRINK.below));
}

function paintSymbol(primitive: SymbolPrimitive, { context, camera, size, palette }: PaintSetting): void {
  const at = planToScreen(camera, size, primitive.at);
  const reach = 40;
  if (at.x < -reach || at.y < -reach || at.x > size.width + reach || at.y > size.height + reach) return;
  context.save();
  context.translate(at.x, at.y);
  context.rotate(primitive.azimuth);
  const pxPerMm = PX_PER_MM * symbolShrink(mmPerMetre(camera));
  context.scale(pxPerMm, -pxPerMm);
  context.lineJoin = 'round';
  context.lineCap = 'round';
  for (const part of symbols[primitive.symbol].parts) {
    context.beginPath();
    if (part.kind === 'circle') context.arc(part.centre.x, part.centre.y, part.radius, 0, 2 * Math.PI);
    else {
      for (const [i, p] of part.points.entries()) {
        if (i === 0) context.moveTo(p.x, p.y);
        else context.lineTo(p.x, p.y);
      }
      if (part.closed) context.closePath();
    }
    if (part.paint === 'ink') {
      context.fillStyle = palette[primitive.stroke.ink];
      context.fill();
      continue;
    }
    if (part.paint === 'cover') {
      context.fillStyle = palette[primitive.fill?.ink ?? 'paper'];
      context.globalAlpha = primitive.fill?.opacity ?? 1;
      context.fill();
      context.globalAlpha = 1;
    }
    context.strokeStyle = palette[primitive.stroke.ink];
    context.lineWidth = primitive.stroke.weight * (part.weight ?? 1);
    context.stroke();
  }
  context.restore();
}
