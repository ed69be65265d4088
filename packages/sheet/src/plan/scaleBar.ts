import { FOOT_M, type Units } from '@footmark/site';
import { LINE, SIZE } from '../page/measures';
import type { Item, PaperPoint } from '../page/page';
import type { SheetSetting } from '../setting';
import { mmPerMetreOf } from './scales';

const PIECES = 4;
const BAR_MM = 1.8;
/** Lengths of one piece of a bar, in feet or metres. */
const ROUND = [0.25, 0.5, 1, 2, 2.5, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 5000];

/** The height that a bar takes with its figures, mm. */
export const SCALE_BAR_HEIGHT_MM = 6.4;

/** Length (m) of a piece, and its unit's figures, for a bar no longer than `width` mm. */
function scaleBarPiece(
  denominator: number,
  width: number,
  { length }: Units,
): { figure: number; metres: number } {
  const unit = length === 'm' ? 1 : FOOT_M;
  const most = width / mmPerMetreOf(denominator) / PIECES / unit;
  const figure = ROUND.findLast((r) => r <= most) ?? ROUND[0] ?? 1;
  return { figure, metres: figure * unit };
}

/** A graphic scale: it stays true when the sheet is printed at another size. */
export function scaleBar(
  { x, y }: PaperPoint,
  denominator: number,
  width: number,
  { site, inks }: SheetSetting,
): readonly Item[] {
  const { figure, metres } = scaleBarPiece(denominator, width, site.units);
  const piece = metres * mmPerMetreOf(denominator);
  const colour = inks.ink;
  const top = y + SIZE.fine;
  const box = (i: number) => [
    { x: x + i * piece, y: top },
    { x: x + (i + 1) * piece, y: top },
    { x: x + (i + 1) * piece, y: top + BAR_MM },
    { x: x + i * piece, y: top + BAR_MM },
  ];
  const pieces = Array.from({ length: PIECES }, (_, i) => i);
  const unit = site.units.length === 'm' ? 'm' : 'ft';
  return [
    { is: 'lines', lines: pieces.filter((i) => i % 2 === 0).map(box), closed: true, tint: { colour } },
    { is: 'lines', lines: pieces.map(box), closed: true, pen: { colour, width: LINE.thin } },
    ...[0, 1, 2, 4].map(
      (i): Item => ({
        is: 'text',
        at: { x: x + i * piece, y: top - 0.7 },
        text: i === PIECES ? `${i * figure} ${unit}` : String(i * figure),
        size: SIZE.fine,
        weight: 'regular',
        colour,
        anchor: i === 0 ? 'start' : i === PIECES ? 'end' : 'middle',
        turn: 0,
      }),
    ),
  ];
}
