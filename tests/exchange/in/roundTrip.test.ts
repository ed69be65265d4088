import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { draw } from '@footmark/drawing';
import {
  type Coordinates,
  type Incoming,
  type IncomingAnswers,
  incomingGroups,
  incomingLoose,
  incomingSite,
  openQuestions,
  placeIncoming,
  siteDxf,
  siteGeoJson,
  siteKml,
  sitePoints,
} from '@footmark/exchange';
import { distance, type Point } from '@footmark/geometry';
import { openGrid, typedSystem } from '@footmark/grid';
import { derive, fitRuns, pasteThings, soundEdit } from '@footmark/site';
import { en } from '@footmark/words';
import { kml } from '@tmcw/togeojson';
import { DOMParser } from '@xmldom/xmldom';
import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { isThere, linesFrom } from '../../debian/programs';
import { frontTerrace } from '../rearAlley';
import { readSound } from './reading';

const { site, derived } = frontTerrace();
const fit = fitRuns(site, derived);

const system = typedSystem({
  name: 'Invented',
  definition: '+proj=tmerc +lat_0=45 +lon_0=-31 +k=0.9999 +x_0=200000 +y_0=0 +datum=NAD83 +units=us-ft',
});
const opened = system.ok ? openGrid(system.value) : system;
if (!opened.ok) throw new Error(opened.code);
const grid = opened.value;

function must<T>(result: { ok: true; value: T } | { ok: false; code: string }): T {
  if (!result.ok) throw new Error(result.code);
  return result.value;
}

const geoJson = must(siteGeoJson(site, derived, fit, en));
const kmlText = must(siteKml(site, derived, fit, en));
const dxfIn = (coordinates: Coordinates) =>
  must(siteDxf(site, derived, draw(site, derived), en, { coordinates, scaleDenominator: 100 }));
const pointsIn = (coordinates: Coordinates) => must(sitePoints(site, derived, en, coordinates));

function placed(incoming: Incoming, answers: IncomingAnswers = {}) {
  return must(placeIncoming(incoming, answers, incomingSite(derived)));
}

/** How far every mark is from the nearest point that came back, at most. */
function worstMark(points: readonly Point[]): number {
  const marks = derived.marks.flatMap(({ place }) => place?.at ?? []);
  return Math.max(...marks.map((at) => Math.min(...points.map((p) => distance(p, at)))));
}

describe('what was written comes back to its place', () => {
  it.each([
    ['GeoJSON', geoJson],
    ['KML', kmlText],
  ])('as %s, with nothing asked', (_, text) => {
    const incoming = readSound(text);
    expect(openQuestions(incoming, {})).toEqual([]);
    const back = placed(incoming);
    expect(back.canBeTaken).toBe(true);
    expect(back.findings).toEqual([]);
    expect(back.distance).toBeLessThan(50);
    expect(worstMark(back.things.flatMap((t) => t.points))).toBeLessThan(0.015);
    const areas = [...derived.features.values()].filter((f) => f.spec.shape === 'area').length;
    expect(back.counts.area).toBe(areas);
    expect(back.things.some((t) => t.name === 'Lime' && t.shape === 'point')).toBe(true);
  });

  it('as DXF in the plan’s own metres, once somebody says that they are the plan’s', () => {
    const incoming = readSound(dxfIn({ is: 'site' }));
    expect(openQuestions(incoming, {})).toEqual(['coordinates']);
    const back = placed(incoming, { coordinates: { is: 'site' } });
    expect(worstMark(back.things.filter((t) => t.shape === 'point').flatMap((t) => t.points))).toBeLessThan(
      0.001,
    );
    expect(new Set(back.things.map((t) => t.layer))).toContain('BUILDINGS');
  });

  it('as DXF and as points in a grid in survey feet', () => {
    const drawing = readSound(dxfIn({ is: 'grid', grid }));
    expect(drawing.says.unit?.name).toBe('us-ft');
    const back = placed(drawing, { coordinates: { is: 'grid', system: grid.system } });
    expect(worstMark(back.things.flatMap((t) => t.points))).toBeLessThan(0.001);
    const table = readSound(pointsIn({ is: 'grid', grid }));
    expect(table.says.order).toBe('PNEZD');
    expect(openQuestions(table, {})).toEqual(['coordinates', 'unit']);
    const points = placed(table, {
      coordinates: { is: 'grid', system: grid.system },
      unit: grid.system.unit,
    });
    expect(worstMark(points.things.flatMap((t) => t.points))).toBeLessThan(0.001);
    expect(points.things[0]?.name.startsWith('A1 ')).toBe(true);
  });

  it('and goes into the site as one edit that is sound', () => {
    const back = placed(readSound(geoJson));
    const groups = incomingGroups(back);
    expect(groups.reduce((sum, g) => sum + g.count, 0)).toBe(back.things.length);
    expect(new Set(groups.map((g) => g.suggestion))).toEqual(new Set(['note', 'fence', 'patio']));
    const kinds = new Map(groups.map((g) => [g.key, g.suggestion]));
    const loose = incomingLoose(back, { kinds, sigma: 0.02, levels: false }, site.features.length);
    expect(loose.findings).toEqual([]);
    const ids = new Map(loose.things.features.map((f, i) => [f.id, `new${i}`]));
    const edited = soundEdit(site, pasteThings(site, { things: loose.things, ids, by: { x: 0, y: 0 } }));
    if (!edited.ok) return expect.fail(JSON.stringify(edited.problems[0]));
    const after = derive(edited.site);
    expect(after.features.size).toBe(derived.features.size + back.things.length);
    expect(
      worstMark(
        [...after.features.values()].filter((f) => f.feature.kind === 'note').flatMap((f) => f.points),
      ),
    ).toBeLessThan(0.015);
    const by = edited.site.features.at(-1)?.vertices[0]?.spot.by;
    expect(by).toBe('coordinates');
  });
});

// Second opinions by readers that we did not write.
describe('what is read is what others read', () => {
  it('in KML: togeojson', () => {
    const other = kml(new DOMParser().parseFromString(kmlText, 'text/xml')).features;
    const { things } = readSound(kmlText);
    expect(things.length).toBe(other.length);
    for (const [i, feature] of other.entries()) {
      expect(things[i]?.name).toBe(feature.properties?.name);
      const { geometry } = feature;
      const [first] = things[i]?.points ?? [];
      const at =
        geometry?.type === 'Point'
          ? geometry.coordinates
          : geometry?.type === 'LineString'
            ? geometry.coordinates[0]
            : geometry?.type === 'Polygon'
              ? geometry.coordinates[0]?.[0]
              : undefined;
      expect([first?.first, first?.second]).toEqual(at?.slice(0, 2));
    }
  });

  it('in DXF: dxf-parser', () => {
    const text = dxfIn({ is: 'site' });
    const other = new DxfParser().parseSync(text);
    const { things, notes } = readSound(text);
    const drawn = (other?.entities ?? []).filter((e) => e.type !== 'TEXT');
    expect(things.length).toBe(drawn.length);
    for (const [i, entity] of drawn.entries()) {
      expect(things[i]?.layer).toBe(entity.layer);
      const [first] = things[i]?.points ?? [];
      if (!('vertices' in entity) || !Array.isArray(entity.vertices)) continue;
      expect(first?.first).toBeCloseTo(entity.vertices[0].x, 6);
      expect(first?.second).toBeCloseTo(entity.vertices[0].y, 6);
      const closed = 'shape' in entity && entity.shape === true;
      expect(things[i]?.shape).toBe(closed ? 'area' : 'line');
    }
    const texts = (other?.entities ?? []).length - drawn.length;
    expect(notes.find((n) => n.code === 'texts-left-out')?.count).toBe(texts);
  });

  // Reference: files that GDAL (Debian gdal-bin) writes from ours
  it.skipIf(!isThere('ogr2ogr'))('from GDAL: its KML and its DXF', () => {
    const input = geoJson.split('\n');
    const asKml = linesFrom('ogr2ogr', ['-f', 'KML', '/vsistdout/', '/vsistdin/'], input).join('\n');
    const back = placed(readSound(asKml));
    expect(back.findings).toEqual([]);
    expect(worstMark(back.things.flatMap((t) => t.points))).toBeLessThan(0.015);
    let drawing: Incoming | null = null;
    const folder = mkdtempSync(join(tmpdir(), 'footmark-'));
    try {
      linesFrom('ogr2ogr', ['-f', 'DXF', join(folder, 'a.dxf'), '/vsistdin/'], input);
      drawing = readSound(readFileSync(join(folder, 'a.dxf'), 'utf8'));
    } finally {
      rmSync(folder, { recursive: true });
    }
    // degrees in a drawing: people can say so
    if (drawing === null) return expect.fail('nothing read');
    const there = placed(drawing, { coordinates: { is: 'earth' } });
    expect(worstMark(there.things.flatMap((t) => t.points))).toBeLessThan(0.015);
  });
});
