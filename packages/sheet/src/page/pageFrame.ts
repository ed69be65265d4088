import type { SheetSetting } from '../setting';
import { GAP, LINE, MARGIN_MM } from './measures';
import type { Box, Item, PaperPoint } from './page';
import { paperSize } from './paper';
import { type SheetPlace, stroke, titleCells } from './titleBlock';

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
export function pageFrame(place: SheetPlace, setting: SheetSetting): readonly Item[] {
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
    ...titleCells(place, setting).flatMap(({ share, from, paint }) => {
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

export function cornersOf({ x, y, width, height }: Box): readonly PaperPoint[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}
