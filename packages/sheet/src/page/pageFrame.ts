import type { SheetSetting } from '../setting';
import { textBlock, textLine } from '../text/textBlock';
import { GAP, LINE, MARGIN_MM, SIZE } from './measures';
import type { Box, Item, PaperPoint } from './page';
import { paperSize } from './paper';

/** Of the title block, mm. */
const TITLE_MM = 21;
/** From the frame to what stands in it, mm. */
const INSIDE_MM = GAP.medium;

/** What is left of a page for what it shows. */
export function bodyBox({ options }: Pick<SheetSetting, 'options'>): Box {
  const { width, height } = paperSize(options.paper);
  const edge = MARGIN_MM + INSIDE_MM;
  return {
    x: edge,
    y: edge,
    width: width - 2 * edge,
    height: height - 2 * edge - TITLE_MM,
  };
}

/** The frame, and at its foot the title block: what the sheet is, of which site, by whom, at what scale, which of how many. */
export function pageFrame(
  place: Readonly<{ number: number; of: number; scale: string | null }>,
  setting: SheetSetting,
): readonly Item[] {
  const { options, inks } = setting;
  const { width, height } = paperSize(options.paper);
  const frame: Box = {
    x: MARGIN_MM,
    y: MARGIN_MM,
    width: width - 2 * MARGIN_MM,
    height: height - 2 * MARGIN_MM,
  };
  const top = frame.y + frame.height - TITLE_MM;
  const colour = inks.ink;
  return [
    {
      is: 'lines',
      lines: [cornersOf(frame)],
      closed: true,
      pen: { colour, width: LINE.heavy },
    },
    stroke({ x: frame.x, y: top }, { x: frame.x + frame.width, y: top }, LINE.frame, colour),
    ...cells(place, setting).flatMap(({ share, from, paint }) => {
      const box: Box = {
        x: frame.x + from * frame.width,
        y: top,
        width: share * frame.width,
        height: TITLE_MM,
      };
      return [
        ...(from === 0
          ? []
          : [stroke({ x: box.x, y: top }, { x: box.x, y: top + TITLE_MM }, LINE.fine, colour)]),
        ...paint({
          x: box.x + INSIDE_MM,
          y: box.y + GAP.small,
          width: box.width - 1.5 * INSIDE_MM,
          height: TITLE_MM - 2 * GAP.small,
        }),
      ];
    }),
  ];
}

type Cell = Readonly<{ share: number; from: number; paint: (box: Box) => readonly Item[] }>;

const SHARES = { site: 0.44, people: 0.24, scale: 0.17, sheet: 0.15 } as const;

function cells(
  { number, of, scale }: Parameters<typeof pageFrame>[0],
  setting: SheetSetting,
): readonly Cell[] {
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

function stroke(from: PaperPoint, to: PaperPoint, width: number, colour: string): Item {
  return { is: 'lines', lines: [[from, to]], closed: false, pen: { colour, width } };
}

export function cornersOf({ x, y, width, height }: Box): readonly PaperPoint[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}
