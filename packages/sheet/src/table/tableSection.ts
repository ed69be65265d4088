import type { Piece, Section } from '../flow/section';
import { GAP, LINE, SIZE } from '../page/measures';
import type { Item, PaperPoint } from '../page/page';
import type { SheetSetting } from '../setting';
import { capitalsBelow, stacked, type TextBlock, textBlock } from '../text/textBlock';

/** `share`: of the table's width, against those of the others. */
export type TableColumn = Readonly<{ head: string; share: number }>;

/** What is read first, what is read after it, and whether the first is lettered large. */
export type TableCell = Readonly<{ main?: string; more?: readonly string[]; large?: boolean }>;

/** Between columns, mm. */
const BETWEEN_MM = 2.4;
const MOST_LINES = { head: 3, main: 4, more: 8 } as const;

/** What stands at its foot; how many stretches of the table stand beside each other. */
export type TableOptions = Readonly<{ notes?: readonly string[]; abreast?: number }>;

/** A table under a heading, with notes at its foot; its head is painted again on every page that it goes on to. A row is never cut. */
export function tableSection(
  heading: string,
  columns: readonly TableColumn[],
  rows: readonly (readonly TableCell[])[],
  setting: SheetSetting,
  { notes = [], abreast = 1 }: TableOptions = {},
): Section {
  return {
    heading,
    columns: abreast,
    gap: 0,
    make: (width) => {
      const places = placesOf(columns, width);
      return {
        repeat: headOf(columns, places, width, setting),
        pieces: [
          ...rows.map((row) => rowOf(row, places, width, setting)),
          ...(rows.length === 0 || notes.length === 0 ? [] : [footOf(notes, width, setting)]),
        ],
      };
    },
  };
}

type Place = Readonly<{ x: number; width: number }>;

function placesOf(columns: readonly TableColumn[], width: number): readonly Place[] {
  const whole = columns.reduce((sum, c) => sum + c.share, 0);
  const free = width - BETWEEN_MM * (columns.length - 1);
  let x = 0;
  return columns.map(({ share }) => {
    const place = { x, width: (share / whole) * free };
    x += place.width + BETWEEN_MM;
    return place;
  });
}

function headOf(
  columns: readonly TableColumn[],
  places: readonly Place[],
  width: number,
  setting: SheetSetting,
): Piece {
  const style = {
    size: SIZE.fine,
    weight: 'bold',
    colour: setting.inks.assumed,
    mostLines: MOST_LINES.head,
  } as const;
  const blocks = columns.map(({ head }, i) => textBlock(head, style, places[i]?.width ?? 0, setting));
  const deepest = Math.max(...blocks.map((b) => b.height));
  const height = deepest + GAP.hair + GAP.hair;
  return {
    height,
    paint: ({ x, y }) => [
      // heads stand on the rule
      ...blocks.flatMap((b, i) => b.paint({ x: x + (places[i]?.x ?? 0), y: y + deepest - b.height })),
      rule({ x, y: y + height }, width, LINE.medium, setting.inks.ink),
    ],
  };
}

function rowOf(
  cells: readonly TableCell[],
  places: readonly Place[],
  width: number,
  setting: SheetSetting,
): Piece {
  const blocks = cells.map((cell, i) => cellBlock(cell, places[i]?.width ?? 0, setting));
  // all first lines stand on one base line, that of the largest
  const large = cells.some((c) => c.large === true);
  const down = (cell: TableCell | undefined) =>
    large && cell?.large !== true
      ? capitalsBelow(SIZE.strong) - capitalsBelow(cell?.main === undefined ? SIZE.small : SIZE.body)
      : 0;
  const height = Math.max(...blocks.map((b, i) => b.height + down(cells[i]))) + 2 * GAP.small;
  return {
    height,
    paint: ({ x, y }) => [
      ...blocks.flatMap((b, i) => b.paint({ x: x + (places[i]?.x ?? 0), y: y + GAP.small + down(cells[i]) })),
      rule({ x, y: y + height }, width, LINE.hair, setting.inks.ink),
    ],
  };
}

function footOf(notes: readonly string[], width: number, setting: SheetSetting): Piece {
  const style = { size: SIZE.small, weight: 'regular', colour: setting.inks.ink } as const;
  const text = textBlock(notes.join(' '), style, width, setting);
  return {
    height: text.height + GAP.small,
    paint: ({ x, y }) => text.paint({ x, y: y + GAP.small }),
  };
}

function cellBlock(
  { main = '', more = [], large }: TableCell,
  width: number,
  setting: SheetSetting,
): TextBlock {
  const { ink, assumed } = setting.inks;
  const size = large === true ? SIZE.strong : SIZE.body;
  return stacked([
    textBlock(main, { size, weight: 'bold', colour: ink, mostLines: MOST_LINES.main }, width, setting),
    ...more.map((text) =>
      textBlock(
        text,
        { size: SIZE.small, weight: 'regular', colour: assumed, mostLines: MOST_LINES.more },
        width,
        setting,
      ),
    ),
  ]);
}

function rule({ x, y }: PaperPoint, length: number, width: number, colour: string): Item {
  const line = [
    { x, y },
    { x: x + length, y },
  ];
  return { is: 'lines', lines: [line], closed: false, pen: { colour, width } };
}
