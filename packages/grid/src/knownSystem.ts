import type { GridSystem } from './gridSystem';
import type { StatePlaneZone } from './statePlane/statePlane';
import { utmSystem } from './utm';

/** The system of an EPSG code that is known without a definition: State Plane of 1983 and UTM on WGS 84; null for all others. */
export function knownSystem(epsg: number, zones: readonly StatePlaneZone[]): GridSystem | null {
  for (const [first, hemisphere] of [
    [32_600, 'N'],
    [32_700, 'S'],
  ] as const) {
    const zone = epsg - first;
    if (Number.isInteger(zone) && zone >= 1 && zone <= 60) return utmSystem({ zone, hemisphere });
  }
  return zones.flatMap(({ systems }) => systems).find((system) => system.epsg === epsg) ?? null;
}

/** The EPSG code in a system's name as files have it, such as `urn:ogc:def:crs:EPSG::2272` or `EPSG:2272`; null without one. */
export function epsgInName(name: string): number | null {
  const digits = /\bEPSG:{1,2}(?:[\d.]*:)?(\d{4,6})$/i.exec(name.trim())?.[1];
  return digits === undefined ? null : Number(digits);
}
