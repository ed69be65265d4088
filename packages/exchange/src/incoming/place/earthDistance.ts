import { radians } from '@footmark/geometry';
import type { EarthPoint } from '@footmark/site';

/** Mean radius of the earth (m): for saying how far off something is, never for measuring. */
const RADIUS_M = 6_371_000;

/** How far two places are apart, within half a per cent (great circle on a sphere, haversine). */
export function earthDistance(a: EarthPoint, b: EarthPoint): number {
  const [lat1, lat2] = [radians(a.latitudeDeg), radians(b.latitudeDeg)];
  const dLon = radians(b.longitudeDeg - a.longitudeDeg);
  const h = Math.sin((lat2 - lat1) / 2) ** 2 + Math.cos(lat1) * Math.cos(lat2) * Math.sin(dLon / 2) ** 2;
  return 2 * RADIUS_M * Math.asin(Math.min(1, Math.sqrt(h)));
}
