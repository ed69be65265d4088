import { LINE_HEIGHT } from '../page/measures';
import type { Item, PaperPoint, Weight } from '../page/page';
import type { SheetSetting } from '../setting';
import { cleanText } from './cleanText';
import { shorten, wrapText } from './wrapText';

/** How a paragraph is lettered; sizes in mm of em. */
export type TextStyle = Readonly<{ size: number; weight: Weight; colour: string; mostLines?: number }>;

/** Lines below each other, with the height that they take (mm). */
export type TextBlock = Readonly<{ height: number; paint: (at: PaperPoint) => readonly Item[] }>;

type Lettered = Pick<SheetSetting, 'lettering'>;

/** A paragraph in a column of `width` mm, its upper left corner where it is painted. Nothing for an empty text. */
export function textBlock(text: string, style: TextStyle, width: number, { lettering }: Lettered): TextBlock {
  const lines = wrapText(cleanText(text, lettering), { ...style, width }, lettering);
  const leading = style.size * LINE_HEIGHT;
  return {
    height: lines.length * leading,
    paint: ({ x, y }) =>
      lines.map((line, i) => ({
        is: 'text',
        at: { x, y: y + i * leading + capitalsBelow(style.size) },
        text: line,
        size: style.size,
        weight: style.weight,
        colour: style.colour,
        anchor: 'start',
        turn: 0,
      })),
  };
}

/** From the top of a line to its base line, mm. */
export function capitalsBelow(size: number): number {
  return size * 0.94;
}

/** One line, shortened to `width` mm, on a base line. */
export function textLine(
  text: string,
  at: PaperPoint,
  style: Omit<TextStyle, 'mostLines'> & Readonly<{ width: number; anchor?: 'start' | 'middle' | 'end' }>,
  { lettering }: Lettered,
): Item {
  const { size, weight, colour, width, anchor = 'start' } = style;
  const line = shorten(cleanText(text, lettering), { size, weight, width }, lettering);
  return { is: 'text', at, text: line, size, weight, colour, anchor, turn: 0 };
}

/** Blocks below each other. */
export function stacked(blocks: readonly TextBlock[], gap = 0): TextBlock {
  const shown = blocks.filter((b) => b.height > 0);
  const height = shown.reduce((sum, b) => sum + b.height, 0) + gap * Math.max(0, shown.length - 1);
  return {
    height,
    paint: ({ x, y }) => {
      let down = y;
      return shown.flatMap((b) => {
        const items = b.paint({ x, y: down });
        down += b.height + gap;
        return items;
      });
    },
  };
}
