import { FOOT_M, type Site } from '@footmark/site';

/** Ticks along a pipe, m apart: 10 ft, or 5 m. */
export function tickSpacing(units: Site['units']): number {
  return units.length === 'm' ? 5 : 10 * FOOT_M;
}

/**
 * A station (m) in the notation of route surveys: hundreds of feet and feet, `0+40`; in metric kilometres and metres, `0+040`
 * (common practice, no source). Rounded to the whole foot or metre.
 */
export function stationText(station: number, units: Site['units']): string {
  const [unit, full, digits] = units.length === 'm' ? [1, 1000, 3] : [FOOT_M, 100, 2];
  const whole = Math.round(station / unit);
  return `${Math.floor(whole / full)}+${String(whole % full).padStart(digits, '0')}`;
}
