import {
  formatAzimuth,
  formatBearing,
  formatLength,
  formatSlope,
  formatTurn,
  type LengthStyle,
  type Units,
} from '@footmark/site';

/** Values this close (in the printed unit) to one decimal are printed with one. */
const ONE_DECIMAL_IS_ENOUGH = 0.0005;

/** Slopes below this are printed to hundredths of a per cent. */
const FINE_SLOPE = 0.015;

/** A length given in metres, as the site prints lengths: feet and inches, or decimals with one place, two where needed. */
export function lengthText(metres: number, units: Units): string {
  return units.length === 'ft-in' ? formatLength(metres, 'ft-in') : decimalLengthText(metres, units.length);
}

/** What a counter showed (m): counters count in tenths, so feet are decimal even where tapes are in feet and inches. */
export function counterText(metres: number, units: Units): string {
  return decimalLengthText(metres, units.length === 'm' ? 'm' : 'ft');
}

/** A direction given as an azimuth in radians, as the site prints directions. */
export function directionText(azimuth: number, units: Units): string {
  return units.direction === 'bearing' ? formatBearing(azimuth) : formatAzimuth(azimuth, { decimals: 1 });
}

/** An angle of any size in radians, in whole degrees. */
export function angleText(radians: number): string {
  return formatTurn(Math.abs(radians), { decimals: 0 }).replace(/^R /, '');
}

/** A slope as fall over run, in per cent: what levels tell of one is no finer than tenths, and hundredths below one. */
export function slopeText(slope: number): string {
  return formatSlope(slope, 'percent', { decimals: Math.abs(slope) < FINE_SLOPE ? 2 : 1 });
}

function decimalLengthText(metres: number, style: LengthStyle): string {
  const fine = formatLength(metres, style, { decimals: 3 });
  const coarse = formatLength(metres, style, { decimals: 1 });
  const apart = Math.abs(amountOf(fine) - amountOf(coarse));
  return apart < ONE_DECIMAL_IS_ENOUGH ? coarse : formatLength(metres, style, { decimals: 2 });
}

function amountOf(text: string): number {
  return Number.parseFloat(text.replace('−', '-'));
}
