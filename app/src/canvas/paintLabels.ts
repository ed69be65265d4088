import type { MeasureText, PlacedLabel } from '@footmark/drawing';
import { PX_PER_MM, planToScreen } from './camera';
import { boxesMeet, type PaintSetting, type ScreenBox } from './paintSetting';

/** The plan's lettering. */
const FAMILY = '"Barlow Semi Condensed", "Arial Narrow", sans-serif';

/** Width of the line that is drawn about letters in the colour of the paper. */
const HALO_PX = { onLine: 6, beside: 3.5 };

/** Em of the font to the height of its capitals, which is what a label gives (Barlow: 0.7). */
const EM_PER_HEIGHT = 1 / 0.7;

/** CSS font of a label of a height in paper mm. */
function fontOf(heightMm: number, weight: 'regular' | 'bold'): string {
  return `${weight === 'bold' ? 600 : 500} ${heightMm * EM_PER_HEIGHT * PX_PER_MM}px ${FAMILY}`;
}

/** Measures texts in the plan's lettering; widths of what was measured once are remembered. */
export function textMeasurer(context: CanvasRenderingContext2D): MeasureText {
  const known = new Map<string, number>();
  return (text, heightMm, weight) => {
    const key = `${weight}|${text}`;
    let perMm = known.get(key);
    if (perMm === undefined) {
      context.font = fontOf(10, weight);
      perMm = context.measureText(text).width / PX_PER_MM / 10;
      known.set(key, perMm);
    }
    return perMm * heightMm;
  };
}

/** Paints placed labels, each with its leader and, on its line, paper below it; those outside of the region are passed over. */
export function paintLabels(labels: readonly PlacedLabel[], setting: PaintSetting): void {
  setting.context.textAlign = 'center';
  setting.context.textBaseline = 'middle';
  for (const placed of labels) {
    if (boxesMeet(labelBox(placed, setting), setting.region)) paintLabel(placed, setting);
  }
}

/** What a label takes of the paper with its halo and its leader, pixels: whichever way it is turned. */
export function labelBox(
  { at, widthMm, heightMm, leader }: PlacedLabel,
  { camera, size }: Pick<PaintSetting, 'camera' | 'size'>,
): ScreenBox {
  const reach = (Math.hypot(widthMm, heightMm) / 2) * PX_PER_MM + HALO_PX.onLine;
  const points = [at, ...(leader ?? [])].map((p) => planToScreen(camera, size, p));
  return {
    minX: Math.min(...points.map((p) => p.x)) - reach,
    minY: Math.min(...points.map((p) => p.y)) - reach,
    maxX: Math.max(...points.map((p) => p.x)) + reach,
    maxY: Math.max(...points.map((p) => p.y)) + reach,
  };
}

function paintLabel({ label, text, at, azimuth, leader }: PlacedLabel, setting: PaintSetting): void {
  const { context, camera, size, palette } = setting;
  if (leader) {
    const [from, to] = leader.map((p) => planToScreen(camera, size, p));
    if (from && to) {
      context.beginPath();
      context.moveTo(from.x, from.y);
      context.lineTo(to.x, to.y);
      context.strokeStyle = palette[label.ink];
      context.globalAlpha = 0.6;
      context.lineWidth = 0.8;
      context.stroke();
      context.globalAlpha = 1;
    }
  }
  const centre = planToScreen(camera, size, at);
  const onLine = label.seat === 'on-line';
  context.save();
  context.translate(centre.x, centre.y);
  context.rotate(azimuth - Math.PI / 2);
  context.font = fontOf(label.height, label.weight);
  context.lineWidth = onLine ? HALO_PX.onLine : HALO_PX.beside;
  context.lineJoin = 'round';
  context.strokeStyle = onLine ? palette.paper : palette.halo;
  context.strokeText(text, 0, 0);
  context.fillStyle = palette[label.ink];
  context.fillText(text, 0, 0);
  context.restore();
}
