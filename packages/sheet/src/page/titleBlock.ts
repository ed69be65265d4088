import type { SheetSetting } from '../setting';
import { textBlock, textLine } from '../text/textBlock';
import { LINE, SIZE } from './measures';
import type { Box, Item, PaperPoint } from './page';

/** Which sheet of how many, and the scale of its plan where it has one. */
export type SheetPlace = Readonly<{ number: number; of: number; scale: string | null }>;

/** A cell of the block: where it begins and how wide it is, as shares of the width, and what stands in it. */
export type Cell = Readonly<{ share: number; from: number; paint: (box: Box) => readonly Item[] }>;

const SHARES = { site: 0.44, people: 0.24, scale: 0.17, sheet: 0.15 } as const;

/** What the sheet is, of which site, for whom and by whom, at what scale, of which day, which of how many. */
export function titleCells({ number, of, scale }: SheetPlace, setting: SheetSetting): readonly Cell[] {
  const { site, words, options } = setting;
  const say = words.sheet;
  const { preparedBy, preparedFor } = options.facts ?? {};
  return [
    { share: SHARES.site, from: 0, paint: (box) => siteCell(box, setting) },
    {
      share: SHARES.people,
      from: SHARES.site,
      paint: (box) => [
        ...fact(say.fact('prepared-for'), preparedFor ?? '', box, 0, setting),
        ...fact(say.fact('prepared-by'), preparedBy ?? '', box, 1, setting),
      ],
    },
    {
      share: SHARES.scale,
      from: SHARES.site + SHARES.people,
      paint: (box) => [
        ...fact(say.fact('scale'), scale ?? say.noScale(), box, 0, setting),
        ...fact(say.fact('date'), words.dateText(options.date), box, 1, setting),
      ],
    },
    {
      share: SHARES.sheet,
      from: SHARES.site + SHARES.people + SHARES.scale,
      paint: (box) => [
        ...fact(say.fact('sheet'), say.sheetOf(number, of), box, 0, setting),
        ...fact(say.fact('units'), say.unitsText(site.units), box, 1, setting),
      ],
    },
  ];
}

function siteCell({ x, y, width }: Box, setting: SheetSetting): readonly Item[] {
  const { site, words, options, inks } = setting;
  const said = [site.address, options.facts?.note ?? ''].filter((t) => t !== '').join('. ');
  const note = textBlock(
    said,
    { size: SIZE.small, weight: 'regular', colour: inks.assumed, mostLines: 2 },
    width,
    setting,
  );
  return [
    textLine(
      words.sheet.title(options.kind),
      { x, y: y + 2.4 },
      { size: SIZE.small, weight: 'bold', colour: inks.assumed, width },
      setting,
    ),
    textLine(
      site.name === '' ? words.sheet.unnamed() : site.name,
      { x, y: y + 8.2 },
      { size: SIZE.title, weight: 'bold', colour: inks.ink, width },
      setting,
    ),
    ...note.paint({ x, y: y + 9.4 }),
  ];
}

/** A small label and what it says below; with nothing to say a line to write on. */
function fact(
  label: string,
  value: string,
  { x, y, width, height }: Box,
  row: 0 | 1,
  setting: SheetSetting,
): readonly Item[] {
  const { inks } = setting;
  const top = y + (row * height) / 2;
  const base = top + 6.4;
  return [
    textLine(
      label,
      { x, y: top + 2 },
      { size: SIZE.fine, weight: 'regular', colour: inks.assumed, width },
      setting,
    ),
    value === ''
      ? stroke({ x, y: base + 0.4 }, { x: x + width, y: base + 0.4 }, LINE.hair, inks.ink)
      : textLine(
          value,
          { x, y: base },
          { size: SIZE.body, weight: 'bold', colour: inks.ink, width },
          setting,
        ),
  ];
}

export function stroke(from: PaperPoint, to: PaperPoint, width: number, colour: string): Item {
  return { is: 'lines', lines: [[from, to]], closed: false, pen: { colour, width } };
}
