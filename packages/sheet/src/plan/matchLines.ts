import { GAP, LINE, SIZE } from '../page/measures';
import type { Box, Item, PaperPoint } from '../page/page';
import type { SheetSetting } from '../setting';
import { cleanText } from '../text/cleanText';
import type { Edge, Tile } from './tiles';

/** Room (mm) outside of a window for what is said on its match lines. */
export const MATCH_MM = SIZE.small + GAP.small;

const DASH = [9, 1.8, 1.8, 1.8, 1.8, 1.8] as const;

/** The edges of a window that another sheet goes on from: a heavy line of a long and two short dashes, with that sheet's number beside it. */
export function matchLines(
  box: Box,
  neighbours: Readonly<Record<Edge, Tile | null>>,
  setting: SheetSetting,
): readonly Item[] {
  const { inks, words, lettering } = setting;
  return EDGES.flatMap((edge): readonly Item[] => {
    const next = neighbours[edge];
    if (next === null) return [];
    const { from, to, text, turn } = placesOf(edge, box);
    return [
      {
        is: 'lines',
        lines: [[from, to]],
        closed: false,
        pen: { colour: inks.ink, width: LINE.heavy, dash: DASH },
      },
      {
        is: 'text',
        at: text,
        text: cleanText(words.sheet.matchText(next.number), lettering),
        size: SIZE.small,
        weight: 'bold',
        colour: inks.ink,
        anchor: 'middle',
        turn,
      },
    ];
  });
}

const EDGES: readonly Edge[] = ['left', 'right', 'upper', 'lower'];
const UP = -Math.PI / 2;

type Places = Readonly<{ from: PaperPoint; to: PaperPoint; text: PaperPoint; turn: number }>;

function placesOf(edge: Edge, { x, y, width, height }: Box): Places {
  const [right, low] = [x + width, y + height];
  const [middle, half] = [x + width / 2, y + height / 2];
  // capitals stand clear of the line by a small gap; those beside a window read upwards
  const [above, below] = [GAP.hair, GAP.hair + SIZE.small * 0.7];
  switch (edge) {
    case 'left':
      return { from: { x, y }, to: { x, y: low }, text: { x: x - above, y: half }, turn: UP };
    case 'right':
      return {
        from: { x: right, y },
        to: { x: right, y: low },
        text: { x: right + below, y: half },
        turn: UP,
      };
    case 'upper':
      return { from: { x, y }, to: { x: right, y }, text: { x: middle, y: y - above }, turn: 0 };
    case 'lower':
      return { from: { x, y: low }, to: { x: right, y: low }, text: { x: middle, y: low + below }, turn: 0 };
  }
}
