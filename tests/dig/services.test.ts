import {
  type DigOutline,
  digOutlines,
  oneCallState,
  servicesOf,
  whiteLines,
  zoneHalfWidth,
} from '@footmark/dig';
import { distance, locate, type Point } from '@footmark/geometry';
import {
  changeOneCall,
  changeRule,
  derive,
  type Feature,
  FOOT_M,
  INCH_M,
  type OneCall,
  type Path,
  type Site,
} from '@footmark/site';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { describe, expect, it } from 'vitest';
import { pipe, square, thing, typed, yard } from '../../packages/site/src/testing/yard';
import { digSite, dug, trench } from './digSite';

const TODAY = '2026-05-10';
const feet = (ft: number) => ft * FOOT_M;
const spot = (x: number, y: number) => typed(feet(x), feet(y));

/** 4 in SDR 35 pipe, its invert 4 ft below even ground: 4.215 in outside (ASTM D3034 Table 1). */
const drain = (facts: Partial<Path> = {}) =>
  pipe(
    'p',
    [
      { spot: spot(0, 0), level: { is: 'depth-to-invert', depth: feet(4) } },
      { spot: spot(100, 0), level: { is: 'depth-to-invert', depth: feet(4) } },
    ],
    {
      state: 'proposed',
      stretches: [{ from: 0, material: 'plastic', diameter: 3.975 * INCH_M, slope: 0 }],
      ...facts,
    },
  );
const gas = (fields: object, x = 50, turn = 0) =>
  thing('gas', 'service', [spot(x - turn, -20), spot(x + turn, 20)], { carries: 'gas', ...fields });

function services(
  features: readonly Feature[],
  paths: readonly Path[] = [drain()],
  change: (site: Site) => Site = (s) => s,
  outlines: readonly DigOutline[] = [],
) {
  const site = change(yard({ features: [...features], paths: [...paths] }));
  return servicesOf(site, derive(site), outlines, TODAY);
}

describe('where a pipe crosses a service', () => {
  it('station, angle and the gap between the outsides', () => {
    // top of the drain: 48 in less 3.975 bore less .12 wall = 43.905 in deep; the gas pipe's bottom 24 + 2 in
    const [found] = services([gas({ depth: feet(2), diameter: 2 * INCH_M })]).crossings;
    expect(found).toMatchObject({ path: 'p', feature: 'gas', over: 'service', missing: [], joins: false });
    expect((found?.station ?? 0) / FOOT_M).toBeCloseTo(50, 9);
    expect(found?.angle).toBeCloseTo(Math.PI / 2, 12);
    expect((found?.gap ?? 0) / INCH_M).toBeCloseTo(48 - 3.975 - 0.12 - 26, 6);
  });

  it('under the pipe, from its bottom to the top of the service', () => {
    const [found] = services([gas({ depth: feet(5), diameter: 2 * INCH_M })]).crossings;
    expect(found?.over).toBe('pipe');
    expect((found?.gap ?? 0) / INCH_M).toBeCloseTo(60 - 48 - 0.12, 6);
  });

  it('at an angle, 45 degrees', () => {
    const [found] = services([gas({}, 50, 20)]).crossings;
    expect(found?.angle).toBeCloseTo(Math.PI / 4, 12);
  });

  it('what is not known is said', () => {
    expect(services([gas({})]).crossings[0]).toMatchObject({
      gap: null,
      over: null,
      missing: ['service-depth'],
    });
    const bare = pipe('p', [spot(0, 0), spot(100, 0)]);
    const { crossings, findings } = services([gas({ depth: 1 })], [bare]);
    expect(crossings[0]?.missing).toContain('pipe-depth');
    expect(findings).toContainEqual(
      expect.objectContaining({ code: 'service-crossed', severity: 'note', rule: 'otherService' }),
    );
  });

  it('a planned pipe that runs into a service is a must, one that clears it a note', () => {
    const severity = (depth: number, state: Path['state'] = 'proposed') =>
      services([gas({ depth, diameter: 2 * INCH_M })], [drain({ state })]).findings.find(
        (f) => f.code === 'service-crossed',
      )?.severity;
    expect(severity(feet(3.7))).toBe('must');
    expect(severity(feet(3.4))).toBe('should');
    expect(severity(feet(2))).toBe('note');
    // of one that lies already a clash only says that a depth is wrong
    for (const state of ['existing', 'as-built'] as const) {
      expect(severity(feet(3.7), state)).toBe('should');
      expect(severity(feet(3.4), state)).toBe('note');
    }
  });

  it('the main that a pipe ends at is joined, not crossed', () => {
    const main = thing('main', 'main', [spot(99.8, -50), spot(99.8, 50)], { diameter: feet(0.5) });
    const { crossings, findings } = services([main]);
    expect(crossings).toMatchObject([{ feature: 'main', joins: true }]);
    expect(findings.filter((f) => f.code === 'service-crossed')).toEqual([]);
  });
});

describe('the tolerance zone', () => {
  // C2, CGA Best Practice 5-19: width of the facility and 18 in to each side: 4.215 in gives 40.2 in, 2 in gives 38 in
  it.each([
    [4.215, 40.215],
    [2, 38],
  ])('of a pipe of %f in with 18 in to each side is %f in wide', (diameter, width) => {
    const change = { rule: 'toleranceZone', value: 18 * INCH_M, who: 'lead', why: 'the state' } as const;
    const site = changeRule(yard({ features: [gas({ diameter: diameter * INCH_M })] }), { change });
    const service = derive(site).features.get('gas');
    if (service === undefined) throw new Error('no service');
    expect((2 * zoneHalfWidth(site, service)) / INCH_M).toBeCloseTo(width, 9);
  });

  it('is never less than 18 in, whatever the site says, which is a finding', () => {
    const change = { rule: 'toleranceZone', value: feet(1), who: 'lead', why: 'a slip' } as const;
    const { paths, findings } = services([gas({ diameter: 2 * INCH_M })], [drain()], (site) =>
      changeRule(site, { change }),
    );
    expect(findings).toContainEqual(
      expect.objectContaining({
        code: 'tolerance-under-floor',
        severity: 'must',
        values: { value: feet(1), floor: 18 * INCH_M },
      }),
    );
    // square across: the whole width of the zone
    expect((paths[0]?.length ?? 0) / INCH_M).toBeCloseTo(38, 6);
  });

  // C10: 24 in to each side and half the diameter from the centre (FL, SC, NY)
  it('by default 24 in to each side: 50 in along a trench square across a 2 in pipe', () => {
    const [found] = services([gas({ diameter: 2 * INCH_M })]).paths;
    expect((found?.length ?? 0) / INCH_M).toBeCloseTo(50, 6);
    expect(found?.stretches).toHaveLength(1);
    expect(((found?.stretches[0]?.from ?? 0) + (found?.stretches[0]?.to ?? 0)) / 2 / FOOT_M).toBeCloseTo(
      50,
      9,
    );
  });

  it('at 45 degrees a trench of 24 in is in it for (50 + 24) / sin 45 less what its width does not need', () => {
    const [found] = services([gas({ diameter: 2 * INCH_M }, 50, 20)]).paths;
    // the strip |y| ≤ 12 in leaves the band |x − y| / √2 ≤ 25 in at x = ±(12 + 25 √2) in
    expect((found?.length ?? 0) / INCH_M).toBeCloseTo(2 * (12 + 25 * Math.SQRT2), 6);
  });

  it('a service alongside is in the zone of all the pipe beside it', () => {
    const along = thing('gas', 'service', [spot(20, 2), spot(40, 2)], {
      carries: 'gas',
      diameter: 2 * INCH_M,
    });
    const [found] = services([along]).paths;
    // its ends reach 25 in round; the near edge of the trench is 12 in off
    const beyond = 2 * Math.sqrt(25 ** 2 - 12 ** 2);
    expect((found?.length ?? 0) / INCH_M).toBeCloseTo(240 + beyond, 6);
  });

  it('along random trenches it is what jsts makes of the areas (seeds 1 to 60)', () => {
    const factory = new GeometryFactory();
    const line = (points: readonly Point[]) =>
      factory.createLineString(points.map((p) => new Coordinate(p.x, p.y)));
    let compared = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const random = seeded(seed);
      const place = () => typed(20 * random() - 10, 20 * random() - 10);
      const service = thing('gas', 'service', Array.from({ length: 2 + Math.floor(3 * random()) }, place), {
        diameter: 0.2 * random(),
      });
      const site = yard({ features: [service], paths: [pipe('p', [typed(-10, 0), typed(10, 0)])] });
      const derived = derive(site);
      const placed = derived.features.get('gas');
      if (placed === undefined) continue;
      const [found] = servicesOf(site, derived, [], TODAY).paths;
      // a strip along x: its overlap with the zone, seen along the strip, from the zone rounded with chords of a degree
      const zone = BufferOp.bufferOp(line(placed.outline), zoneHalfWidth(site, placed), 90);
      const half = FOOT_M;
      const strip = factory.createPolygon(
        [
          [-10, -half],
          [10, -half],
          [10, half],
          [-10, half],
          [-10, -half],
        ].map(([x, y]) => new Coordinate(x, y)),
      );
      const both = OverlayOp.intersection(zone, strip);
      const spans: [number, number][] = [];
      for (let i = 0; i < both.getNumGeometries(); i++) {
        const box = both.getGeometryN(i).getEnvelopeInternal();
        if (!box.isNull()) spans.push([box.getMinX() + 10, box.getMaxX() + 10]);
      }
      spans.sort((a, b) => a[0] - b[0]);
      const joined: [number, number][] = [];
      for (const span of spans) {
        const last = joined.at(-1);
        if (last !== undefined && span[0] <= last[1]) last[1] = Math.max(last[1], span[1]);
        else joined.push(span);
      }
      const theirs = joined.reduce((sum, [from, to]) => sum + to - from, 0);
      if (theirs > 0) compared++;
      expect(Math.abs((found?.length ?? 0) - theirs)).toBeLessThan(2e-3);
    }
    expect(compared).toBeGreaterThan(30);
  });
});

/** Uniform in [0, 1), the same for a seed everywhere (Park and Miller's generator). */
function seeded(seed: number): () => number {
  let state = seed * 7919 + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

const box = (x0: number, y0: number, x1: number, y1: number): readonly Point[] => [
  { x: feet(x0), y: feet(y0) },
  { x: feet(x1), y: feet(y0) },
  { x: feet(x1), y: feet(y1) },
  { x: feet(x0), y: feet(y1) },
];

describe('digs in a tolerance zone', () => {
  it('a trench: how much of it is dug by hand, and how far under its bottom the service lies', () => {
    const outline = {
      id: 't',
      ring: box(20, -3, 51, 3),
      depth: feet(5),
      along: { line: [feet(20), feet(51)].map((x) => ({ x, y: 0 })), halfWidth: feet(3) },
    };
    const { digs, findings } = services(
      [gas({ depth: feet(2), diameter: 2 * INCH_M })],
      [drain()],
      (s) => s,
      [outline],
    );
    expect(digs).toMatchObject([{ dig: 't', feature: 'gas' }]);
    // 25 in to one side, the trench ends 12 in past the service on the other
    expect((digs[0]?.handDig ?? 0) / INCH_M).toBeCloseTo(25 + 12, 6);
    expect((digs[0]?.below ?? 0) / FOOT_M).toBeCloseTo(-3, 9);
    expect(digs[0]?.distance).toBeLessThan(0);
    expect(findings).toContainEqual(
      expect.objectContaining({
        code: 'dig-in-tolerance-zone',
        severity: 'must',
        rule: 'toleranceZone',
        at: { kind: 'dig', id: 't' },
      }),
    );
  });

  it('a trench whose bottom ends before the service, and whose end is cut back over it', () => {
    // 6 ft deep in soil B, Table B-1: cut back 6 ft at the end, to 46 ft along the pipe
    const features = [gas({ diameter: 2 * INCH_M }, 45)];
    const digs = [trench(10, 40, { depth: feet(6), bottomWidth: feet(2) })];
    const { site, derived, all } = dug({ things: { features, paths: [drain()] }, digging: { digs } });
    const [found] = servicesOf(site, derived, digOutlines(all), TODAY).digs;
    expect(found?.distance).toBeLessThan(0);
    // the bottom is 30 ft long, and both ends are cut back
    expect((found?.length ?? 0) / FOOT_M).toBeCloseTo(30 + 2 * 6, 6);
    // from 25 in before the gas pipe to the end, 12 in past it
    expect((found?.handDig ?? 0) / INCH_M).toBeCloseTo(25 + 12, 6);
  });

  it('a trench that has no more than the outside of a bend in it tells no length of none', () => {
    // 4 ft to each side of the middle line, the corner cut at (4, -4); the pipe in the zone lies beyond it
    const paths = [pipe('p', [spot(-30, 0), spot(0, 0), spot(0, 30)])];
    const features = [thing('gas', 'service', [spot(6, -4), spot(4, -6)], { diameter: 2 * INCH_M })];
    const digs = [trench(10, 50, { depth: feet(4), bottomWidth: feet(8), protection: 'shield' })];
    const { site, derived, all } = dug({ things: { features, paths }, digging: { digs } });
    const [found] = servicesOf(site, derived, digOutlines(all), TODAY).digs;
    expect(found).toMatchObject({ feature: 'gas', handDig: null });
  });

  it('a pit beside a service is within its zone or not', () => {
    const pit = (x: number) =>
      services([gas({ diameter: 2 * INCH_M })], [], (s) => s, [
        { id: 'pit', ring: box(x, 0, x + 4, 4), depth: null, along: null },
      ]).digs;
    expect(pit(52)).toMatchObject([{ dig: 'pit', handDig: null, below: null }]);
    expect((pit(52)[0]?.distance ?? 0) / INCH_M).toBeCloseTo(23, 6);
    expect(pit(52.1)).toEqual([]);
  });

  it('a service without a diameter is said to count from its middle', () => {
    const { findings } = services([gas({})]);
    expect(findings).toContainEqual(
      expect.objectContaining({ code: 'service-without-diameter', severity: 'note' }),
    );
  });
});

describe('the one-call ticket on a day', () => {
  const ticket = (facts: Partial<OneCall>): OneCall => ({ ticket: '123', ...facts });
  it.each<[string, OneCall | undefined, string, number | null]>([
    ['none', undefined, 'missing', null],
    ['a number alone', ticket({}), 'not-called', null],
    ['a call to come', ticket({ called: '2026-05-12' }), 'not-called', 2],
    ['called today', ticket({ called: TODAY }), 'waiting', null],
    [
      'called, good from a later day',
      ticket({ called: '2026-05-08', validFrom: '2026-05-13' }),
      'waiting',
      3,
    ],
    [
      'good from today',
      ticket({ called: '2026-05-08', validFrom: TODAY, validUntil: '2026-06-07' }),
      'valid',
      28,
    ],
    ['good until today', ticket({ validFrom: '2026-05-01', validUntil: TODAY }), 'valid', 0],
    ['good until yesterday', ticket({ validFrom: '2026-05-01', validUntil: '2026-05-09' }), 'expired', 1],
    ['expired before the year', ticket({ validUntil: '2025-12-31', called: '2025-12-01' }), 'expired', 130],
    ['without an end', ticket({ validFrom: '2026-05-01' }), 'valid', null],
  ])('%s', (_, oneCall, is, days) => {
    expect(oneCallState(oneCall, TODAY)).toEqual({ is, days, datesClash: false });
  });

  it('days that contradict each other are told', () => {
    const clash = ticket({ called: '2026-05-09', validFrom: '2026-05-08', validUntil: '2026-06-01' });
    expect(oneCallState(clash, TODAY)).toMatchObject({ is: 'valid', datesClash: true });
    expect(services([], [], (site) => changeOneCall(site, { facts: clash })).findings).toMatchObject([
      { code: 'one-call-dates-clash', severity: 'should' },
    ]);
  });

  it('is a must when something is to be dug', () => {
    const planned = digSite({ things: { paths: [drain()] }, digging: { digs: [trench(0, 10)] } });
    expect(servicesOf(planned, derive(planned), [], TODAY).findings).toMatchObject([
      { code: 'one-call-missing', severity: 'must' },
    ]);
    expect(services([], []).findings).toMatchObject([{ code: 'one-call-missing', severity: 'note' }]);
  });
});

describe('white lines', () => {
  const house = square('house', 'building', feet(-40), feet(-40), feet(30));
  const outline = (id: string, ring: readonly Point[]): DigOutline => ({
    id,
    ring,
    depth: null,
    along: null,
  });
  const lined = (outlines: readonly DigOutline[]) => {
    const site = yard({ features: [house] });
    return whiteLines(site, derive(site), outlines);
  };

  it('a trench of 20 by 3 ft: 60 square feet, four corners, each taped from two corners of the house', () => {
    const [line, ...others] = lined([outline('t', box(0, 0, 20, 3))]);
    expect(others).toEqual([]);
    expect(line?.digs).toEqual(['t']);
    expect((line?.area ?? 0) / FOOT_M ** 2).toBeCloseTo(60, 9);
    expect((line?.length ?? 0) / FOOT_M).toBeCloseTo(46, 9);
    expect(line?.corners).toHaveLength(4);
    for (const { at, ties } of line?.corners ?? []) {
      for (const tie of ties?.pair ?? []) expect(tie.distance).toBeCloseTo(distance(tie.from.at, at), 12);
      expect(ties?.pair).toHaveLength(2);
    }
  });

  it('digs that overlap are one piece, lined once; those apart are two', () => {
    const trenchAndPit = [
      outline('t', box(0, 0, 20, 3)),
      outline('pit', box(18, -2, 24, 5)),
      outline('far', box(60, 0, 64, 4)),
    ];
    const found = lined(trenchAndPit);
    expect(found.map((l) => [...l.digs].sort())).toEqual(expect.arrayContaining([['pit', 't'], ['far']]));
    const both = found.find((l) => l.digs.length === 2);
    // 60 + 42 less the 2 by 3 that they share
    expect((both?.area ?? 0) / FOOT_M ** 2).toBeCloseTo(96, 6);
    expect(both?.corners).toHaveLength(8);
  });

  it('end at a building, under which nobody paints', () => {
    // the house reaches from -40 to -10 ft both ways: of 20 by 3 ft 5 by 3 lie under it
    const [line, ...others] = lined([outline('t', box(-15, -20, 5, -17))]);
    expect(others).toEqual([]);
    expect((line?.area ?? 0) / FOOT_M ** 2).toBeCloseTo(45, 6);
    expect((line?.length ?? 0) / FOOT_M).toBeCloseTo(36, 6);
    expect(line?.corners.map(({ at }) => at.x / FOOT_M).sort((a, b) => a - b)).toEqual(
      [-10, -10, 5, 5].map((x) => expect.closeTo(x, 6)),
    );
    expect(lined([outline('t', box(-30, -30, -20, -20))])).toEqual([]);
  });

  it('are two pieces where a dig goes under a building, the same dig’s', () => {
    const found = lined([outline('t', box(-50, -20, 5, -17))]);
    expect(found.map(({ digs }) => digs)).toEqual([['t'], ['t']]);
    expect(found.map(({ area }) => area / FOOT_M ** 2).sort((a, b) => a - b)).toEqual(
      [30, 45].map((area) => expect.closeTo(area, 6)),
    );
  });

  it('say which digs may take more, as their depth is not known', () => {
    const known = { ...outline('t', box(0, 0, 20, 3)), depth: 1 };
    expect(lined([known])[0]?.atLeast).toEqual([]);
    expect(lined([known, outline('pit', box(18, -2, 24, 5))])[0]?.atLeast).toEqual(['pit']);
  });

  it('along a bend no corner is taped for each of its chords', () => {
    const bend = Array.from({ length: 19 }, (_, i) => {
      const angle = (i * Math.PI) / 36;
      return { x: 3 * Math.sin(angle), y: 3 * Math.cos(angle) };
    });
    const inner = bend.map(({ x, y }) => ({ x: x / 2, y: y / 2 }));
    const [line] = lined([outline('t', [...inner, ...bend.toReversed()])]);
    expect(line?.corners.length).toBeLessThan(14);
    expect(line?.corners.length).toBeGreaterThanOrEqual(6);
  });

  it('of no digs there are none', () => {
    expect(lined([])).toEqual([]);
  });
});

describe('the same site turned and mirrored', () => {
  it('has the same crossings and zones (seeds 1 to 20)', () => {
    const moved = ({ x, y }: Point) => ({ x: -0.6 * x - 0.8 * y + 30, y: -0.8 * x + 0.6 * y - 7 });
    for (let seed = 1; seed <= 20; seed++) {
      const resultOf = (turn: (p: Point) => Point) => {
        const random = seeded(seed);
        const place = () => {
          const p = turn({ x: 30 * random() - 15, y: 30 * random() - 15 });
          return typed(p.x, p.y);
        };
        const way = Array.from({ length: 4 }, () => ({
          spot: place(),
          level: { is: 'depth-to-invert', depth: 1 + random() } as const,
        }));
        const features = ['a', 'b', 'c'].map((id) =>
          thing(id, 'service', [place(), place(), place()], { depth: random(), diameter: 0.1 * random() }),
        );
        const site = yard({ features, paths: [pipe('p', way, { bendRadius: 0.3 })] });
        const derived = derive(site);
        const on = derived.paths.get('p');
        if (on === undefined) throw new Error('no path');
        const found = servicesOf(site, derived, [], TODAY);
        for (const { station, at } of found.crossings)
          expect(distance(locate(on.line, station).point, at)).toBeLessThan(1e-9);
        return [
          found.crossings.map((c) => [c.feature, c.station, c.angle, c.gap]),
          found.paths.map((z) => [z.feature, z.length]),
          found.findings.map((f) => [f.code, f.severity]),
        ].flat(2);
      };
      const [here, there] = [resultOf((p) => p), resultOf(moved)];
      expect(there.length).toBe(here.length);
      for (const [i, value] of here.entries()) {
        if (typeof value === 'number') expect(there[i]).toBeCloseTo(value, 5);
        else expect(there[i]).toBe(value);
      }
    }
  });
});
