import type { EarthPoint } from '@footmark/site';
import type { GridSystem } from './gridSystem';
import { gridUnits } from './gridUnit';

export type UtmZone = { readonly zone: number; readonly hemisphere: 'N' | 'S' };

/** UTM is used between 80° S and 84° N (DMA TM 8358.2, from memory). */
const [SOUTHMOST_DEG, NORTHMOST_DEG] = [-80, 84];

const ZONE_WIDTH_DEG = 6;

/**
 * The UTM zone of a place, with those that are wider off Norway and about Svalbard (DMA TM 8358.2, from memory); a meridian between two belongs to the
 * eastern one. Null towards the poles, where there is none.
 */
export function utmZoneAt({ latitudeDeg, longitudeDeg }: EarthPoint): UtmZone | null {
  if (latitudeDeg < SOUTHMOST_DEG || latitudeDeg > NORTHMOST_DEG) return null;
  const turned = (((longitudeDeg + 180) % 360) + 360) % 360;
  const zone = Math.floor(turned / ZONE_WIDTH_DEG) + 1;
  const hemisphere = latitudeDeg < 0 ? 'S' : 'N';
  if (latitudeDeg >= 56 && latitudeDeg < 64 && zone === 31 && longitudeDeg >= 3)
    return { zone: 32, hemisphere };
  const east = ((longitudeDeg + 180) % 360) - 180;
  if (latitudeDeg >= 72 && east >= 6 && east < 42 && zone % 2 === 0) {
    const start = (zone - 1) * ZONE_WIDTH_DEG - 180;
    return { zone: east < start + ZONE_WIDTH_DEG / 2 ? zone - 1 : zone + 1, hemisphere };
  }
  return { zone, hemisphere };
}

/** UTM on WGS 84, metres. Throws a RangeError for a zone that is none of 1 to 60. */
export function utmSystem({ zone, hemisphere }: UtmZone): GridSystem {
  if (!Number.isInteger(zone) || zone < 1 || zone > 60) throw new RangeError(`no UTM zone ${zone}`);
  const south = hemisphere === 'S';
  const westDeg = (zone - 1) * ZONE_WIDTH_DEG - 180;
  return {
    kind: 'utm',
    epsg: (south ? 32_700 : 32_600) + zone,
    name: `${zone}${hemisphere}`,
    datum: 'WGS84',
    unit: gridUnits.m,
    definition: `+proj=utm +zone=${zone}${south ? ' +south' : ''} +datum=WGS84 +units=m +no_defs`,
    area: {
      westDeg,
      southDeg: south ? SOUTHMOST_DEG : 0,
      eastDeg: westDeg + ZONE_WIDTH_DEG,
      northDeg: south ? 0 : NORTHMOST_DEG,
    },
  };
}
