import { LINE, SIZE } from '../page/measures';
import type { Item, PaperPoint } from '../page/page';
import type { SheetSetting } from '../setting';

/** Half the height of the arrow, mm. */
const REACH_MM = 7;

/**
 * True north about a place on paper: a solid arrow where it is known, an open one where up on the plan is only taken for it. `turn`: of
 * the plan on the paper, counter-clockwise (rad).
 */
export function northArrow(at: PaperPoint, turn: number, { derived, inks }: SheetSetting): readonly Item[] {
  const { northAzimuth, known } = derived.frame;
  // up on the plan looks along `northAzimuth`; the plan itself is turned to the left by `turn`
  const clockwise = -northAzimuth - turn;
  const [cos, sin] = [Math.cos(clockwise), Math.sin(clockwise)];
  const place = (x: number, up: number): PaperPoint => ({
    x: at.x + x * cos + up * sin,
    y: at.y - up * cos + x * sin,
  });
  const colour = inks.ink;
  const left = [place(0, REACH_MM), place(-2.6, -3.4), place(0, -1.8)];
  const right = [place(0, REACH_MM), place(2.6, -3.4), place(0, -1.8)];
  const pen = { colour, width: LINE.fine };
  const letter = place(0, -5.4);
  return [
    { is: 'lines', lines: [left], closed: true, pen, ...(known ? { tint: { colour } } : {}) },
    { is: 'lines', lines: [right], closed: true, pen },
    {
      is: 'text',
      at: { x: letter.x, y: letter.y + SIZE.heading * 0.35 },
      text: 'N',
      size: SIZE.heading,
      weight: 'bold',
      colour,
      anchor: 'middle',
      turn: 0,
    },
  ];
}
