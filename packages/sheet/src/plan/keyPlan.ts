import { boundsOf, type Drawing } from '@footmark/drawing';
import { LINE, SIZE } from '../page/measures';
import type { Item } from '../page/page';
import type { SheetSetting } from '../setting';
import type { TextBlock } from '../text/textBlock';
import { paintPrimitives } from './paintPrimitives';
import { type PlanView, toPaper } from './planView';
import type { Tile } from './tiles';

/** Of the whole yard on a key plan, mm at most. */
const HIGHEST_MM = 42;

/** Layers that tell a yard at a glance. */
const TELLING: ReadonlySet<string> = new Set(['land', 'buildings', 'pipe']);

/** The whole yard small, with the piece of each sheet, this one's shaded. */
export function keyPlan(
  drawing: Drawing,
  tiles: readonly Tile[],
  size: Readonly<{ width: number; height: number }>,
  here: Tile,
  width: number,
  setting: SheetSetting,
): TextBlock {
  const pieces = tiles.map((t) => pieceOf(t, size));
  const whole = boundsOf(pieces.flatMap((b) => [b.lower, b.upper]));
  if (whole === null) return { height: 0, paint: () => [] };
  const mmPerMetre = Math.min(width / (whole.maxX - whole.minX), HIGHEST_MM / (whole.maxY - whole.minY));
  const height = (whole.maxY - whole.minY) * mmPerMetre;
  const { inks } = setting;
  const telling = drawing.layers
    .filter((l) => TELLING.has(l.name))
    .flatMap((l) => l.primitives.filter((p) => p.kind === 'line'));
  return {
    height,
    paint: ({ x, y }) => {
      const box = { x, y, width: (whole.maxX - whole.minX) * mmPerMetre, height };
      const view: PlanView = { box, corner: { x: whole.minX, y: whole.minY }, mmPerMetre };
      return [
        { is: 'window', box, items: paintPrimitives(telling.map(thinner), view, inks) },
        ...tiles.flatMap((tile, i) => tileItems(tile, pieces[i], tile === here, view, setting)),
      ];
    },
  };
}

type Piece = Readonly<{ lower: { x: number; y: number }; upper: { x: number; y: number } }>;

function pieceOf({ corner }: Tile, { width, height }: { width: number; height: number }): Piece {
  return { lower: corner, upper: { x: corner.x + width, y: corner.y + height } };
}

function tileItems(
  { number }: Tile,
  piece: Piece | undefined,
  isHere: boolean,
  view: PlanView,
  { inks }: SheetSetting,
): readonly Item[] {
  if (piece === undefined) return [];
  const [a, b] = [toPaper(view, piece.lower), toPaper(view, piece.upper)];
  const ring = [a, { x: b.x, y: a.y }, b, { x: a.x, y: b.y }];
  return [
    {
      is: 'lines',
      lines: [ring],
      closed: true,
      pen: { colour: inks.ink, width: isHere ? LINE.frame : LINE.fine },
      ...(isHere ? { tint: { colour: inks.ink, opacity: 0.14 } } : {}),
    },
    {
      is: 'text',
      at: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 + SIZE.body * 0.35 },
      text: String(number),
      size: SIZE.body,
      weight: isHere ? 'bold' : 'regular',
      colour: inks.ink,
      anchor: 'middle',
      turn: 0,
    },
  ];
}

/** Lines of a small plan are thin, and its areas bare. */
function thinner(primitive: Drawing['layers'][number]['primitives'][number]) {
  if (primitive.kind !== 'line') return primitive;
  const { fill: _fill, ...outline } = primitive;
  return outline.stroke === undefined
    ? outline
    : { ...outline, stroke: { ...outline.stroke, weight: outline.stroke.weight / 2.5 } };
}
