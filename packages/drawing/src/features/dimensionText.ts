import type { Site } from '@footmark/site';
import { formatAzimuth, formatBearing, formatLength } from '@footmark/site';

/** What stands before a length that was put there by eye. */
const ABOUT = '≈ ';

/** A length (m) as the site prints lengths; what was not measured is rounded to the inch or the decimetre. */
export function lengthText(units: Site['units'], metres: number, measured = true): string {
  if (measured) return formatLength(metres, units.length);
  return ABOUT + formatLength(metres, units.length, { denominator: 1, decimals: 1 });
}

/** Direction (rad clockwise from site north) and length of a boundary's course. */
export function courseText(units: Site['units'], azimuth: number, metres: number, measured: boolean): string {
  if (!measured) return lengthText(units, metres, false);
  const direction =
    units.direction === 'bearing' ? formatBearing(azimuth) : formatAzimuth(azimuth, { dms: true });
  return `${direction}  ${lengthText(units, metres)}`;
}
