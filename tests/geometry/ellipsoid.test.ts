import { azimuthBetween, distance, type Point, pointAtAzimuth, radians } from '@footmark/geometry';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';

// Reference: Karney's geodesic routines on WGS 84 (geographiclib-geodesic 2.2), exact to nanometres.
const wgs84 = geodesic.Geodesic.WGS84;
const LATITUDE = 40;
const LONGITUDE = -75.17;
const HUNDRED_FEET_M = 30.48;

/**
 * Plane coordinates about the site's origin from its two radii of curvature: x = N cos φ Δλ, y = M Δφ (WGS 84). Good near the
 * origin only: the first neglected terms are about d² tan φ / N, 0.12 mm at 100 ft.
 */
function toPlane(latitude: number, longitude: number): Point {
  const a = 6378137;
  const e2 = (2 - 1 / 298.257223563) / 298.257223563;
  const w2 = 1 - e2 * Math.sin(radians(LATITUDE)) ** 2;
  const n = a / Math.sqrt(w2);
  const m = (n * (1 - e2)) / w2;
  return {
    x: n * Math.cos(radians(LATITUDE)) * radians(longitude - LONGITUDE),
    y: m * radians(latitude - LATITUDE),
  };
}

describe('plane distance over 100 ft at latitude 40', () => {
  it.each([0, 30, 45, 90, 135, 180, 225, 270, 300])('agrees with the geodesic towards %s°', (azimuth) => {
    const end = wgs84.Direct(LATITUDE, LONGITUDE, azimuth, HUNDRED_FEET_M);
    const [from, to] = [
      toPlane(LATITUDE, LONGITUDE),
      toPlane(end.lat2 ?? Number.NaN, end.lon2 ?? Number.NaN),
    ];
    // 0.2 mm: the projection's neglected terms, an eighth of the 1/16 in that a tape shows.
    expect(Math.abs(distance(from, to) - HUNDRED_FEET_M)).toBeLessThan(2e-4);
    expect(Math.abs(Math.sin(azimuthBetween(from, to) - radians(azimuth)))).toBeLessThan(1e-5);
  });

  it('between two points set out on the plane agrees with the geodesic between them', () => {
    const back = (p: Point) => {
      const perX = toPlane(LATITUDE, LONGITUDE + 1).x;
      const perY = toPlane(LATITUDE + 1, LONGITUDE).y;
      return { latitude: LATITUDE + p.y / perY, longitude: LONGITUDE + p.x / perX };
    };
    for (let k = 0; k < 12; k += 1) {
      const a = pointAtAzimuth({ x: 0, y: 0 }, k, 15);
      const b = pointAtAzimuth(a, 2.1 * k, HUNDRED_FEET_M);
      const [from, to] = [back(a), back(b)];
      const line = wgs84.Inverse(from.latitude, from.longitude, to.latitude, to.longitude);
      expect(Math.abs((line.s12 ?? Number.NaN) - distance(a, b))).toBeLessThan(5e-4);
    }
  });

  it('catches a sphere: radius 6371008.8 m is more than two inches off in 100 ft', () => {
    const end = wgs84.Direct(LATITUDE, LONGITUDE, 90, HUNDRED_FEET_M);
    const onSphere = 6371008.8 * Math.cos(radians(LATITUDE)) * radians((end.lon2 ?? Number.NaN) - LONGITUDE);
    expect(Math.abs(onSphere - HUNDRED_FEET_M)).toBeGreaterThan(2 * 0.0254);
  });
});
