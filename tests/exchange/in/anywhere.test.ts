import {
  finishSteps,
  incomingSite,
  marksGpx,
  placeIncoming,
  readIncoming,
  siteGeoJson,
  siteKml,
} from '@footmark/exchange';
import { distance } from '@footmark/geometry';
import { en } from '@footmark/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frontTerrace } from '../rearAlley';

/** The sample with its first control point put somewhere else, and a north that is typed. */
function terraceAt(latitudeDeg: number, longitudeDeg: number, azimuth: number) {
  return frontTerrace((raw) => {
    const [control] = raw.frame.control;
    if (control === undefined) throw new Error('this sample has control points');
    raw.frame = { north: { by: 'typed', azimuth }, control: [{ ...control, latitudeDeg, longitudeDeg }] };
  });
}

describe('a site anywhere on the earth, turned in any direction', () => {
  const places = fc.tuple(
    fc.double({ min: -84, max: 84, noNaN: true }),
    fc.oneof(
      fc.double({ min: -180, max: 180, noNaN: true }),
      fc.constantFrom(180, -180, 179.9999, -179.9999, 0),
    ),
    fc.double({ min: 0, max: 6.28, noNaN: true }),
  );

  it.each([
    ['GeoJSON', siteGeoJson],
    ['KML', siteKml],
  ])('comes back to its place as %s, within a centimetre and a half', { timeout: 60_000 }, (_, write) => {
    fc.assert(
      fc.property(places, ([latitude, longitude, azimuth]) => {
        const { site, derived } = terraceAt(latitude, longitude, azimuth);
        const text = write(site, derived, null, en);
        if (!text.ok) throw new Error(text.code);
        const read = finishSteps(readIncoming(text.value));
        if (!read.ok) throw new Error(read.code);
        const placed = placeIncoming(read.value, {}, incomingSite(derived));
        if (!placed.ok) throw new Error(placed.code);
        expect(placed.value.findings).toEqual([]);
        for (const { label, place } of derived.marks) {
          const at = placed.value.things.find((t) => t.name === label)?.points[0];
          if (place !== null)
            expect(at === undefined ? Number.NaN : distance(at, place.at)).toBeLessThan(0.015);
        }
      }),
      { numRuns: 25, seed: 11 },
    );
  });

  // GPX 1.1 schema: −180 ≤ longitude < 180
  it('has longitudes that GPX allows, also for a mark on the date line', () => {
    const longitudesAt = (longitude: number): readonly number[] => {
      const { site, derived } = terraceAt(10, longitude, 0);
      const text = marksGpx(site, derived, null, en);
      if (!text.ok) throw new Error(text.code);
      return [...text.value.matchAll(/lon="([^"]*)"/g)].map(([, lon]) => Number(lon));
    };
    const off = longitudesAt(0)[0] ?? Number.NaN;
    const onTheLine = [-2e-8, 0, 2e-8].map((d) => longitudesAt(180 - off + d));
    expect(onTheLine.map(([first]) => first)).toContain(-180);
    for (const longitude of onTheLine.flat()) {
      expect(longitude).toBeGreaterThanOrEqual(-180);
      expect(longitude).toBeLessThan(180);
    }
  });
});
