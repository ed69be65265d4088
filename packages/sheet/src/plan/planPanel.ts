import type { Drawing } from '@footmark/drawing';
import type { CautionCode } from '@footmark/words';
import { legendBlock } from '../legend/legendBlock';
import { legendEntries } from '../legend/legendEntries';
import { GAP, SIZE } from '../page/measures';
import type { Item, PaperPoint } from '../page/page';
import type { SheetSetting } from '../setting';
import { stacked, type TextBlock, textBlock } from '../text/textBlock';
import { northArrow } from './northArrow';
import { planScaleText } from './planScaleText';
import { SCALE_BAR_HEIGHT_MM, scaleBar } from './scaleBar';

/** Room of the north arrow, mm. */
const NORTH_MM = 17;

/** How the plan lies and at what scale it is drawn, both in words and as a bar. */
export function scaleBlock(
  { denominator, turn }: Readonly<{ denominator: number; turn: number }>,
  width: number,
  setting: SheetSetting,
): TextBlock {
  const { words, inks, derived } = setting;
  const beside = width - NORTH_MM;
  const said = stacked([
    textBlock(
      planScaleText(denominator, setting),
      { size: SIZE.strong, weight: 'bold', colour: inks.ink },
      beside,
      setting,
    ),
    textBlock(
      words.sheet.printActualSize(),
      { size: SIZE.small, weight: 'regular', colour: inks.ink },
      beside,
      setting,
    ),
    textBlock(
      words.sheet.northText(derived.frame.known),
      { size: SIZE.small, weight: 'regular', colour: inks.ink },
      beside,
      setting,
    ),
  ]);
  const top = Math.max(NORTH_MM, said.height) + GAP.small;
  return {
    height: top + SCALE_BAR_HEIGHT_MM,
    paint: ({ x, y }) => [
      ...northArrow({ x: x + NORTH_MM / 2 - 1, y: y + NORTH_MM / 2 }, turn, setting),
      ...said.paint({ x: x + NORTH_MM, y: y + Math.max(0, (NORTH_MM - said.height) / 2) }),
      ...scaleBar({ x, y: y + top }, denominator, width - GAP.medium, setting),
    ],
  };
}

export function legendPanel(drawing: Drawing, width: number, setting: SheetSetting): TextBlock {
  return titled(
    setting.words.sheet.heading('legend'),
    legendBlock(legendEntries(drawing, setting), width, setting),
    width,
    setting,
  );
}

/** What must be read before all else. */
const FIRST: readonly CautionCode[] = ['call-before-digging', 'not-a-utility-locate'];

/** A column of text is no narrower, mm. */
const NARROWEST_MM = 36;

/** The one-call ticket, and what must be known before anyone digs by the plan. */
export function diggingPanel(width: number, setting: SheetSetting): TextBlock {
  const { words, inks, site, inTheWay } = setting;
  const count = Math.max(1, Math.min(FIRST.length + 1, Math.floor(width / NARROWEST_MM)));
  const column = (width - (count - 1) * GAP.medium) / count;
  const oneCall = site.digging.oneCall ?? { ticket: '' };
  const body = { size: SIZE.small, colour: inks.ink } as const;
  const state = words.oneCallText(inTheWay.services.oneCall, oneCall);
  const ticket = stacked([
    textBlock(
      oneCall.ticket === '' ? words.sheet.heading('one-call') : words.sheet.ticketText(oneCall.ticket),
      { ...body, weight: 'bold' },
      column,
      setting,
    ),
    textBlock(state, { ...body, weight: 'regular' }, column, setting),
  ]);
  const cautions = FIRST.map((code) => {
    const { title, text } = words.cautionText(code);
    return stacked([
      textBlock(title, { ...body, weight: 'bold' }, column, setting),
      textBlock(text, { ...body, weight: 'regular' }, column, setting),
    ]);
  });
  const parts = [ticket, ...cautions];
  return titled(words.sheet.heading('before-digging'), inRows(parts, column, count), width, setting);
}

/** Blocks in rows of `count`, each in a column of `width` mm. */
function inRows(blocks: readonly TextBlock[], width: number, count: number): TextBlock {
  const rows = Array.from({ length: Math.ceil(blocks.length / count) }, (_, r) =>
    beside(
      blocks.slice(r * count, (r + 1) * count).map((block, i) => ({ block, x: i * (width + GAP.medium) })),
    ),
  );
  return stacked(rows, GAP.small);
}

export function titled(heading: string, block: TextBlock, width: number, setting: SheetSetting): TextBlock {
  const title = textBlock(
    heading,
    { size: SIZE.heading, weight: 'bold', colour: setting.inks.ink },
    width,
    setting,
  );
  return stacked([title, block], GAP.small);
}

/** Blocks beside each other, each in a column of its own width (mm). */
export function beside(blocks: readonly Readonly<{ block: TextBlock; x: number }>[]): TextBlock {
  return {
    height: Math.max(0, ...blocks.map((b) => b.block.height)),
    paint: ({ x, y }: PaperPoint): readonly Item[] => blocks.flatMap((b) => b.block.paint({ x: x + b.x, y })),
  };
}
