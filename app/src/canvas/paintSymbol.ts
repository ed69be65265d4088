import { type SymbolPrimitive, symbols } from '@footmark/drawing';
import { PX_PER_MM, planToScreen } from './camera';
import type { PaintSetting } from './paintSetting';

/** Symbols keep their size down to this scale (paper mm to a metre, about 1:400), then shrink with it, to this share of it at the least. */
const SHRINK = { below: 2.4, least: 0.5 };

/** Bare pixels about a symbol's own reach, for its pen. */
const MARGIN_PX = 3;

/** Past this many the stamps of other scales and themes are thrown away. */
const MOST_STAMPS = 400;

type Stamp = { readonly picture: HTMLCanvasElement; readonly side: number };

const stamps = new Map<string, Stamp>();

/**
 * Paints a symbol. Those that stand upright are stamped from a picture that was painted once: a canvas takes a thousand stamps in
 * the time of a few dozen drawn symbols.
 */
export function paintSymbol(primitive: SymbolPrimitive, setting: PaintSetting): void {
  const { context, camera, size } = setting;
  const at = planToScreen(camera, size, primitive.at);
  const pxPerMm =
    PX_PER_MM * Math.max(SHRINK.least, Math.min(1, camera.pxPerMetre / PX_PER_MM / SHRINK.below));
  if (primitive.azimuth === 0) {
    const { picture, side } = stampOf(primitive, pxPerMm, setting);
    context.drawImage(picture, at.x - side / 2, at.y - side / 2, side, side);
    return;
  }
  context.save();
  context.translate(at.x, at.y);
  context.rotate(primitive.azimuth);
  paintParts(primitive, pxPerMm, setting);
  context.restore();
}

function stampOf(primitive: SymbolPrimitive, pxPerMm: number, setting: PaintSetting): Stamp {
  const { symbol, stroke, fill } = primitive;
  const { density } = setting;
  const ink = setting.palette[stroke.ink];
  const cover = setting.palette[fill?.ink ?? 'paper'];
  const dash = stroke.dash?.join(' ') ?? '';
  const key = [symbol, ink, stroke.weight, dash, cover, fill?.opacity ?? 1, pxPerMm, density].join('|');
  const known = stamps.get(key);
  if (known !== undefined) return known;
  if (stamps.size >= MOST_STAMPS) stamps.clear();
  const side = 2 * Math.ceil(reachOf(symbol) * pxPerMm + MARGIN_PX);
  const picture = document.createElement('canvas');
  picture.width = Math.ceil(side * density);
  picture.height = picture.width;
  const context = picture.getContext('2d');
  if (context !== null) {
    context.scale(density, density);
    context.translate(side / 2, side / 2);
    paintParts(primitive, pxPerMm, { ...setting, context });
  }
  const stamp = { picture, side };
  stamps.set(key, stamp);
  return stamp;
}

/** How far (mm) from its place a symbol's parts go. */
function reachOf(symbol: SymbolPrimitive['symbol']): number {
  return symbols[symbol].parts.reduce((far, part) => {
    const own =
      part.kind === 'circle'
        ? Math.hypot(part.centre.x, part.centre.y) + part.radius
        : part.points.reduce((most, p) => Math.max(most, Math.hypot(p.x, p.y)), 0);
    return Math.max(far, own);
  }, 0);
}

/** Paints a symbol's parts about the context's origin, paper up. */
function paintParts(primitive: SymbolPrimitive, pxPerMm: number, { context, palette }: PaintSetting): void {
  const { stroke, fill } = primitive;
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
      context.fillStyle = palette[stroke.ink];
      context.fill();
      continue;
    }
    if (part.paint !== 'stroke') {
      context.fillStyle = palette[fill?.ink ?? 'paper'];
      context.globalAlpha = fill?.opacity ?? 1;
      context.fill();
      context.globalAlpha = 1;
      if (part.paint === 'bare') continue;
    }
    // what was placed by eye has a dashed rim
    context.setLineDash(part.paint === 'cover' && stroke.dash !== undefined ? [...stroke.dash] : []);
    context.strokeStyle = palette[stroke.ink];
    context.lineWidth = stroke.weight * (part.weight ?? 1);
    context.stroke();
    context.setLineDash([]);
  }
}
