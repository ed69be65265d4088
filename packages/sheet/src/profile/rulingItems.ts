import { stationText } from '@footmark/drawing';
import type { PathProfile } from '@footmark/site';
import { LINE, SIZE } from '../page/measures';
import type { Box, Item } from '../page/page';
import type { SheetSetting } from '../setting';
import { textLine } from '../text/textBlock';
import type { ProfileScale } from './profileScale';

/** Room (mm) at the left of a strip for its heights. */
export const HEIGHTS_MM = 13;

/** Heights and stations, ruled through. */
export function rulingItems(
  profile: PathProfile,
  scale: ProfileScale,
  box: Box,
  setting: SheetSetting,
): readonly Item[] {
  const { inks, site } = setting;
  const [left, right, bottom] = [scale.x(0), scale.x(profile.length), box.y + box.height];
  const below = profile.heights === 'below-ground';
  const fine = { size: SIZE.fine, weight: 'regular', colour: inks.assumed } as const;
  const grid = { colour: inks.faint, width: LINE.hair, opacity: 0.6 };
  const line = (a: number, b: number, c: number, d: number) => [
    { x: a, y: b },
    { x: c, y: d },
  ];
  const unit = site.units.length === 'm' ? 'm' : 'ft';
  return [
    {
      is: 'lines',
      lines: [
        ...scale.heights.map(({ height }) => line(left, scale.y(height), right, scale.y(height))),
        ...scale.stations.map((s) => line(scale.x(s), box.y, scale.x(s), bottom)),
      ],
      closed: false,
      pen: grid,
    },
    {
      is: 'lines',
      lines: [line(left, bottom, right, bottom)],
      closed: false,
      pen: { colour: inks.ink, width: LINE.fine },
    },
    ...scale.heights.map(({ height, text }, i) =>
      textLine(
        `${below ? text.replace(/^[−-]/, '') : text}${i === scale.heights.length - 1 ? ` ${unit}` : ''}`,
        { x: left - 1.2, y: scale.y(height) + SIZE.fine * 0.35 },
        { ...fine, width: HEIGHTS_MM - 1.4, anchor: 'end' },
        setting,
      ),
    ),
    ...scale.stations.map((s) =>
      textLine(
        stationText(s, site.units),
        { x: scale.x(s), y: bottom + 3.2 },
        { ...fine, width: 14, anchor: s <= 0 ? 'start' : 'middle' },
        setting,
      ),
    ),
  ];
}
