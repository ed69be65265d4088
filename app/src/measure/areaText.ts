import { FOOT_M, type Units } from '@footmark/site';

/** An area given in square metres, in the site's units. */
export function areaText(squareMetres: number, units: Units): string {
  return units.length === 'm'
    ? `${squareMetres.toFixed(1)} m²`
    : `${Math.round(squareMetres / (FOOT_M * FOOT_M)).toLocaleString('en-US')} sq ft`;
}
