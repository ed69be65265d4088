import { GAP, LINE, SIZE } from '../page/measures';
import type { SheetSetting } from '../setting';
import { capitalsBelow, textLine } from '../text/textBlock';
import type { Piece } from './section';

/** A heading over the whole width, with a rule above it. */
export function headingPiece(text: string, width: number, setting: SheetSetting): Piece {
  const { inks } = setting;
  const height = GAP.small + SIZE.heading + GAP.small;
  return {
    height,
    paint: ({ x, y }) => [
      {
        is: 'lines',
        lines: [
          [
            { x, y },
            { x: x + width, y },
          ],
        ],
        closed: false,
        pen: { colour: inks.ink, width: LINE.frame },
      },
      textLine(
        text,
        { x, y: y + GAP.small + capitalsBelow(SIZE.heading) },
        { size: SIZE.heading, weight: 'bold', colour: inks.ink, width },
        setting,
      ),
    ],
  };
}
