import { drawProfile, type ProfileDrawing } from '@footmark/drawing';
import { FOOT_M, profileCrossings } from '@footmark/site';
import type { Piece } from '../flow/section';
import { SIZE } from '../page/measures';
import type { Box, Item } from '../page/page';
import { penOf, tintOf } from '../plan/paintPrimitives';
import type { SheetSetting } from '../setting';
import { textBlock } from '../text/textBlock';
import { crossingItems } from './crossingItems';
import { type ProfileScale, profileScale } from './profileScale';
import { profileTags } from './profileTags';
import { HEIGHTS_MM, rulingItems } from './rulingItems';
import { tagItems } from './tagItems';

const HEIGHT_MM = 64;
/** Heights at the left, what is said and marks above, stations below, mm. */
const MARGIN = { left: HEIGHTS_MM, right: 5, top: 19, bottom: 5 } as const;
/** Share of what is shown left bare above and below. */
const AIR = 0.06;

/** A pipe in elevation with its ground, marks and crossings; null where nothing is known of its depth. */
export function profileStrip(path: string, width: number, setting: SheetSetting): Piece | null {
  const { derived, site, words, inks } = setting;
  const profile = derived.profiles.get(path);
  if (profile === undefined) return null;
  const drawing = drawProfile(profile);
  if (drawing.heights === null || profile.points.length === 0) return null;
  const crossings = profileCrossings(profile, derived).filter((c) => c.top !== null);
  const edges = crossings.flatMap((c) => [c.top ?? 0, (c.top ?? 0) - c.diameter]);
  const [low, high] = [Math.min(drawing.heights.low, ...edges), Math.max(drawing.heights.high, ...edges)];
  const air = AIR * (high - low);
  return {
    height: HEIGHT_MM,
    paint: ({ x, y }) => {
      const box: Box = {
        x: x + MARGIN.left,
        y: y + MARGIN.top,
        width: width - MARGIN.left - MARGIN.right,
        height: HEIGHT_MM - MARGIN.top - MARGIN.bottom,
      };
      const scale = profileScale({
        length: profile.length,
        low: low - air,
        high: high + air,
        left: box.x,
        top: box.y,
        width: box.width,
        height: box.height,
        unit: site.units.length === 'm' ? 1 : FOOT_M,
      });
      const said = `${words.targetName({ kind: 'path', id: path }, site)}. ${words.sheet.exaggerationText(scale.exaggeration)} ${words.profileHeightsText(profile)}`;
      return [
        ...textBlock(
          said,
          { size: SIZE.small, weight: 'regular', colour: inks.ink, mostLines: 2 },
          width,
          setting,
        ).paint({ x, y }),
        ...rulingItems(profile, scale, box, setting),
        {
          is: 'window',
          box: { ...box, width: box.width + MARGIN.right },
          items: [...lineItems(drawing, scale, setting), ...crossingItems(crossings, scale, setting)],
        },
        ...tagItems(profileTags(profile, setting), profile, scale, box, setting),
      ];
    },
  };
}

function lineItems({ lines }: ProfileDrawing, scale: ProfileScale, { inks }: SheetSetting): readonly Item[] {
  return lines.map(({ points, closed, stroke, fill }) => ({
    is: 'lines',
    lines: [points.map((p) => ({ x: scale.x(p.x), y: scale.y(p.y) }))],
    closed,
    ...(stroke === undefined ? {} : { pen: penOf(stroke, inks) }),
    ...(fill === undefined ? {} : { tint: tintOf(fill, inks) }),
  }));
}
