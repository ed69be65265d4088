import type { Units } from '@footmark/site';
import { countText } from './countText';

const MILE_M = 1609.344;

type Lengths = Pick<Units, 'length'>;

/**
 * How a language says a distance (m) to be wondered at: `11,000 km`, `6,800 miles`, two figures below a hundred and tens above; below a mile as `near` has
 * it.
 */
export function farTextIn(
  near: (metres: number, units: Lengths) => string,
  miles: string,
): (metres: number, units: Lengths) => string {
  return (metres, units) => {
    if (metres < MILE_M) return near(metres, units);
    const [amount, unit] = units.length === 'm' ? [metres / 1000, 'km'] : [metres / MILE_M, miles];
    return `${countText(amount < 100 ? Number(amount.toPrecision(2)) : Math.round(amount / 10) * 10)} ${unit}`;
  };
}

/** A number of a failure's values, which its code has. */
export function valueText(values: Readonly<Record<string, number>> | undefined, name: string): string {
  return countText(values?.[name] ?? 0);
}

/** The same in millions. */
export function millionsText(values: Readonly<Record<string, number>> | undefined, name: string): string {
  return countText(Math.round((values?.[name] ?? 0) / 1e6));
}
