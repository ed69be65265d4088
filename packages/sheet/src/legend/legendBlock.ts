import { GAP, SIZE } from '../page/measures';
import type { Item } from '../page/page';
import { paintPrimitives } from '../plan/paintPrimitives';
import type { PlanView } from '../plan/planView';
import type { SheetSetting } from '../setting';
import { capitalsBelow, type TextBlock, textBlock } from '../text/textBlock';
import type { LegendEntry } from './legendEntries';
import { SWATCH, swatchOf } from './swatch';

const BETWEEN_MM = 4;
/** A column of a legend is no narrower (mm): a sample and a name that is still read. */
const NARROWEST_MM = 34;

/** A legend in a column of `width` mm, in as many columns as its names allow, filled downwards. */
export function legendBlock(
  entries: readonly LegendEntry[],
  width: number,
  setting: SheetSetting,
): TextBlock {
  const count = Math.max(1, Math.floor((width + BETWEEN_MM) / (NARROWEST_MM + BETWEEN_MM)));
  const column = (width - (count - 1) * BETWEEN_MM) / count;
  const rows = entries.map((entry) => legendRow(entry, column, setting));
  const columns = filledEvenly(rows, count);
  const heightOf = (own: readonly TextBlock[]) => own.reduce((sum, row) => sum + row.height, 0);
  return {
    height: Math.max(0, ...columns.map(heightOf)),
    paint: ({ x, y }) =>
      columns.flatMap((own, i) => {
        let down = y;
        return own.flatMap((row) => {
          const items = row.paint({ x: x + i * (column + BETWEEN_MM), y: down });
          down += row.height;
          return items;
        });
      }),
  };
}

/** Down one column after the other, the highest as low as it can be. */
function filledEvenly(rows: readonly TextBlock[], count: number): readonly (readonly TextBlock[])[] {
  const whole = rows.reduce((sum, row) => sum + row.height, 0);
  for (let depth = whole / count; ; depth += 0.5) {
    const columns: TextBlock[][] = [];
    let down = Infinity;
    for (const row of rows) {
      if (down + row.height > depth) {
        columns.push([row]);
        down = row.height;
      } else {
        columns.at(-1)?.push(row);
        down += row.height;
      }
    }
    if (columns.length <= count) return columns;
  }
}

function legendRow(
  { name, primitives, letters }: LegendEntry,
  width: number,
  setting: SheetSetting,
): TextBlock {
  const { inks, lettering } = setting;
  const text = textBlock(
    name,
    { size: SIZE.small, weight: 'regular', colour: inks.ink, mostLines: 3 },
    width - SWATCH.width - GAP.small,
    setting,
  );
  const height = Math.max(SWATCH.height, text.height + GAP.hair);
  return {
    height,
    paint: ({ x, y }) => {
      const box = { x, y, width: SWATCH.width, height: SWATCH.height };
      const view: PlanView = { box, corner: { x: 0, y: 0 }, mmPerMetre: SCALE };
      const drawn = paintPrimitives(swatchOf(primitives).map(toScale), view, inks);
      return [
        { is: 'window', box, items: [...drawn, ...lettersOn(letters, view, setting)] },
        ...text.paint({
          x: x + SWATCH.width + GAP.small,
          y: y + Math.max(0, (SWATCH.height - text.height) / 2),
        }),
      ];
    },
  };

  function lettersOn(
    said: string | undefined,
    { box }: PlanView,
    { inks: { paper, ink } }: SheetSetting,
  ): readonly Item[] {
    if (said === undefined) return [];
    const size = SIZE.fine * 0.9;
    const half = lettering.widthOf(said, size, 'regular') / 2 + 0.4;
    const [cx, cy] = [box.x + box.width / 2, box.y + box.height / 2];
    const ring = [
      { x: cx - half, y: cy - 1.2 },
      { x: cx + half, y: cy - 1.2 },
      { x: cx + half, y: cy + 1.2 },
      { x: cx - half, y: cy + 1.2 },
    ];
    return [
      { is: 'lines', lines: [ring], closed: true, tint: { colour: paper } },
      {
        is: 'text',
        at: { x: cx, y: cy - size / 2 + capitalsBelow(size) - size * 0.09 },
        text: said,
        size,
        weight: 'regular',
        colour: ink,
        anchor: 'middle',
        turn: 0,
      },
    ];
  }
}

/** Samples are painted at the scale at which symbols have their full size, mm to the metre. */
const SCALE = 10;

function toScale(primitive: ReturnType<typeof swatchOf>[number]): ReturnType<typeof swatchOf>[number] {
  const shrunk = (p: { x: number; y: number }) => ({ x: p.x / SCALE, y: p.y / SCALE });
  switch (primitive.kind) {
    case 'symbol':
      return { ...primitive, at: shrunk(primitive.at) };
    case 'circle':
      return { ...primitive, centre: shrunk(primitive.centre), radius: primitive.radius / SCALE };
    default:
      return { ...primitive, points: primitive.points.map(shrunk) };
  }
}
