import { degrees, radians } from '@footmark/geometry';
import {
  earthToGrid,
  epsgInName,
  type GridSystem,
  gridFactors,
  gridNotes,
  gridToEarth,
  gridToPlan,
  knownSystem,
  openGrid,
  planToGrid,
  statePlaneZones,
  typedSystem,
  utmSystem,
  utmZoneAt,
  zonesAt,
} from '@footmark/grid';
import { type EarthPoint, US_SURVEY_FOOT_M } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { isThere, linesFrom } from '../debian/programs';
import { seededRandom } from '../random/seeded';

const zones = await statePlaneZones();

function opened(system: GridSystem) {
  const grid = openGrid(system);
  if (!grid.ok) throw new Error(grid.code);
  return grid.value;
}

function ofCode(epsg: number): GridSystem {
  const found = zones.flatMap((z) => z.systems).find((s) => s.epsg === epsg);
  if (found === undefined) throw new Error(`no ${epsg}`);
  return found;
}

function typed(definition: string): GridSystem {
  const system = typedSystem({ name: 'typed', definition });
  if (!system.ok) throw new Error(system.code);
  return system.value;
}

const dms = (d: number, m: number, s = 0) => radians(d + m / 60 + s / 3600);

describe('worked examples', () => {
  // Source: IOGP Guidance Note 7-2, method 9802 (Lambert conic conformal, two standard parallels): NAD27 / Texas South Central
  it('has Texas South Central of 1927 to 0.01 US survey foot, as printed', () => {
    const grid = opened(
      typed(
        '+proj=lcc +lat_1=28.3833333333333333 +lat_2=30.2833333333333333 +lat_0=27.8333333333333333 +lon_0=-99 +x_0=609601.2192024384 +y_0=0 +a=6378206.4 +rf=294.9787 +towgs84=0,0,0 +units=us-ft',
      ),
    );
    const at = grid.projection.own.project({ latitude: dms(28, 30), longitude: -dms(96, 0) });
    if (!at.ok) return expect.fail(at.code);
    const [x, y] = [at.value.x / US_SURVEY_FOOT_M, at.value.y / US_SURVEY_FOOT_M];
    expect(Math.abs(x - 2_963_503.91)).toBeLessThan(0.01);
    expect(Math.abs(y - 254_759.8)).toBeLessThan(0.01);
    // the same by PROJ 9.1.1, to 1 mm
    expect(Math.abs(x - 2_963_503.9128)).toBeLessThan(0.003);
    expect(Math.abs(y - 254_759.8006)).toBeLessThan(0.003);
  });

  // Source: IOGP Guidance Note 7-2, method 9807 (transverse Mercator): printed 577274.99, 69740.50, which is 8 mm off; PROJ and
  // GeographicLib agree on the figures here
  it('has the national grid of Great Britain to 1 mm', () => {
    const grid = opened(
      typed(
        '+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +a=6377563.396 +rf=299.32496 +towgs84=0,0,0',
      ),
    );
    const at = grid.projection.own.project({ latitude: dms(50, 30), longitude: dms(0, 30) });
    if (!at.ok) return expect.fail(at.code);
    expect(Math.abs(at.value.x - 577_274.984)).toBeLessThan(0.001);
    expect(Math.abs(at.value.y - 69_740.492)).toBeLessThan(0.001);
    expect(Math.abs(at.value.x - 577_274.99)).toBeLessThan(0.02);
  });

  // Source: EPSG definitions by PROJ 9.1.1, held against GeographicLib 2.1.2
  const places: readonly (readonly [string, GridSystem, number, number, number, number])[] = [
    ['Pennsylvania South in metres', ofCode(32_129), -75.17, 39.95, 820_444.8312, 71_691.7983],
    ['Pennsylvania South in feet', ofCode(2272), -75.17, 39.95, 2_691_742.7504, 235_208.8416],
    ['Illinois East in feet', ofCode(3435), -87.65, 41.85, 1_170_424.7714, 1_888_670.8446],
    ['UTM 18 north', utmSystem({ zone: 18, hemisphere: 'N' }), -75.17, 39.95, 485_478.2689, 4_422_221.5653],
  ];
  it.each(places)('%s to 1 mm, there and back', (_, system, longitudeDeg, latitudeDeg, easting, northing) => {
    const grid = opened(system);
    const at = earthToGrid(grid, { longitudeDeg, latitudeDeg });
    if (!at.ok) return expect.fail(at.code);
    expect(Math.abs(at.value.easting - easting) * system.unit.metres).toBeLessThan(0.001);
    expect(Math.abs(at.value.northing - northing) * system.unit.metres).toBeLessThan(0.001);
    const back = gridToEarth(grid, { easting, northing });
    if (!back.ok) return expect.fail(back.code);
    expect(Math.abs(back.value.longitudeDeg - longitudeDeg)).toBeLessThan(1e-8); // a millimetre
    expect(Math.abs(back.value.latitudeDeg - latitudeDeg)).toBeLessThan(1e-8);
  });

  it('has the scale and convergence of Illinois East', () => {
    const factors = gridFactors(opened(ofCode(3435)), { longitudeDeg: -87.65, latitudeDeg: 41.85 }, 180);
    if (!factors.ok) return expect.fail(factors.code);
    expect(factors.value.pointScale).toBeCloseTo(1.000014609, 9);
    expect(degrees(factors.value.convergence)).toBeCloseTo(0.455920353, 7);
    // by hand: 6,372,000 / 6,372,180
    expect(factors.value.elevationFactor).toBeCloseTo(0.999971752, 9);
    expect(factors.value.combined).toBeCloseTo(1.000014609 * 0.999971752, 9);
  });
});

describe('UTM', () => {
  // Reference: GeoConvert of GeographicLib (Debian geographiclib-tools): zone, coordinates to 1 µm, convergence and scale
  it.skipIf(!isThere('GeoConvert'))('is where GeographicLib has it, Norway and Svalbard too', () => {
    const next = seededRandom(7);
    const anywhere = Array.from({ length: 200 }, () => [-80 + 163.9 * next(), -180 + 360 * next()] as const);
    const north = Array.from({ length: 60 }, () => [56 + 27.9 * next(), 44 * next()] as const);
    const points = [...anywhere, ...north];
    const input = points.map(([lat, lon]) => `${lat.toFixed(9)} ${lon.toFixed(9)}`);
    const grids = linesFrom('GeoConvert', ['-u', '-p', '6'], input);
    const factors = linesFrom('GeoConvert', ['-c', '-p', '6'], input);
    for (const [i, line] of input.entries()) {
      const [latitudeDeg = 0, longitudeDeg = 0] = line.split(' ').map(Number);
      const place: EarthPoint = { latitudeDeg, longitudeDeg };
      const [zoneText = '', easting = '', northing = ''] = (grids[i] ?? '').split(' ');
      const zone = utmZoneAt(place);
      if (zone === null) return expect.fail(`no zone at ${line}`);
      expect(`${zone.zone}${zone.hemisphere.toLowerCase()}`.padStart(3, '0')).toBe(zoneText);
      const grid = opened(utmSystem(zone));
      const at = earthToGrid(grid, place);
      const found = gridFactors(grid, place, null);
      if (!at.ok || !found.ok) return expect.fail(line);
      expect(Math.abs(at.value.easting - Number(easting))).toBeLessThan(0.001);
      expect(Math.abs(at.value.northing - Number(northing))).toBeLessThan(0.001);
      const [convergence, scale] = (factors[i] ?? '').split(' ').map(Number);
      expect(degrees(found.value.convergence)).toBeCloseTo(convergence ?? Number.NaN, 6);
      expect(found.value.pointScale).toBeCloseTo(scale ?? Number.NaN, 7);
    }
  });

  it('has no zone about the poles', () => {
    expect(utmZoneAt({ latitudeDeg: 84.01, longitudeDeg: 3 })).toBeNull();
    expect(utmZoneAt({ latitudeDeg: -80.01, longitudeDeg: 3 })).toBeNull();
    expect(() => utmSystem({ zone: 61, hemisphere: 'N' })).toThrow('61');
  });
});

describe('a zone suggested from the place', () => {
  // towns well inside their zones: by the zones' counties in the register
  it.each([
    ['Pennsylvania South', 39.95, -75.17],
    ['Illinois East', 41.85, -87.65],
    ['Oregon North', 45.52, -122.68],
    ['Texas Central', 30.27, -97.74],
    ['Alaska zone 10', 52.9, 173.2],
    ['Alaska zone 10', 53.9, -166.5],
    ['Hawaii zone 3', 21.31, -157.86],
  ])('%s is first or next at %s, %s', (name, latitudeDeg, longitudeDeg) => {
    const found = zonesAt(zones, { latitudeDeg, longitudeDeg });
    expect(found.slice(0, 2).map((z) => z.name)).toContain(name);
  });

  it('is none where no zone is', () => {
    expect(zonesAt(zones, { latitudeDeg: 48.85, longitudeDeg: 2.35 })).toEqual([]);
    expect(zonesAt(zones, { latitudeDeg: 52, longitudeDeg: 0 })).toEqual([]);
  });
});

describe('a typed definition', () => {
  it.each([
    ['EPSG:2272', 'not-a-definition'],
    ['constructor', 'not-a-definition'],
    ['', 'not-a-definition'],
    ['+proj=nowhere', 'not-a-definition'],
    ['PROJCS["half', 'not-a-definition'],
    ['+proj=tmerc +lon_0=0 +to_meter=often +datum=WGS84', 'not-a-definition'],
    ['+proj=longlat +datum=WGS84', 'not-projected'],
    ['+proj=utm +zone=18 +datum=NAD27', 'datum-not-given'],
    ['+proj=utm +zone=18 +nadgrids=conus', 'needs-shift-grid'],
    [`+proj=tmerc ${'+k=1 '.repeat(5000)}`, 'definition-too-long'],
  ])('%.40j is refused', (definition, code) => {
    expect(typedSystem({ name: '', definition })).toEqual({ ok: false, code });
  });

  it('has its unit from the definition, in WKT too', () => {
    const wkt = `PROJCS["Somewhere",GEOGCS["NAD83",DATUM["North_American_Datum_1983",SPHEROID["GRS 1980",6378137,298.257222101],TOWGS84[0,0,0,0,0,0,0]],PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433]],PROJECTION["Lambert_Conformal_Conic_2SP"],PARAMETER["latitude_of_origin",39.3333333333333],PARAMETER["central_meridian",-77.75],PARAMETER["standard_parallel_1",40.9666666666667],PARAMETER["standard_parallel_2",39.9333333333333],PARAMETER["false_easting",1968500],PARAMETER["false_northing",0],UNIT["US survey foot",0.304800609601219]]`;
    const system = typed(wkt);
    expect(system.unit.name).toBe('us-ft');
    const at = earthToGrid(opened(system), { longitudeDeg: -75.17, latitudeDeg: 39.95 });
    // the same zone as above, by PROJ
    expect(at.ok && Math.abs(at.value.easting - 2_691_742.7504)).toBeLessThan(0.003);
    expect(typed('+proj=utm +zone=18 +datum=WGS84 +units=km').unit).toEqual({ name: 'other', metres: 1000 });
  });

  it('says what is not conformal, and what its datum is', () => {
    const albers = opened(
      typed('+proj=aea +lat_1=29.5 +lat_2=45.5 +lat_0=23 +lon_0=-96 +datum=NAD83 +units=m'),
    );
    const place = { longitudeDeg: -75.17, latitudeDeg: 39.95 };
    const factors = gridFactors(albers, place, 100);
    if (!factors.ok) return expect.fail(factors.code);
    const codes = (known: boolean) =>
      gridNotes(albers, place, { known }, factors.value).map(({ code }) => code);
    expect(codes(true)).toEqual(['datum-as-wgs84', 'not-conformal', 'ground-is-not-grid']);
    expect(codes(false)).toContain('north-not-known');
    const shifted = opened(
      typed(
        '+proj=tmerc +lat_0=49 +lon_0=-2 +ellps=airy +towgs84=446.448,-125.157,542.06,0.15,0.247,0.842,-20.489',
      ),
    );
    const there = { latitudeDeg: 51.5, longitudeDeg: -0.1 };
    const around = gridFactors(shifted, there, null);
    expect(around.ok && gridNotes(shifted, there, { known: true }, around.value).map((n) => n.code)).toEqual([
      'datum-shifted',
      'height-not-given',
      'ground-is-not-grid',
    ]);
    const far = opened(ofCode(2272));
    const off = gridFactors(far, { latitudeDeg: 36, longitudeDeg: -75 }, 0);
    expect(
      off.ok && gridNotes(far, { latitudeDeg: 36, longitudeDeg: -75 }, { known: true }, off.value),
    ).toContainEqual({ code: 'outside-area' });
  });
});

describe('a site in a grid', () => {
  // 30 m up the plan of a site whose +y looks 40° east of true north, at a place where grid and true north are 0.456° apart: by the
  // trade's rule grid azimuth = true azimuth − convergence, grid distance = distance × scale
  it('lies turned by the convergence and stretched by the scale', () => {
    const grid = opened(ofCode(26_971));
    const centre = { longitudeDeg: -87.65, latitudeDeg: 41.85 };
    const turn = radians(40);
    const toLocal = { a: Math.cos(turn), b: -Math.sin(turn), tx: 0, ty: 0 };
    const from = planToGrid(grid, { centre, toLocal }, { x: 0, y: 0 });
    const to = planToGrid(grid, { centre, toLocal }, { x: 0, y: 30 });
    if (!from.ok || !to.ok) return expect.fail('off the map');
    const [dx, dy] = [to.value.easting - from.value.easting, to.value.northing - from.value.northing];
    expect(degrees(Math.atan2(dx, dy))).toBeCloseTo(40 - 0.455920353, 3);
    expect(Math.hypot(dx, dy)).toBeCloseTo(30 * 1.000014609, 5);
    const back = gridToPlan(grid, { centre, toLocal }, to.value);
    expect(back.ok && Math.hypot(back.value.x, back.value.y - 30)).toBeLessThan(1e-6);
  });
});

describe('a code', () => {
  it('is known for zones of State Plane and UTM, and for no other', () => {
    expect(knownSystem(2272, zones)).toMatchObject({ name: 'Pennsylvania South', unit: { name: 'us-ft' } });
    expect(knownSystem(6564, zones)).toMatchObject({ datum: 'NAD83(2011)', unit: { name: 'm' } });
    expect(knownSystem(32_618, zones)).toEqual(utmSystem({ zone: 18, hemisphere: 'N' }));
    expect(knownSystem(32_760, zones)?.name).toBe('60S');
    for (const none of [32_600, 32_661, 3857, 27_700]) expect(knownSystem(none, zones)).toBeNull();
  });

  it('stands in a name as files write it', () => {
    expect(epsgInName('urn:ogc:def:crs:EPSG::2272')).toBe(2272);
    expect(epsgInName('urn:ogc:def:crs:EPSG:9.1:32618')).toBe(32_618);
    expect(epsgInName('EPSG:26918')).toBe(26_918);
    expect(epsgInName('urn:ogc:def:crs:OGC:1.3:CRS84')).toBeNull();
    expect(epsgInName('constructor')).toBeNull();
  });
});
