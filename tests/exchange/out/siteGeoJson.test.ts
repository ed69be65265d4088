import { siteGeoJson } from '@footmark/exchange';
import { distance } from '@footmark/geometry';
import { earthToPlan, fitRuns } from '@footmark/site';
import { en } from '@footmark/words';
import { check } from '@placemarkio/check-geojson';
import { area } from '@turf/turf';
import { describe, expect, it } from 'vitest';
import { isThere, linesFrom } from '../../debian/programs';
import { frontTerrace, rearAlley } from '../rearAlley';
import { isHarmless, nameWickedly } from './typed';

const { site, derived } = frontTerrace();

function written({ site: of, derived: from } = { site, derived }): string {
  const text = siteGeoJson(of, from, fitRuns(of, from), en);
  if (!text.ok) throw new Error(text.code);
  return text.value;
}

/** Read by a strict reader that we did not write (check-geojson), which refuses wrong nesting, open rings and `crs`. */
function readBack(text: string) {
  const value = check(text);
  if (value.type !== 'FeatureCollection') throw new Error(value.type);
  return value.features;
}

describe('GeoJSON of a site, read back by another reader', () => {
  const features = readBack(written());

  it('has every mark, pipe and thing that has a place', () => {
    const marks = derived.marks.filter((m) => m.place !== null);
    expect(features.length).toBe(marks.length + derived.paths.size + derived.features.size);
    const kinds = new Set(features.map((f) => f.geometry?.type));
    expect(kinds).toEqual(new Set(['Point', 'LineString', 'Polygon']));
    expect(features[0]?.properties).toMatchObject({ name: 'A1', layer: 'marks', kind: 'mark' });
    expect(features.find((f) => f.properties?.name === 'Lime')?.properties).toMatchObject({
      kind: 'tree',
      layer: 'trees',
    });
  });

  it('leads back to every mark within a centimetre', () => {
    const fit = derived.frame.toEarth;
    if (fit === null) return expect.fail('this sample lies on the earth');
    for (const mark of derived.marks) {
      const geometry = features.find((f) => f.properties?.name === mark.label)?.geometry;
      if (geometry?.type !== 'Point' || mark.place === null) return expect.fail(mark.label);
      const [longitudeDeg = 0, latitudeDeg = 0] = geometry.coordinates;
      const back = earthToPlan(fit, { longitudeDeg, latitudeDeg });
      expect(back.ok && distance(back.value, mark.place.at)).toBeLessThan(0.01);
    }
  });

  // RFC 7946, 3.1.6: exterior rings are counterclockwise; section 4: no other reference system; 11.2: seven decimals serve
  it('keeps the right-hand rule, whichever way a thing was drawn, and seven decimals', () => {
    const turned = frontTerrace((raw) => {
      for (const f of raw.features) {
        const drawn = derived.features.get(f.id)?.points.toReversed();
        if (f.kind === 'shed' && drawn !== undefined)
          f.vertices = drawn.map((p, n) => ({ id: `v${n}`, spot: { by: 'coordinates', x: p.x, y: p.y } }));
      }
    });
    for (const feature of [...features, ...readBack(written(turned))]) {
      const { geometry } = feature;
      if (geometry?.type !== 'Polygon') continue;
      const [ring = []] = geometry.coordinates;
      const twice = ring.slice(1).reduce((sum, [x = 0, y = 0], i) => {
        const [px = 0, py = 0] = ring[i] ?? [];
        return sum + (px * y - x * py);
      }, 0);
      expect(twice).toBeGreaterThan(0);
      expect(area(geometry)).toBeGreaterThan(0);
    }
    const decimals = [...written().matchAll(/\d\.(\d+)/g)].map((m) => m[1]?.length ?? 0);
    expect(Math.max(...decimals)).toBe(7);
    expect(written()).not.toContain('"crs"');
  });

  it('is nowhere without a control point', () => {
    const alley = rearAlley();
    expect(siteGeoJson(alley.site, alley.derived, null, en)).toEqual({ ok: false, code: 'not-on-the-earth' });
  });

  it('makes wicked names harmless', () => {
    const wicked = readBack(written(frontTerrace(nameWickedly)));
    expect(wicked.length).toBe(features.length);
    for (const { properties } of wicked) {
      for (const value of Object.values(properties ?? {}))
        if (typeof value === 'string') expect(value).toSatisfy(isHarmless);
    }
    expect(wicked.some((f) => f.properties?.name === 'Raíces 根 🌳 8')).toBe(true);
  });

  // Reference: ogrinfo of GDAL (Debian gdal-bin)
  it.skipIf(!isThere('ogrinfo'))('is read by GDAL, with its system', () => {
    const lines = linesFrom('ogrinfo', ['-ro', '-al', '-so', '/vsistdin/'], written().split('\n'));
    expect(lines).toContain(`Feature Count: ${features.length}`);
    expect(lines.join('\n')).toContain('WGS 84');
  });
});
