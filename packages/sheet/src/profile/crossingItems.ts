import { services } from '@footmark/drawing';
import type { ProfileCrossing } from '@footmark/site';
import { LINE, SIZE } from '../page/measures';
import type { Item } from '../page/page';
import type { SheetSetting } from '../setting';
import { textLine } from '../text/textBlock';
import type { ProfileScale } from './profileScale';

/** What crosses is not drawn smaller, mm. */
const LEAST_RADIUS_MM = 0.8;

/** Services and mains that cross, cut through, with the letters of their line on the plan. */
export function crossingItems(
  crossings: readonly ProfileCrossing[],
  scale: ProfileScale,
  setting: SheetSetting,
): readonly Item[] {
  const { site, inks } = setting;
  return crossings.flatMap(({ feature, station, top, diameter }): readonly Item[] => {
    const crossed = site.features.find((f) => f.id === feature);
    if (top === null || crossed === undefined) return [];
    const carried = crossed.kind === 'service' ? crossed.fields.carries : undefined;
    const known = carried === undefined ? null : services[carried];
    const colour = inks[crossed.kind === 'service' ? (known?.ink ?? 'ink') : 'sewer'];
    const radius = Math.max(LEAST_RADIUS_MM, (scale.y(top - diameter) - scale.y(top)) / 2);
    const centre = { x: scale.x(station), y: scale.y(top) + radius };
    return [
      {
        is: 'circle',
        centre,
        radius,
        pen: { colour, width: LINE.frame },
        tint: { colour: inks.paper },
      },
      textLine(
        crossed.kind === 'service' ? (known?.letters ?? '?') : 'SS',
        { x: centre.x + radius + 0.8, y: centre.y + SIZE.fine * 0.35 },
        { size: SIZE.fine, weight: 'bold', colour, width: 12 },
        setting,
      ),
    ];
  });
}
