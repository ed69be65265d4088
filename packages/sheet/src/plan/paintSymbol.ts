import { type SymbolPart, type SymbolPrimitive, symbols } from '@footmark/drawing';
import type { Inks } from '../page/inks';
import type { Item, PaperPoint, Pen, Tint } from '../page/page';
import { type PlanView, toPaper } from './planView';

/** Symbols keep their size down to this scale (paper mm to a metre, about 1:400), then shrink with it, to this share of it at the least. */
const SHRINK = { below: 2.4, least: 0.5 };

/** A symbol's parts about its place. */
export function paintSymbol(of: SymbolPrimitive, view: PlanView, inks: Inks): readonly Item[] {
  const size = Math.max(SHRINK.least, Math.min(1, view.mmPerMetre / SHRINK.below));
  return symbolItems(of, toPaper(view, of.at), size, inks);
}

/** The same at a place on paper. */
function symbolItems(
  { symbol, azimuth, stroke, fill }: Omit<SymbolPrimitive, 'at' | 'kind'>,
  at: PaperPoint,
  size: number,
  inks: Inks,
): readonly Item[] {
  const [cos, sin] = [Math.cos(azimuth), Math.sin(azimuth)];
  const place = ({ x, y }: PaperPoint): PaperPoint => ({
    x: at.x + size * (x * cos + y * sin),
    y: at.y - size * (y * cos - x * sin),
  });
  const colour = inks[stroke.ink];
  const cover: Tint = {
    colour: inks[fill?.ink ?? 'paper'],
    ...(fill === undefined || fill.opacity === 1 ? {} : { opacity: fill.opacity }),
  };
  return symbols[symbol].parts.map((part) => {
    const paint = paintOf(part, colour, cover, {
      colour,
      width: stroke.weight * (part.weight ?? 1) * size,
      ...(part.paint === 'cover' && stroke.dash !== undefined ? { dash: stroke.dash } : {}),
    });
    return part.kind === 'circle'
      ? { is: 'circle', centre: place(part.centre), radius: part.radius * size, ...paint }
      : { is: 'lines', lines: [part.points.map(place)], closed: part.closed, ...paint };
  });
}

function paintOf(
  { paint }: SymbolPart,
  colour: string,
  cover: Tint,
  pen: Pen,
): Readonly<{ pen?: Pen; tint?: Tint }> {
  switch (paint) {
    case 'ink':
      return { tint: { colour } };
    case 'bare':
      return { tint: cover };
    case 'cover':
      return { tint: cover, pen };
    case 'stroke':
      return { pen };
  }
}
