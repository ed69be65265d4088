import type { Drawing } from '@footmark/drawing';
import type { Piece, Section } from '../flow/section';
import { GAP, LINE } from '../page/measures';
import { cornersOf } from '../page/pageFrame';
import { corePoints } from '../plan/corePoints';
import { paintLabels } from '../plan/paintLabels';
import { paintPrimitives } from '../plan/paintPrimitives';
import { planFrame } from '../plan/planFrame';
import { legendPanel, scaleBlock } from '../plan/planPanel';
import { mmPerMetreOf } from '../plan/scales';
import { turnDrawing } from '../plan/turnDrawing';
import type { SheetSetting } from '../setting';
import { stacked } from '../text/textBlock';
import { paragraph } from './ownerSections';

const HEIGHT_MM = 92;
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
  const size = { width: width - PANEL_MM - GAP.large, height: HEIGHT_MM };
  const room = { width: size.width - 2 * AIR_MM, height: size.height - 2 * AIR_MM };
  const asked = typeof options.scale === 'number' ? 'fit' : options.scale;
  const frame = planFrame(corePoints(drawing), room, asked, site.units);
  if (frame === null) return null;
  const turned = turnDrawing(drawing, frame.turn);
  const k = mmPerMetreOf(frame.denominator);
  const { bounds } = frame;
  const panel = stacked(
    [scaleBlock(frame, PANEL_MM, setting), legendPanel(turned, PANEL_MM, setting)],
    GAP.medium,
  );
  return [
    {
      height: Math.max(HEIGHT_MM, panel.height),
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
        const primitives = turned.layers.flatMap((l) => l.primitives);
        return [
          {
            is: 'window',
            box,
            items: [
              ...paintPrimitives(primitives, view, inks),
              ...paintLabels(turned, view, inks, lettering),
            ],
          },
          { is: 'lines', lines: [cornersOf(box)], closed: true, pen: { colour: inks.ink, width: LINE.fine } },
          ...panel.paint({ x: x + size.width + GAP.large, y }),
        ];
      },
    },
  ];
}
