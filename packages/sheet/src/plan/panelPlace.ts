import type { Drawing } from '@footmark/drawing';
import { GAP } from '../page/measures';
import type { Box } from '../page/page';
import type { SheetSetting } from '../setting';
import { stacked, type TextBlock } from '../text/textBlock';
import type { PlanFrame } from './planFrame';
import { diggingPanel, legendPanel, scaleBlock, beside as sideBySide } from './planPanel';

/** What a panel is made for: what its legend explains, how the plan lies, and a key plan for a width (mm) where there are several pages. */
export type Panel = Readonly<{
  drawing: Drawing;
  frame: Pick<PlanFrame, 'denominator' | 'turn'>;
  key: ((width: number) => TextBlock) | null;
}>;

/** Where what explains a plan stands, and the room (mm) that is left to the plan. A legend that has no room in it has to follow. */
export type PanelPlace = Readonly<{
  beside: boolean;
  room: Readonly<{ width: number; height: number }>;
  make: (panel: Panel, setting: SheetSetting) => Readonly<{ block: TextBlock; hasLegend: boolean }>;
}>;

/** Widths of a panel beside a plan, mm: the narrowest in which all has room is taken. */
const BESIDE_MM = [58, 74];
/** Share of a page that may stand below a plan. */
const MOST_BELOW = 0.42;
/** Of what stands below a plan, mm: the scale, and the key plan where there is one. */
const BELOW = { scale: 56, key: 44 } as const;
/** Of a key plan in a column, mm at most, with its heading. */
const KEY_MM = 54;

const NO_FRAME = { denominator: 100, turn: 0 } as const;

/** Beside a plan on a page on its long side, else below it. The legend of the whole plan tells how much room that takes. */
export function panelPlace(drawing: Drawing, body: Box, setting: SheetSetting): PanelPlace {
  const panel = { drawing, frame: NO_FRAME, key: null };
  if (body.width <= body.height) {
    const most = MOST_BELOW * body.height;
    const full = below(panel, body.width, true, setting).height;
    const height = full > most ? below(panel, body.width, false, setting).height : full;
    return {
      beside: false,
      room: { width: body.width, height: body.height - height - GAP.large },
      make: (p, s) => {
        const hasLegend = full <= most;
        return { block: below(p, body.width, hasLegend, s), hasLegend };
      },
    };
  }
  const key = typeof setting.options.scale === 'number' ? KEY_MM : 0;
  const fitting = BESIDE_MM.find((w) => column(panel, w, true, setting).height + key <= body.height);
  const width = fitting ?? BESIDE_MM[0] ?? 0;
  return {
    beside: true,
    room: { width: body.width - width - GAP.large, height: body.height },
    make: (p, s) => {
      const full = column(p, width, true, s);
      const hasLegend = full.height <= body.height;
      return { block: hasLegend ? full : column(p, width, false, s), hasLegend };
    },
  };
}

function column(
  { drawing, frame, key }: Panel,
  width: number,
  legend: boolean,
  setting: SheetSetting,
): TextBlock {
  return stacked(
    [
      scaleBlock(frame, width, setting),
      ...(key === null ? [] : [key(width)]),
      ...(legend ? [legendPanel(drawing, width, setting)] : []),
      diggingPanel(width, setting),
    ],
    GAP.medium,
  );
}

function below(
  { drawing, frame, key }: Panel,
  width: number,
  legend: boolean,
  setting: SheetSetting,
): TextBlock {
  const left = BELOW.scale + GAP.large;
  const right = key === null ? 0 : BELOW.key + GAP.large;
  const first = sideBySide([
    { block: scaleBlock(frame, BELOW.scale, setting), x: 0 },
    { block: diggingPanel(width - left - right, setting), x: left },
    ...(key === null ? [] : [{ block: key(BELOW.key), x: width - BELOW.key }]),
  ]);
  return legend ? stacked([first, legendPanel(drawing, width, setting)], GAP.medium) : first;
}
