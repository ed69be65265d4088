// The main job through a whole site file, from typed measurements to places, against values from outside the project.

import { degrees, distance, type Point, radians } from '@footmark/geometry';
import { derive, FOOT_M, INCH_M, newSite, openSiteValue, type Site, type Spot } from '@footmark/site';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';

const units = { length: 'ft', diameter: 'in', direction: 'bearing' } as const;
const empty = newSite({ id: 's', name: 'Check', createdAt: '2026-01-02T03:04:05Z', units });
const typed = (x: number, y: number): Spot => ({ by: 'coordinates', x, y });

function post(id: string, spot: Spot): Site['features'][number] {
  return { id, kind: 'reference-point', name: '', fields: {}, vertices: [{ id: 'a', spot }] };
}

/** The site as it comes out of its own file check, with all that follows. */
function derived(parts: Partial<Site>) {
  const opened = openSiteValue({ ...empty, ...parts });
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return derive(opened.site);
}

function placeOf(parts: Partial<Site>, key: string): Point {
  const point = derived(parts).points.get(key);
  if (point === undefined) throw new Error(`no ${key}`);
  return point.at;
}

/** Where two taped distances from A and B meet, on that side of the way from A to B. */
function twoTapes(a: Point, r1: number, b: Point, r2: number, side: 'left' | 'right'): Point {
  const tapes = [
    { from: { of: 'A', at: 'a' }, distance: r1 },
    { from: { of: 'B', at: 'a' }, distance: r2 },
  ];
  const features = [
    post('A', typed(a.x, a.y)),
    post('B', typed(b.x, b.y)),
    post('P', { by: 'tapes', tapes, side }),
  ];
  return placeOf({ features }, 'P/a');
}

function expectPoint(p: Point, x: number, y: number, digits: number): void {
  expect(p.x).toBeCloseTo(x, digits);
  expect(p.y).toBeCloseTo(y, digits);
}

describe('two tapes', () => {
  it('distance-distance intersection: the formula of any surveying text, worked for d 10, r 6, 8 and d 40, r 30, 50', () => {
    const [a, b] = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
    ];
    expectPoint(twoTapes(a, 6, b, 8, 'left'), 3.6, 4.8, 9);
    expectPoint(twoTapes(a, 6, b, 8, 'right'), 3.6, -4.8, 9);
    expectPoint(twoTapes(a, 30, { x: 40, y: 0 }, 50, 'left'), 0, 30, 9);
  });

  it('two circles, numbers published with a circle-circle program (userpages.umbc.edu/~squire)', () => {
    const [a, b] = [
      { x: -0.1, y: -0.2 },
      { x: 2, y: 1 },
    ];
    expectPoint(twoTapes(a, 2, b, 2.1, 'right'), 1.696964, -1.078021, 6);
    expectPoint(twoTapes(a, 2, b, 2.1, 'left'), 0.055856, 1.793918, 6);
  });

  it('sides 25 and 20 ft over a base of 30 ft (computed for the design): x 18.75, y 16.536, cut 82.8°', () => {
    const feet = (v: number) => v * FOOT_M;
    const p = twoTapes({ x: 0, y: 0 }, feet(25), { x: feet(30), y: 0 }, feet(20), 'left');
    expectPoint({ x: p.x / FOOT_M, y: p.y / FOOT_M }, 18.75, 16.536, 3);
    // the same triangle as ties of a mark: the reading lies 25 ft along a pipe that goes from A through P
    const angle = Math.atan2(p.x, p.y);
    const far = { x: feet(60) * Math.sin(angle), y: feet(60) * Math.cos(angle) };
    const { marks } = derived({
      features: [
        post('A', typed(0, 0)),
        post('B', typed(feet(30), 0)),
        { id: 'in', kind: 'fixture', name: '', fields: {}, vertices: [{ id: 'a', spot: typed(0, 0) }] },
      ],
      paths: [pipe([typed(0, 0), typed(far.x, far.y)], 0)],
      runs: [run([feet(25)])],
    });
    const ties = marks[0]?.place?.ties;
    expect(degrees(ties?.cutAngle ?? 0)).toBeCloseTo(82.8, 1);
    expect(ties?.pair.map((t) => t.distance / FOOT_M)).toEqual([20, 25].map((d) => expect.closeTo(d, 6)));
  });
});

describe('three tapes by least squares', () => {
  // Strang and Borre, Linear Algebra, Geodesy, and GPS (1997), example 10.1: one unknown point, three distances, σ 0.01
  const tapes = [
    { from: { of: 'one', at: 'a' }, distance: 100.01 },
    { from: { of: 'two', at: 'a' }, distance: 100.02 },
    { from: { of: 'three', at: 'a' }, distance: 100.03 },
  ];
  const features = [
    post('one', typed(170.71, 270.71)),
    post('two', typed(100, 100)),
    post('three', typed(241.42, 100)),
    post('P', { by: 'tapes', tapes, side: 'right' }),
  ];
  const { points, findings } = derived({ features, tape: { length: 150, sigma: 0.01 } });

  it('comes to the published point within its rounding', () => {
    const p = points.get('P/a')?.at ?? { x: 0, y: 0 };
    expect(Math.abs(p.x - 170.7029)).toBeLessThan(0.00005 + 1e-9);
    expect(Math.abs(p.y - 170.7234)).toBeLessThan(0.00005 + 1e-9);
  });

  it('has the residuals of an independent solution of the same example, and says that the tapes disagree', () => {
    const residuals = points.get('P/a')?.tapeResiduals ?? [];
    expect(residuals).toEqual([0.023356, 0.016516, 0.016512].map((v) => expect.closeTo(v, 5)));
    // v'Pv 10.909 at one degree of freedom is far above the 95 % value of χ², 3.84
    expect(findings.map((f) => f.code)).toEqual(['tapes-disagree']);
  });
});

describe('a boundary by courses', () => {
  // Wolf and Ghilani, Elementary Surveying, example 10.4: lengths in feet and azimuths as printed. Departures and latitudes
  // computed independently from them; the book's, rounded, agree within 0.002.
  const courses = [
    [647.25, 126, 55, 17, 517.451, -388.815],
    [203.03, 178, 18, 58, 5.966, -202.942],
    [720.35, 15, 31, 54, 192.889, 694.045],
    [610.24, 284, 35, 20, -590.565, 153.708],
    [285.13, 206, 9, 42, -125.715, -255.919],
  ] as const;

  it('has the departures, latitudes and misclosure of the worked traverse', () => {
    const vertices = [
      typed(0, 0),
      ...courses.map(
        ([length, d, m, s]): Spot => ({
          by: 'course',
          azimuth: radians(d + m / 60 + s / 3600),
          distance: length,
        }),
      ),
    ].map((spot, i) => ({ id: 'abcdef'[i] ?? 'z', spot }));
    const { points } = derived({
      features: [{ id: 'lot', kind: 'boundary', name: '', fields: {}, vertices }],
    });
    const at = [...points.values()].map((p) => p.at);
    for (const [i, [, , , , departure, latitude]] of courses.entries()) {
      const [from, to] = [at[i] ?? { x: 0, y: 0 }, at[i + 1] ?? { x: 0, y: 0 }];
      expect(Math.abs(to.x - from.x - departure), `departure ${i}`).toBeLessThan(0.002);
      expect(Math.abs(to.y - from.y - latitude), `latitude ${i}`).toBeLessThan(0.002);
    }
    const last = at.at(-1) ?? { x: 0, y: 0 };
    expect(Math.hypot(last.x, last.y)).toBeCloseTo(0.0802, 3);
  });
});

describe('a reading to its station', () => {
  // The circular curve of any route-surveying text, T = R·tan(Δ/2), L = R·Δ, E = R·(sec(Δ/2) − 1), computed for R 9 in:
  // deflection, T, L, and 2T − L, which the counter is short of the two tangents; inches.
  const curves = [
    [22.5, 1.7902, 3.5343, 0.0461],
    [45, 3.7279, 7.0686, 0.3873],
    [60, 5.1962, 9.4248, 0.9675],
    [90, 9, 14.1372, 3.8628],
  ] as const;
  const LEG_M = 10 * FOOT_M;

  it.each(curves)('round a bend of %d°, R 9 in', (deflection, tangent, arc, saved) => {
    const bend = radians(deflection);
    const corner = { x: 0, y: LEG_M };
    const spots = [
      typed(0, 0),
      typed(corner.x, corner.y),
      { by: 'turn', turn: bend, distance: LEG_M } as const,
    ];
    const toMiddle = LEG_M - tangent * INCH_M + (arc / 2) * INCH_M;
    const past = toMiddle + (arc / 2) * INCH_M + FOOT_M;
    const { paths, marks } = derived({
      features: [
        { id: 'in', kind: 'fixture', name: '', fields: {}, vertices: [{ id: 'a', spot: typed(0, 0) }] },
      ],
      paths: [pipe(spots, 9 * INCH_M)],
      runs: [run([toMiddle, past])],
    });
    expect((2 * LEG_M - (paths.get('p')?.length ?? 0)) / INCH_M).toBeCloseTo(saved, 3);
    const [middle, beyond] = marks.map((m) => m.place?.at ?? { x: Number.NaN, y: Number.NaN });
    const external = 9 * (1 / Math.cos(bend / 2) - 1);
    expect(distance(middle ?? corner, corner) / INCH_M).toBeCloseTo(external, 3);
    // a foot past the arc's end the mark lies T + 1 ft from the corner, on the leg out
    const out = tangent * INCH_M + FOOT_M;
    expect(beyond?.x).toBeCloseTo(out * Math.sin(bend), 4);
    expect(beyond?.y).toBeCloseTo(corner.y + out * Math.cos(bend), 4);
  });

  // Slope length to plan, computed: 100 ft of cable at 1/4 in/ft comes 0.0217 ft short, at 1/8 in/ft 0.0054 ft, at 1:8 0.772 ft
  it.each([
    [1 / 48, 0.0217, 4],
    [1 / 96, 0.0054, 4],
    [1 / 8, 0.772, 3],
  ])('down a slope of %d', (slope, short, digits) => {
    const { marks } = derived({
      features: [
        { id: 'in', kind: 'fixture', name: '', fields: {}, vertices: [{ id: 'a', spot: typed(0, 0) }] },
      ],
      paths: [pipe([typed(0, 0), typed(0, 40)], 0, slope)],
      runs: [run([100 * FOOT_M])],
    });
    expect(100 - (marks[0]?.place?.station ?? 0) / FOOT_M).toBeCloseTo(short, digits);
  });

  it('from the rim of a riser: the sweep of R 1 ft saves 0.4292 ft at 90° (2T − L, computed)', () => {
    const zero = { at: 'rim', counter: 0, riser: 5 * FOOT_M, sweepRadius: FOOT_M } as const;
    const { marks } = derived({
      features: [
        { id: 'in', kind: 'fixture', name: '', fields: {}, vertices: [{ id: 'a', spot: typed(0, 0) }] },
      ],
      paths: [pipe([typed(0, 0), typed(0, 40)], 0)],
      runs: [{ ...run([20 * FOOT_M]), zero }],
    });
    expect((marks[0]?.place?.station ?? 0) / FOOT_M).toBeCloseTo(20 - (5 - 0.4292), 4);
  });
});

describe('the plane of a yard on the earth', () => {
  it('gives the distances of the geodesic (GeographicLib, WGS 84) within a micrometre', () => {
    const legs = [
      ['P', 30, 60],
      ['Q', 120, 45],
      ['R', 261.5, 72.4],
    ] as const;
    const { points } = derived({
      features: [
        post('O', typed(0, 0)),
        ...legs.map(([id, azimuth, length]) =>
          post(id, {
            by: 'bearing',
            from: { of: 'O', at: 'a' },
            azimuth: radians(azimuth),
            distance: length,
          }),
        ),
      ],
    });
    const earth = geodesic.Geodesic.WGS84;
    const onEarth = legs.map(([, azimuth, length]) => earth.Direct(41.5, -81.7, azimuth, length));
    for (const [i, j] of [
      [0, 1],
      [1, 2],
      [0, 2],
    ] as const) {
      const [a, b] = [onEarth[i], onEarth[j]];
      const taped = earth.Inverse(a?.lat2 ?? 0, a?.lon2 ?? 0, b?.lat2 ?? 0, b?.lon2 ?? 0).s12 ?? Number.NaN;
      const [p, q] = [points.get(`${legs[i][0]}/a`)?.at, points.get(`${legs[j][0]}/a`)?.at];
      expect(distance(p ?? { x: 0, y: 0 }, q ?? { x: 0, y: 0 })).toBeCloseTo(taped, 6);
    }
  });
});

function pipe(spots: readonly Spot[], bendRadius: number, slope = 0): Site['paths'][number] {
  return {
    id: 'p',
    name: '',
    state: 'existing',
    bendRadius,
    vertices: spots.map((spot, i) => ({ id: 'abcdef'[i] ?? 'z', spot })),
    stretches: [{ from: 0, material: 'clay', diameter: 0.1016, slope }],
  };
}

function run(counters: readonly number[]): Site['runs'][number] {
  return {
    id: 'r',
    letter: 'A',
    name: '',
    visit: null,
    entry: 'in',
    path: 'p',
    direction: 'with-flow',
    branches: [],
    zero: { at: 'in-pipe', counter: 0 },
    scale: { by: 'said', factor: 1 },
    resolution: 0.03048,
    head: { length: 0, zeroed: 'lens' },
    note: '',
    readings: counters.map((counter, i) => ({
      id: `m${i}`,
      number: i + 1,
      counter,
      seen: 'roots',
      passed: true,
      note: '',
    })),
  };
}
