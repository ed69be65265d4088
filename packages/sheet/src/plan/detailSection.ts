import type { Drawing } from '@footmark/drawing';
import { GUTTER_MM } from '../flow/flowSections';
import type { Piece, Section } from '../flow/section';
import { GAP, LINE, SIZE } from '../page/measures';
import { cornersOf } from '../page/pageFrame';
import type { SheetSetting } from '../setting';
import { stacked, textBlock } from '../text/textBlock';
import { type Detail, detailBounds } from './details';
import { mergeTexts, OVER_MM } from './mergeTexts';
import { placeTexts } from './placeTexts';
import { beside } from './planPanel';
import { planScaleText } from './planScaleText';
import type { PlanView } from './planView';
import { planWindow } from './planWindow';
import { mmPerMetreOf } from './scales';

/** Pieces of the plan where painted points crowd, drawn larger, each with its letter and scale. */
export function detailSection(details: readonly Detail[], drawing: Drawing, setting: SheetSetting): Section {
  return {
    heading: setting.words.sheet.heading('details'),
    columns: 1,
    gap: GAP.medium,
    make: (width) => ({ pieces: inRows(details, width).map((row) => rowPiece(row, drawing, setting)) }),
  };
}

/** Details that have room beside each other stand in one row. */
function inRows(details: readonly Detail[], width: number): readonly (readonly Detail[])[] {
  const rows: Detail[][] = [];
  let right = Infinity;
  for (const detail of details) {
    if (right + GUTTER_MM + detail.size.width > width + ROUNDING_MM) {
      rows.push([detail]);
      right = detail.size.width;
    } else {
      rows.at(-1)?.push(detail);
      right += GUTTER_MM + detail.size.width;
    }
  }
  return rows;
}

const ROUNDING_MM = 1e-6;

function rowPiece(row: readonly Detail[], drawing: Drawing, setting: SheetSetting): Piece {
  let x = 0;
  return beside(
    row.map((detail) => {
      const placed = { block: detailPiece(detail, drawing, setting), x };
      x += detail.size.width + GUTTER_MM;
      return placed;
    }),
  );
}

function detailPiece(detail: Detail, drawing: Drawing, setting: SheetSetting): Piece {
  const { inks, words, lettering } = setting;
  const { size } = detail;
  const mmPerMetre = mmPerMetreOf(detail.denominator);
  const { minX, minY } = detailBounds(detail);
  const caption = textBlock(
    words.sheet.detailText(detail.letter, planScaleText(detail.denominator, setting)),
    { size: SIZE.body, weight: 'bold', colour: inks.ink },
    size.width,
    setting,
  );
  const merged = mergeTexts(drawing, mmPerMetre, { within: OVER_MM, always: true });
  return stacked(
    [
      caption,
      {
        height: size.height,
        paint: ({ x, y }) => {
          const box = { x, y, ...size };
          const view: PlanView = { box, corner: { x: minX, y: minY }, mmPerMetre };
          const { placed } = placeTexts(merged, view, lettering);
          return [
            planWindow(merged, placed, view, setting),
            {
              is: 'lines',
              lines: [cornersOf(box)],
              closed: true,
              pen: { colour: inks.ink, width: LINE.medium, dash: [3, 1.2] },
            },
          ];
        },
      },
    ],
    GAP.hair,
  );
}
