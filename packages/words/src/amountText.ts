import { FOOT_M, INCH_M, type Units } from '@footmark/site';
import { countText } from './countText';
import type { SayLess } from './sayLess';

/** Loose ground is ordered and carted by the cubic yard. */
const YARD_M3 = (3 * FOOT_M) ** 3;

/** A share below this has no whole per cent. */
const HALF_PER_CENT = 0.005;

type Lengths = Pick<Units, 'length'>;

/** An area (m²) of what is dug up or taken: `34 sq ft`, `3.2 m²`. */
export function areaTextIn(less: SayLess): (squareMetres: number, units: Lengths) => string {
  return (squareMetres, { length }) => {
    if (length === 'm') return `${squareMetres.toFixed(1)} m²`;
    const feet = squareMetres / FOOT_M ** 2;
    return feet < 1 && feet > 0 ? less('1 sq ft') : `${countText(Math.round(feet))} sq ft`;
  };
}

/** A share of a whole, in whole per cent; a share too small for that is said to be below one. */
export function shareTextIn(less: SayLess): (share: number) => string {
  return (share) => (share > 0 && share < HALF_PER_CENT ? less('1 %') : `${Math.round(100 * share)} %`);
}

/** A volume (m³) of ground: `4.6 cu yd`, `3.5 m³`. */
export function volumeText(cubicMetres: number, { length }: Lengths): string {
  return length === 'm' ? `${cubicMetres.toFixed(1)} m³` : `${(cubicMetres / YARD_M3).toFixed(1)} cu yd`;
}

/** How fast water runs (m/s): `2.6 ft/s`, `0.79 m/s`. */
export function velocityText(metresPerSecond: number, { length }: Lengths): string {
  return length === 'm'
    ? `${metresPerSecond.toFixed(2)} m/s`
    : `${(metresPerSecond / FOOT_M).toFixed(1)} ft/s`;
}

/** How much a pipe carries (m³/s): `125 gal/min`, `7.9 L/s`. The US gallon is 231 cubic inches. */
export function dischargeText(cubicMetresPerSecond: number, { length }: Lengths): string {
  if (length === 'm') return `${(1000 * cubicMetresPerSecond).toFixed(1)} L/s`;
  const gallon = 231 * INCH_M ** 3;
  return `${Math.round((60 * cubicMetresPerSecond) / gallon)} gal/min`;
}
