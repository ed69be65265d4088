import { degrees, distance, normalizeAzimuth, type Point, radians } from '@footmark/geometry';
import {
  type ControlPoint,
  derive,
  type EarthFit,
  type EarthPoint,
  earthToPlan,
  type North,
  newSite,
  planToEarth,
  type Site,
} from '@footmark/site';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';

// Reference: Karney's geodesic routines on WGS 84 (geographiclib-geodesic 2.2), exact to nanometres.
const wgs84 = geodesic.Geodesic.WGS84;

const MILLIMETRE = 0.001;

/** A yard of 100 m: posts o (the origin), a, b, c and d around it, in plan metres. */
const POSTS: Readonly<Record<string, Point>> = {
  o: { x: 0, y: 0 },
  a: { x: 60, y: 80 },
  b: { x: -45, y: 70 },
  c: { x: -30, y: -90 },
  d: { x: 85, y: -20 },
};

function post(id: string): Point {
  const at = POSTS[id];
  if (at === undefined) throw new Error(`no post ${id}`);
  return at;
}

/** Where the geodesic from the origin leads when +y has this true azimuth. */
function truePlace(origin: EarthPoint, northAzimuth: number, p: Point): EarthPoint {
  const azimuth = degrees(Math.atan2(p.x, p.y) + northAzimuth);
  const end = wgs84.Direct(origin.latitudeDeg, origin.longitudeDeg, azimuth, Math.hypot(p.x, p.y));
  return { latitudeDeg: end.lat2 ?? Number.NaN, longitudeDeg: end.lon2 ?? Number.NaN };
}

function siteWith(north: North, control: readonly ControlPoint[], posts = POSTS): Site {
  const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
  const empty = newSite({ id: 'yard', name: '', createdAt: '2026-01-02T03:04:05Z', units });
  return {
    ...empty,
    frame: { north, control: [...control] },
    features: Object.entries(posts).map(([id, { x, y }]) => ({
      id,
      kind: 'reference-point' as const,
      name: '',
      vertices: [{ id: 'a', spot: { by: 'coordinates' as const, x, y } }],
      fields: {},
    })),
  };
}

function controlAt(id: string, place: EarthPoint, accuracy = 0.02): ControlPoint {
  return { id: `c-${id}`, point: { of: id, at: 'a' }, ...place, accuracy, source: 'typed' };
}

function apart(a: EarthPoint, b: EarthPoint): number {
  return wgs84.Inverse(a.latitudeDeg, a.longitudeDeg, b.latitudeDeg, b.longitudeDeg).s12 ?? Number.NaN;
}

function fitOf(site: Site): EarthFit {
  const { toEarth } = derive(site).frame;
  if (toEarth === null) throw new Error('no fit');
  return toEarth;
}

function onEarth(fit: EarthFit, p: Point): EarthPoint {
  const found = planToEarth(fit, p);
  if (!found.ok) throw new Error(found.code);
  return found.value;
}

const origins = [
  { latitudeDeg: 0, longitudeDeg: -30 },
  { latitudeDeg: 40, longitudeDeg: -29.5 },
  { latitudeDeg: 65, longitudeDeg: 2.25 },
  { latitudeDeg: -40, longitudeDeg: 179.9999 }, // across the date line
] as const;

describe.each(origins)('a yard of 100 m at latitude $latitudeDeg, longitude $longitudeDeg', (origin) => {
  it.each([0, 33, 187, 301])(
    'lies where geodesics lead from one control point, +y towards %s°',
    (towards) => {
      const north = { by: 'typed', azimuth: radians(towards) } as const;
      const fit = fitOf(siteWith(north, [controlAt('o', origin)]));
      for (const p of Object.values(POSTS)) {
        expect(apart(onEarth(fit, p), truePlace(origin, north.azimuth, p))).toBeLessThan(MILLIMETRE);
      }
    },
  );

  it('finds north and true distances from control points at its corners', () => {
    const turned = radians(33);
    const control = ['a', 'b', 'c', 'd'].map((id) => controlAt(id, truePlace(origin, turned, post(id))));
    const { frame, findings } = derive(siteWith({ by: 'control' }, control));
    expect(findings).toEqual([]);
    expect(frame.known).toBe(true);
    // meridians draw together: 100 m to the east at latitude 65 turn north by 0.002°
    expect(Math.abs(degrees(frame.northAzimuth) - 33)).toBeLessThan(0.003);
    for (const v of frame.residuals.values()) expect(Math.hypot(v.x, v.y)).toBeLessThan(MILLIMETRE);
    const fit = frame.toEarth;
    if (fit === null) return expect.fail('no fit');
    for (const p of Object.values(POSTS)) {
      for (const q of Object.values(POSTS)) {
        expect(Math.abs(apart(onEarth(fit, p), onEarth(fit, q)) - distance(p, q))).toBeLessThan(MILLIMETRE);
      }
      const back = earthToPlan(fit, onEarth(fit, p));
      expect(back.ok && distance(back.value, p)).toBeLessThan(1e-6);
    }
  });
});

describe('north', () => {
  const origin = origins[1];
  const line = { from: { of: 'o', at: 'a' }, to: { of: 'a', at: 'a' } } as const; // atan2(60, 80) = 36.8699° in the plan

  it('comes from the true azimuth of a line', () => {
    const { frame } = derive(siteWith({ by: 'line', ...line, azimuth: radians(50) }, []));
    expect(degrees(frame.northAzimuth)).toBeCloseTo(50 - degrees(Math.atan2(60, 80)), 10);
    expect(frame).toMatchObject({ known: true, by: 'line', toEarth: null });
  });

  // declination east positive: true = magnetic + declination (any surveying text); by hand 50° − 12° = 38°
  it('comes from a compass and the declination, west negative', () => {
    const by = { by: 'compass', ...line, reading: radians(50), declination: radians(-12) } as const;
    const site = siteWith(by, [controlAt('o', origin)]);
    const { frame } = derive(site);
    expect(degrees(frame.northAzimuth)).toBeCloseTo(38 - degrees(Math.atan2(60, 80)), 10);
    const end = onEarth(fitOf(site), post('a'));
    const azimuth = wgs84.Inverse(origin.latitudeDeg, origin.longitudeDeg, end.latitudeDeg, end.longitudeDeg);
    expect(normalizeAzimuth(radians(azimuth.azi1 ?? Number.NaN))).toBeCloseTo(radians(38), 6);
  });

  it('from two points is as sure as their accuracy over their distance', () => {
    // 68 % of a circular normal distribution: r = 1.5096 σ; σ of a direction over d is σ·√2/d
    const posts = { o: { x: 0, y: 0 }, e: { x: 40, y: 0 } };
    const place = (id: 'o' | 'e') => controlAt(id, truePlace(origin, 0, posts[id]), 3);
    const { frame, findings } = derive(siteWith({ by: 'control' }, [place('o'), place('e')], posts));
    const sigma = ((3 / Math.sqrt(-2 * Math.log(0.32))) * Math.SQRT2) / 40;
    expect(frame.northSigma).toBeCloseTo(sigma, 6);
    expect(findings).toMatchObject([{ code: 'control-too-close', severity: 'warning' }]);
    expect(degrees(sigma)).toBeCloseTo(4.03, 2);
  });
});

// Source: UTM zone 18 on WGS 84 by PROJ 9.1.1, held against GeographicLib: 75.17 W 39.95 N is 485478.2689 E 4422221.5653 N. Our
// projection is the same about (0, 75 W) without the factor 0.9996 and the false easting.
describe('the transverse Mercator projection', () => {
  it('has the published place in a UTM zone', () => {
    const fit = { centre: { latitudeDeg: 0, longitudeDeg: -75 }, toLocal: { a: 1, b: 0, tx: 0, ty: 0 } };
    const found = earthToPlan(fit, { latitudeDeg: 39.95, longitudeDeg: -75.17 });
    if (!found.ok) return expect.fail(found.code);
    expect(found.value.x * 0.9996 + 500_000).toBeCloseTo(485_478.2689, 4);
    expect(found.value.y * 0.9996).toBeCloseTo(4_422_221.5653, 4);
    const back = onEarth(fit, found.value);
    expect(back.latitudeDeg).toBeCloseTo(39.95, 10);
    expect(back.longitudeDeg).toBeCloseTo(-75.17, 10);
  });

  it('says so where it has no place, instead of NaN or a thrown text', () => {
    const fit = { centre: { latitudeDeg: 40, longitudeDeg: -75 }, toLocal: { a: 1, b: 0, tx: 0, ty: 0 } };
    for (const wrong of [Number.NaN, Infinity]) {
      expect(earthToPlan(fit, { latitudeDeg: wrong, longitudeDeg: 0 })).toMatchObject({ ok: false });
      expect(planToEarth(fit, { x: wrong, y: 0 })).toMatchObject({ ok: false });
    }
  });
});

describe('control points that are no good', () => {
  const origin = origins[1];
  const codes = (site: Site) => derive(site).findings.map((f) => [f.code, f.severity]);
  const control = (id: string, off: Point = { x: 0, y: 0 }, accuracy = 0.02) => {
    const p = post(id);
    return controlAt(id, truePlace(origin, 0, { x: p.x + off.x, y: p.y + off.y }), accuracy);
  };

  it('are too few for a north, which then stays unknown', () => {
    const site = siteWith({ by: 'control' }, [control('o')]);
    expect(codes(site)).toEqual([['north-needs-two-control-points', 'warning']]);
    expect(derive(site).frame).toMatchObject({ northAzimuth: 0, known: false });
    expect(codes(siteWith({ by: 'control' }, []))).toEqual([['north-needs-two-control-points', 'warning']]);
  });

  it('are less sure than a yard needs: a fix of 60 m is named', () => {
    const { findings } = derive(siteWith({ by: 'typed', azimuth: 0 }, [control('o', undefined, 60)]));
    expect(findings).toMatchObject([
      { code: 'control-inaccurate', values: { accuracy: 60 }, at: { kind: 'feature', id: 'o', vertex: 'a' } },
    ]);
  });

  it('contradict the others', () => {
    const wrong = control('d', { x: 0, y: 9 }, 0.5);
    const others = ['a', 'b', 'c'].map((id) => control(id, undefined, 0.5));
    const { findings } = derive(siteWith({ by: 'control' }, [...others, wrong]));
    const of = findings.filter((f) => f.code === 'control-disagrees').map((f) => f.at);
    expect(of).toContainEqual({ kind: 'feature', id: 'd', vertex: 'a' });
  });

  it('show a sketch in the wrong unit', () => {
    const feet = (id: string) => {
      const p = post(id);
      return controlAt(id, truePlace(origin, 0, { x: p.x * 3.28, y: p.y * 3.28 }));
    };
    const { findings } = derive(siteWith({ by: 'control' }, ['a', 'b', 'c'].map(feet)));
    const scale = findings.find((f) => f.code === 'control-scale-differs');
    expect(scale?.code === 'control-scale-differs' && scale.values.scale).toBeCloseTo(3.28, 4);
  });

  it('lie in one place, or on another continent', () => {
    const twin = {
      ...control('a'),
      latitudeDeg: control('b').latitudeDeg,
      longitudeDeg: control('b').longitudeDeg,
    };
    expect(codes(siteWith({ by: 'control' }, [twin, control('b')]))).toContainEqual([
      'control-points-coincide',
      'error',
    ]);
    const mistyped = { ...control('a'), latitudeDeg: -control('a').latitudeDeg };
    expect(codes(siteWith({ by: 'control' }, [mistyped, control('b')])).map(([code]) => code)).toContain(
      'control-too-far',
    );
  });

  it('tell north by a line without length: not at all', () => {
    const nothing = { from: { of: 'a', at: 'a' }, to: { of: 'a', at: 'a' } } as const;
    const site = siteWith({ by: 'line', ...nothing, azimuth: 1 }, [control('a')]);
    expect(codes(site)).toEqual([['north-line-has-no-length', 'error']]);
    expect(derive(site).frame.known).toBe(false);
  });

  it('may be sure or less sure: the sure ones hold the place', () => {
    const site = siteWith({ by: 'typed', azimuth: 0 }, [control('a'), control('b', { x: 8, y: 0 }, 8)]);
    const at = onEarth(fitOf(site), post('a'));
    expect(apart(at, control('a'))).toBeLessThan(0.01);
  });
});
