import { draw, layerNames } from '@footmark/drawing';
import { type Coordinates, siteDxf } from '@footmark/exchange';
import { distance } from '@footmark/geometry';
import { openGrid, statePlaneZones, typedSystem, utmSystem } from '@footmark/grid';
import { fitRuns, setOutsOf, US_SURVEY_FOOT_M } from '@footmark/site';
import { en } from '@footmark/words';
import { Helper } from 'dxf';
import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { isThere, linesFrom } from '../../debian/programs';
import { frontTerrace, rearAlley, type Sample } from '../rearAlley';
import { nameWickedly } from './typed';

const FT = 0.3048;

function written({ site, derived }: Sample, coordinates: Coordinates = { is: 'site' }): string {
  const fit = fitRuns(site, derived);
  const drawing = draw(site, derived, {
    words: { observation: en.observationName, material: en.materialName },
    ...(fit === null ? {} : { fit }),
  });
  const text = siteDxf(site, derived, drawing, en, { coordinates, scaleDenominator: 100 });
  if (!text.ok) throw new Error(text.code);
  return text.value;
}

/** Read by a reader that we did not write (dxf-parser). */
function readBack(text: string) {
  const dxf = new DxfParser().parseSync(text);
  if (dxf === null) throw new Error('not a DXF');
  return dxf;
}

type At = { readonly x: number; readonly y: number };
const placesOf = (entity: object): readonly At[] =>
  'vertices' in entity && Array.isArray(entity.vertices) ? entity.vertices : [];

describe('DXF of a site, read back by other readers', () => {
  const alley = rearAlley();
  const text = written(alley);
  const dxf = readBack(text);

  it('is of release 12, in feet, and says so', () => {
    expect(dxf.header.$ACADVER).toBe('AC1009');
    expect(dxf.header.$INSUNITS).toBe(2);
    expect(text).toMatch(/^999\r\nRear-alley lateral\r\n/);
    expect(text).toContain('Units: international feet (0.3048 m).');
    expect(text).not.toContain('LWPOLYLINE');
    for (const line of text.split('\r\n')) expect(line.length).toBeLessThanOrEqual(256);
    expect(/[^\r\n\x20-\x7e]/.test(text)).toBe(false);
  });

  it('has the drawing’s layers, and everything on one of them', () => {
    const layers = Object.keys(dxf.tables.layer.layers);
    expect(layers).toEqual(['0', ...layerNames.map((name) => name.toUpperCase())]);
    const used = new Set(dxf.entities.map((e) => e.layer));
    for (const name of used) expect(layers).toContain(name);
    for (const name of ['BUILDINGS', 'TREES', 'PIPE', 'MARKS', 'LAND']) expect(used).toContain(name);
    expect(new Set(dxf.entities.map((e) => e.type))).toEqual(
      new Set(['POLYLINE', 'LINE', 'CIRCLE', 'TEXT', 'POINT']),
    );
  });

  it('has things in true size: the house’s walls, the trunk, every mark', () => {
    const house = [...alley.derived.features.values()].find((f) => f.feature.kind === 'building');
    if (house === undefined) return expect.fail('no house');
    const walls = dxf.entities
      .filter((e) => e.type === 'POLYLINE' && e.layer === 'BUILDINGS')
      .flatMap(placesOf);
    for (const p of house.points) {
      expect(Math.min(...walls.map((w) => distance(w, { x: p.x / FT, y: p.y / FT })))).toBeLessThan(0.0002);
    }
    const points = dxf.entities.filter((e) => e.type === 'POINT' && e.layer === 'MARKS');
    const marks = alley.derived.marks.filter((m) => m.place !== null);
    expect(points.length).toBe(marks.length);
    const sycamore = alley.site.features.find((f) => f.name === 'Sycamore');
    const trunk = sycamore?.kind === 'tree' ? (sycamore.fields.trunkDiameter ?? 0) / 2 / FT : 0;
    const radii = dxf.entities
      .filter((e) => e.type === 'CIRCLE')
      .map((e) => ('radius' in e ? Number(e.radius) : 0));
    expect(radii.some((r) => Math.abs(r - trunk) < 0.0002)).toBe(true);
  });

  it('has a point for every place that sets a proposed pipe out, as it says', () => {
    const proposed = rearAlley((raw) => {
      const [first] = raw.paths;
      if (first !== undefined) first.state = 'proposed';
    });
    const { site, derived } = proposed;
    const points = readBack(written(proposed)).entities.filter((e) => e.type === 'POINT');
    const at = points.map((e) => ('position' in e ? (e.position as At) : { x: Number.NaN, y: Number.NaN }));
    const setOut = setOutsOf(site, derived).flatMap((s) => s.points);
    expect(setOut.length).toBeGreaterThan(2);
    for (const p of setOut) {
      const apart = at.map((w) => distance(w, { x: p.at.x / FT, y: p.at.y / FT }));
      expect(Math.min(...apart), p.label).toBeLessThan(0.0002);
    }
  });

  it('has the labels as texts, feet and inches in ASCII', () => {
    const texts = dxf.entities.flatMap((e) => (e.type === 'TEXT' && 'text' in e ? [String(e.text)] : []));
    expect(texts).toContain('Yard cleanout');
    expect(texts).toContain('26" Sycamore');
    expect(texts.some((t) => /^S 0%%d15'00" W 125\.00 ft$/.test(t))).toBe(true);
    expect(texts.join('')).not.toMatch(/[′″°]/);
  });

  it('says the same to a second reader', () => {
    const other = new Helper(text).parsed;
    expect(other.header.insUnits).toBe(2);
    const count = (type: string) => other.entities.filter((e) => e.type === type).length;
    for (const type of ['POLYLINE', 'LINE', 'CIRCLE', 'TEXT', 'POINT'])
      expect(count(type), type).toBe(dxf.entities.filter((e) => e.type === type).length);
  });

  // Reference: ogrinfo of GDAL (Debian gdal-bin): every entity is a feature there
  it.skipIf(!isThere('ogrinfo'))('is read by GDAL', () => {
    const lines = linesFrom('ogrinfo', ['-ro', '-al', '-so', '/vsistdin/'], text.split('\n'));
    expect(lines).toContain(`Feature Count: ${dxf.entities.length}`);
  });

  it('breaks what CAD would act on in wicked names', () => {
    const wicked = readBack(written(rearAlley(nameWickedly)));
    const texts = wicked.entities.flatMap((e) => (e.type === 'TEXT' && 'text' in e ? [String(e.text)] : []));
    expect(texts.some((t) => t.includes('script'))).toBe(true);
    for (const t of texts) {
      expect(t).not.toMatch(/^[=@]|[<>]|%%u/);
      expect(t.replaceAll(/\\U\+[0-9A-F]{4}/g, '')).not.toContain('\\');
    }
  });
});

describe('DXF in a grid', () => {
  const terrace = frontTerrace();
  const { toEarth } = terrace.derived.frame;

  it('lies at the grid’s coordinates, in its metres', () => {
    const grid = openGrid(utmSystem({ zone: 25, hemisphere: 'N' }));
    if (!grid.ok || toEarth === null) return expect.fail('no grid');
    const dxf = readBack(written(terrace, { is: 'grid', grid: grid.value }));
    expect(dxf.header.$INSUNITS).toBe(6);
    const control = terrace.site.frame.control[0];
    if (control === undefined) return expect.fail('no control');
    const at = grid.value.projection.fromEarth(control);
    if (!at.ok) return expect.fail(at.code);
    // a control point of 0.05 m is a corner of the plan
    const corners = dxf.entities.filter((e) => e.layer === 'LAND' || e.layer === 'SURVEY').flatMap(placesOf);
    expect(Math.min(...corners.map((p) => distance(p, at.value)))).toBeLessThan(0.05);
    expect(Number(Reflect.get(dxf.header.$EXTMIN ?? {}, 'x'))).toBeGreaterThan(100_000);
  });

  it('is in US survey feet where the zone is', async () => {
    const system = typedSystem({
      name: 'Invented',
      definition: '+proj=tmerc +lat_0=45 +lon_0=-31 +k=0.9999 +x_0=200000 +y_0=0 +datum=NAD83 +units=us-ft',
    });
    const grid = system.ok ? openGrid(system.value) : system;
    const metric = openGrid(utmSystem({ zone: 25, hemisphere: 'N' }));
    if (!grid.ok || !metric.ok) return expect.fail('no grid');
    const feet = readBack(written(terrace, { is: 'grid', grid: grid.value }));
    const metres = readBack(written(terrace, { is: 'grid', grid: metric.value }));
    expect(feet.header.$INSUNITS).toBe(21);
    const length = (dxf: typeof feet) => {
      const [a, b] = dxf.entities
        .filter((e) => e.type === 'POINT' && e.layer === 'MARKS')
        .map((e) => ('position' in e ? (e.position as At) : { x: 0, y: 0 })); // a point has one
      return a === undefined || b === undefined ? 0 : distance(a, b);
    };
    // 0.9999 near its meridian against UTM's scale there: within 5 parts in 10,000
    expect((length(feet) * US_SURVEY_FOOT_M) / length(metres)).toBeCloseTo(1, 3);
    expect((await statePlaneZones()).length).toBeGreaterThan(0);
  });

  it('is none where the site is nowhere', () => {
    const grid = openGrid(utmSystem({ zone: 25, hemisphere: 'N' }));
    const { site, derived } = rearAlley();
    if (!grid.ok) return expect.fail(grid.code);
    const coordinates = { is: 'grid', grid: grid.value } as const;
    expect(siteDxf(site, derived, draw(site, derived), en, { coordinates, scaleDenominator: 100 })).toEqual({
      ok: false,
      code: 'not-on-the-earth',
    });
  });
});
