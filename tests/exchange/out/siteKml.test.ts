import { marksGpx, siteGeoJson, siteKml } from '@footmark/exchange';
import { fitRuns } from '@footmark/site';
import { en } from '@footmark/words';
import { gpx, kml } from '@tmcw/togeojson';
import { DOMParser } from '@xmldom/xmldom';
import { describe, expect, it } from 'vitest';
import { isThere, linesFrom } from '../../debian/programs';
import { frontTerrace, rearAlley, type Sample } from '../rearAlley';
import { isHarmless, nameWickedly } from './typed';

// Read by readers that we did not write: @xmldom/xmldom for XML (errors are thrown) and @tmcw/togeojson for KML and GPX.

function parsed(text: string) {
  return new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  }).parseFromString(text, 'text/xml');
}

const terrace = frontTerrace();

function written(as: typeof siteKml | typeof marksGpx, { site, derived }: Sample): string {
  const text = as(site, derived, fitRuns(site, derived), en);
  if (!text.ok) throw new Error(text.code);
  return text.value;
}

describe('KML of a site', () => {
  const text = written(siteKml, terrace);
  const { features } = kml(parsed(text));

  it('has the same things at the same places as the GeoJSON', () => {
    const json = siteGeoJson(terrace.site, terrace.derived, fitRuns(terrace.site, terrace.derived), en);
    if (!json.ok) return expect.fail(json.code);
    const others: { properties: { name: string }; geometry: unknown }[] = JSON.parse(json.value).features;
    const names = features.map((f) => f.properties?.name);
    expect(new Set(names)).toEqual(new Set(others.map((f) => f.properties.name)));
    expect(features.length).toBe(others.length);
    for (const other of others) {
      const same = features.filter((f) => f.properties?.name === other.properties.name);
      expect(same.map((f) => f.geometry)).toContainEqual(other.geometry);
    }
    expect(features.find((f) => f.properties?.name === 'A1')?.properties).toMatchObject({ kind: 'mark' });
  });

  it('has a folder for each layer, under its name', () => {
    const dom = parsed(text);
    const folders = [...dom.getElementsByTagName('Folder')].map(
      (f) => f.getElementsByTagName('name')[0]?.textContent,
    );
    expect(folders.slice(0, 2)).toEqual(['Marks', 'Pipes']);
    expect(folders).toContain('Trees');
    expect(dom.documentElement?.namespaceURI).toBe('http://www.opengis.net/kml/2.2'); // OGC 07-147r2
  });

  it('makes wicked names harmless, and is nowhere without a control point', () => {
    const wicked = written(siteKml, frontTerrace(nameWickedly));
    const found = kml(parsed(wicked)).features;
    expect(found.length).toBe(features.length);
    for (const { properties } of found) {
      for (const value of Object.values(properties ?? {}))
        if (typeof value === 'string' && !value.startsWith('#')) expect(value).toSatisfy(isHarmless);
    }
    expect(wicked).not.toMatch(/<script|<img|CDATA|<!/);
    const alley = rearAlley();
    expect(siteKml(alley.site, alley.derived, null, en)).toEqual({ ok: false, code: 'not-on-the-earth' });
  });

  // Reference: ogrinfo of GDAL (Debian gdal-bin)
  it.skipIf(!isThere('ogrinfo'))('is read by GDAL, layer by layer', () => {
    const lines = linesFrom('ogrinfo', ['-ro', '-al', '-so', '/vsistdin/'], text.split('\n'));
    const counts = lines.flatMap((line) => Number(/^Feature Count: (\d+)/.exec(line)?.[1] ?? 0));
    expect(counts.reduce((sum, n) => sum + n, 0)).toBe(features.length);
    expect(lines).toContain('Layer name: Marks');
  });
});

describe('GPX of the marks', () => {
  const text = written(marksGpx, terrace);
  const { features } = gpx(parsed(text));

  it('has a waypoint for each mark that has a place', () => {
    const marks = terrace.derived.marks.filter((m) => m.place !== null);
    expect(features.map((f) => f.properties?.name)).toEqual(marks.map((m) => m.label));
    for (const [i, feature] of features.entries()) {
      expect(feature.geometry?.type).toBe('Point');
      expect(feature.properties?.desc).toBe(en.observationName(marks[i]?.reading.seen ?? 'hole'));
    }
  });

  // GPX 1.1 schema: `version` and `creator` are required, the children of wpt stand in this order
  it('keeps the order of the schema', () => {
    const dom = parsed(text);
    expect(dom.documentElement?.getAttribute('version')).toBe('1.1');
    expect(dom.documentElement?.getAttribute('creator')).toBe('Footmark');
    const order = ['name', 'cmt', 'desc', 'type'];
    for (const wpt of dom.getElementsByTagName('wpt')) {
      const children = [...wpt.childNodes].map((n) => n.nodeName).filter((n) => n !== '#text');
      expect(children).toEqual(order.filter((name) => children.includes(name)));
      expect(children).toContain('name');
    }
  });

  it('makes wicked notes harmless', () => {
    const wicked = gpx(parsed(written(marksGpx, frontTerrace(nameWickedly)))).features;
    expect(wicked.length).toBe(features.length);
    for (const { properties } of wicked) expect(String(properties?.cmt ?? '')).toSatisfy(isHarmless);
  });

  it('is none without marks', () => {
    const empty = frontTerrace((raw) => {
      raw.runs = [];
      raw.pairs = [];
      raw.different = [];
      raw.features = raw.features.filter((f) => f.kind !== 'locate');
    });
    expect(marksGpx(empty.site, empty.derived, null, en)).toEqual({ ok: false, code: 'no-marks' });
  });

  // Reference: ogrinfo of GDAL (Debian gdal-bin)
  it.skipIf(!isThere('ogrinfo'))('is read by GDAL', () => {
    const lines = linesFrom('ogrinfo', ['-ro', '-al', '-so', '/vsistdin/', 'waypoints'], text.split('\n'));
    expect(lines).toContain(`Feature Count: ${features.length}`);
  });
});
