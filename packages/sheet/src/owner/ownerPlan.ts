import type { Drawing } from '@footmark/drawing';
import type { Piece, Section } from '../flow/section';
import { legendBlock } from '../legend/legendBlock';
import { drainEntries } from '../legend/legendEntries';
import { GAP, LINE } from '../page/measures';
import { cornersOf } from '../page/pageFrame';
import { corePoints } from '../plan/corePoints';
import { mergeTexts, OVER_MM } from '../plan/mergeTexts';
import { placeTexts } from '../plan/placeTexts';
import { planFrame } from '../plan/planFrame';
import { scaleBlock } from '../plan/planPanel';
import { planWindow } from '../plan/planWindow';
import { mmPerMetreOf } from '../plan/scales';
import { turnDrawing } from '../plan/turnDrawing';
import type { SheetSetting } from '../setting';
import { stacked } from '../text/textBlock';
import { paragraph } from './ownerSections';

/** Of the plan, mm. */
const HEIGHT = { least: 56, most: 92 } as const;
const PANEL_MM = 56;
const AIR_MM = 6;

/** What the camera did, and a plan of the yard with everything that was seen. */
export function ownerPlan(drawing: Drawing, said: readonly string[], setting: SheetSetting): Section {
  return {
    heading: setting.words.sheet.title(setting.options.kind),
    columns: 1,
    gap: GAP.medium,
    make: (width) => ({
      pieces: [
        stacked(
          said.map((text) => paragraph(text, width, setting)),
          GAP.small,
        ),
        ...(planPiece(drawing, width, setting) ?? []),
      ],
    }),
  };
}

function planPiece(drawing: Drawing, width: number, setting: SheetSetting): readonly Piece[] | null {
  const { inks, lettering, options, site } = setting;
  const wide = width - PANEL_MM - GAP.large;
  const room = { width: wide - 2 * AIR_MM, height: HEIGHT.most - 2 * AIR_MM };
  const asked = typeof options.scale === 'number' ? 'fit' : options.scale;
  const frame = planFrame(corePoints(drawing), room, asked, site.units);
  if (frame === null) return null;
  const k = mmPerMetreOf(frame.denominator);
  const turned = mergeTexts(turnDrawing(drawing, frame.turn), k, { within: OVER_MM, always: true });
  const { bounds } = frame;
  const need = (bounds.maxY - bounds.minY) * k + 2 * AIR_MM;
  const size = { width: wide, height: Math.max(HEIGHT.least, need) };
  const legend = legendBlock(drainEntries(turned, setting), PANEL_MM, setting);
  const panel = stacked([scaleBlock(frame, PANEL_MM, setting), legend], GAP.large);
  return [
    {
      height: Math.max(size.height, panel.height),
      paint: ({ x, y }) => {
        const box = { x, y, ...size };
        const view = {
          box,
          mmPerMetre: k,
          corner: {
            x: (bounds.minX + bounds.maxX - size.width / k) / 2,
            y: (bounds.minY + bounds.maxY - size.height / k) / 2,
          },
        };
        const { placed } = placeTexts(turned, view, lettering);
        return [
          planWindow(turned, placed, view, setting),
          { is: 'lines', lines: [cornersOf(box)], closed: true, pen: { colour: inks.ink, width: LINE.fine } },
          ...panel.paint({ x: x + size.width + GAP.large, y }),
        ];
      },
    },
  ];
}
