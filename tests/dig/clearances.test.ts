import {
  clearanceFindings,
  clearances,
  clearanceTo,
  type DigOutline,
  type EdgeClearance,
  outlineSubject,
  pathSubject,
  requiredOn,
  subjectsOf,
} from '@footmark/dig';
import { type Point, pointAtAzimuth, polylineToRing } from '@footmark/geometry';
import {
  changeRule,
  type DerivedFeature,
  derive,
  type Feature,
  FOOT_M,
  INCH_M,
  movePoint,
  type Path,
  type Site,
} from '@footmark/site';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import { describe, expect, it } from 'vitest';
import { pipe, push, square, thing, typed, yard } from '../../packages/site/src/testing/yard';

// Reference for distances: JTS in JavaScript (jsts 2.12), between centre lines, with the half widths taken off by hand. For depths, which
// it does not know: samples along the line, each by jsts's distance to the outline.
const AGREE_M = 1e-8;
/** Samples on each leg of a line that runs through an outline. */
const SAMPLES = 100;

const factory = new GeometryFactory();
const coordinates = (points: readonly Point[]) => points.map((p) => new Coordinate(p.x, p.y));
const jtsPoint = (p: Point) => factory.createPoint(new Coordinate(p.x, p.y));
const jtsLine = (points: readonly Point[]) => factory.createLineString(coordinates(points));
const closed = (ring: readonly Point[]) => [...ring, ...ring.slice(0, 1)];
const jtsRing = (ring: readonly Point[]) => factory.createLinearRing(coordinates(closed(ring)));
const jtsPolygon = (ring: readonly Point[]) => factory.createPolygon(coordinates(closed(ring)));

/** A linear congruential generator modulo 2^32 (Numerical Recipes constants, from memory): values in [0, 1). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

type Turn = (p: Point) => Point;
const asIs: Turn = (p) => p;

/** A yard of 60 m with every face that there is, a pipe of two sizes, and digs. */
function randomYard(seed: number, turn: Turn = asIs): { site: Site; outlines: readonly DigOutline[] } {
  const random = seeded(seed);
  const place = (): Point => ({ x: 60 * random() - 30, y: 60 * random() - 30 });
  const spots = (points: readonly Point[]) => points.map(turn).map((p) => typed(p.x, p.y));
  const line = () => {
    let [p, heading] = [place(), 6 * random()];
    return Array.from({ length: 2 + Math.floor(4 * random()) }, () => {
      heading += 2 * random() - 1;
      p = pointAtAzimuth(p, heading, 1 + 8 * random());
      return p;
    });
  };
  /** Corners at random radii about a centre: simple, mostly not convex. */
  const ring = (most: number) => {
    const centre = place();
    const corners = 3 + Math.floor(6 * random());
    return Array.from({ length: corners }, (_, i) =>
      pointAtAzimuth(centre, (-2 * Math.PI * i) / corners, 0.5 + most * random()),
    );
  };
  const features = Array.from({ length: 48 }, (_, i): Feature => {
    const id = `f${i}`;
    switch (i % 8) {
      case 0:
        return thing(id, 'tree', spots([place()]), { trunkDiameter: 0.1 + random() });
      case 1:
        return thing(id, 'service', spots(line()), { carries: 'gas', diameter: 0.3 * random() + 0.01 });
      case 2:
        return thing(id, 'building', spots(ring(8)));
      case 3:
        return thing(id, 'boundary', spots(ring(20)));
      case 4:
        return thing(id, 'well', spots([place()]), { diameter: 1 });
      case 5:
        return thing(id, 'right-of-way', spots(line()));
      case 6:
        return thing(id, 'easement', spots(ring(15)));
      default:
        return thing(id, 'sidewalk', spots(ring(4)));
    }
  });
  const middle = 4 + 4 * random();
  const drain = pipe('drain', spots([...line(), ...line()]), {
    bendRadius: random() < 0.5 ? 0 : 0.3,
    stretches: [
      { from: 0, material: 'clay', diameter: 0.1, slope: 0 },
      { from: middle, material: 'plastic', diameter: 0.3, slope: 0 },
    ],
  });
  const outlines = [ring(3), ring(9)].map((corners, i) => ({
    id: `dig${i}`,
    ring: corners.map(turn),
    depth: null,
    along: null,
  }));
  return { site: yard({ features, paths: [drain] }), outlines };
}

const radiusOf = ({ feature, radius }: DerivedFeature): number =>
  feature.kind === 'service' ? (feature.fields.diameter ?? 0) / 2 : radius;
const isLine = ({ feature }: DerivedFeature) =>
  feature.kind === 'service' || feature.kind === 'right-of-way' || feature.kind === 'boundary';

function jtsOf(derived: DerivedFeature) {
  const { spec, outline, feature } = derived;
  const [first] = outline;
  if (spec.shape === 'point' && first !== undefined) return jtsPoint(first);
  if (spec.shape === 'line') return jtsLine(outline);
  return feature.kind === 'boundary' ? jtsRing(outline) : jtsPolygon(outline);
}

/** The deepest of many points along a line within a ring, less than nothing; null where none is inside. */
function sampledDepth(line: readonly Point[], ring: readonly Point[]): number | null {
  const polygon = jtsPolygon(ring);
  const edge = jtsRing(ring);
  let deepest: number | null = null;
  for (const [i, b] of line.entries()) {
    const a = line[i - 1] ?? b;
    for (let k = 0; k <= SAMPLES; k++) {
      const p = { x: a.x + ((b.x - a.x) * k) / SAMPLES, y: a.y + ((b.y - a.y) * k) / SAMPLES };
      if (DistanceOp.distance(jtsPoint(p), polygon) > 0) continue;
      deepest = Math.min(deepest ?? 0, -DistanceOp.distance(jtsPoint(p), edge));
    }
  }
  return deepest === 0 ? null : deepest;
}

const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

describe('clearances are what jsts has, less the widths', () => {
  const SITES = 60;
  it(`on ${SITES} random yards, from pipes of two sizes and from digs (seeds 1 to ${SITES})`, () => {
    let [outside, inside, digsOver] = [0, 0, 0];
    for (let seed = 1; seed <= SITES; seed++) {
      const { site, outlines } = randomYard(seed);
      const derived = derive(site);
      for (const subject of subjectsOf(derived, outlines)) {
        for (const feature of derived.features.values()) {
          const found = clearanceTo(subject, feature, requiredOn(site), Infinity);
          expect(found, feature.feature.id).not.toBeNull();
          if (found === null) continue;
          const width = radiusOf(feature);
          const theirs = jtsOf(feature);
          expect(Math.abs(apart(found.from, found.at) - Math.abs(found.distance))).toBeLessThan(1e-6);
          if (subject.ring !== null) {
            const away = DistanceOp.distance(jtsPolygon(subject.ring), theirs);
            if (away > 0) expect(Math.abs(found.distance + width - away)).toBeLessThan(AGREE_M);
            else {
              digsOver++;
              expect(found.distance).toBeLessThan(1e-4 - width);
            }
            continue;
          }
          const legs = subject.legs;
          if (legs === null) continue;
          const runs = legs.radii.map((radius, i) => ({ radius, leg: legs.points.slice(i, i + 2) }));
          const away = Math.min(
            ...runs.map(({ radius, leg }) => DistanceOp.distance(jtsLine(leg), theirs) - radius),
          );
          const crossed = DistanceOp.distance(jtsLine(legs.points), theirs) === 0;
          if (!crossed || isLine(feature)) {
            outside++;
            expect(Math.abs(found.distance + width - away)).toBeLessThan(AGREE_M);
            continue;
          }
          inside++;
          // no sample lies deeper, and half the way between two samples makes what there is between them
          const depths = runs.map(
            ({ radius, leg }) =>
              (sampledDepth(leg, feature.outline) ?? DistanceOp.distance(jtsLine(leg), theirs)) - radius,
          );
          const deepest = Math.min(...depths);
          const step = Math.max(...runs.map(({ leg: [a, b] }) => (a && b ? apart(a, b) : 0))) / SAMPLES;
          expect(found.distance).toBeLessThan(deepest + 1e-4);
          expect(found.distance).toBeGreaterThan(deepest - step / 2 - 1e-5);
        }
      }
    }
    expect(outside).toBeGreaterThan(2000);
    expect(inside).toBeGreaterThan(50);
    expect(digsOver).toBeGreaterThan(50);
  }, 30_000);

  it('a line is as deep in a ring as the geometry package has it (seeds 101 to 160)', () => {
    let compared = 0;
    for (let seed = 101; seed <= 160; seed++) {
      const { site } = randomYard(seed);
      const derived = derive({
        ...site,
        paths: site.paths.map((p) => ({ ...p, stretches: p.stretches.slice(0, 1) })),
      });
      const drain = derived.paths.get('drain');
      if (drain === undefined) continue;
      const subject = pathSubject(drain);
      for (const feature of derived.features.values()) {
        if (feature.spec.clearance !== 'outline') continue;
        const depth = polylineToRing(subject.points, feature.outline).distance;
        if (depth > -1e-3) continue;
        compared++;
        const found = clearanceTo(subject, feature, requiredOn(site), Infinity);
        expect((found?.distance ?? 0) + (subject.legs?.radii[0] ?? 0)).toBeCloseTo(depth, 5);
      }
    }
    expect(compared).toBeGreaterThan(30);
  });
});

describe('the same yard laid otherwise', () => {
  const turned = (angle: number, dx: number, dy: number, mirrored: boolean): Turn => {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return ({ x, y }) => {
      const u = mirrored ? -x : x;
      return { x: u * cos - y * sin + dx, y: u * sin + y * cos + dy };
    };
  };
  it.each([
    ['turned', turned(1.234, 0, 0, false)],
    ['moved far away', turned(0, 12_345, -54_321, false)],
    ['mirrored', turned(0, 0, 0, true)],
    ['mirrored, turned and moved', turned(-2.1, 500, 20, true)],
  ] as const)('%s has the same clearances (seeds 201 to 212)', (_, turn) => {
    for (let seed = 201; seed <= 212; seed++) {
      const [here, there] = [randomYard(seed), randomYard(seed, turn)];
      const of = ({ site, outlines }: typeof here) =>
        clearances(site, derive(site), { outlines, reach: 15 }).map((c) => [keyOf(c), c] as const);
      const [a, b] = [new Map(of(here)), new Map(of(there))];
      expect([...b.keys()].sort()).toEqual([...a.keys()].sort());
      for (const [key, one] of a) {
        expect(b.get(key)?.verdict).toBe(one.verdict);
        expect(b.get(key)?.distance).toBeCloseTo(one.distance, 5);
      }
    }
  });
});

function keyOf({ of, feature }: EdgeClearance): string {
  return `${of.is === 'outline' ? of.dig : of.is === 'path' ? of.id : of.reading} ${feature}`;
}

describe('what is moved alone is computed anew', () => {
  it('a clearance depends on its subject and its feature: a moved tree leaves all others as they are', () => {
    const { site, outlines } = randomYard(7);
    const derived = derive(site);
    const after = derive(
      movePoint(site, { ref: { of: 'f0', at: 'a' }, to: { x: 1, y: 2 }, places: derived.points }),
    );
    const drain = derived.paths.get('drain');
    const dig = outlines[0] === undefined ? null : outlineSubject(outlines[0]);
    if (drain === undefined || dig === null) throw new Error('no subject');
    let changed: string[] = [];
    for (const subject of [pathSubject(drain), dig]) {
      changed = [];
      for (const [id, feature] of derived.features) {
        const moved = after.features.get(id);
        if (moved === undefined) throw new Error(id);
        const was = clearanceTo(subject, feature, requiredOn(site), Infinity);
        const is = clearanceTo(subject, moved, requiredOn(site), Infinity);
        if (JSON.stringify(was) !== JSON.stringify(is)) changed.push(id);
      }
      expect(changed).toEqual(['f0']);
    }
  });
});

const feet = (ft: number) => ft * FOOT_M;
const spot = (x: number, y: number) => typed(feet(x), feet(y));
/** SDR 35, 4 in: 4.215 in outside (ASTM D3034 Table 1). */
const OUTSIDE_IN = 4.215;
const fourInch: Path['stretches'] = [
  { from: 0, material: 'plastic', diameter: 3.975 * INCH_M, slope: 1 / 48 },
];
const drain = (facts: Partial<Path> = {}) =>
  pipe('drain', [spot(0, 0), spot(100, 0)], { state: 'proposed', stretches: fourInch, ...facts });

function of(features: readonly Feature[], path: Path = drain(), change: (site: Site) => Site = (s) => s) {
  const site = change(yard({ features: [...features], paths: [path] }));
  return clearances(site, derive(site), { reach: Infinity });
}

describe('pipe wall to face, by hand', () => {
  it('a 12 in trunk 5 ft off a 4 in pipe: 60 less 6 less half of 4.215 in', () => {
    const [oak] = of([thing('oak', 'tree', [spot(50, 5)], { trunkDiameter: 12 * INCH_M })]);
    expect((oak?.distance ?? 0) / INCH_M).toBeCloseTo(60 - 6 - OUTSIDE_IN / 2, 9);
    expect((oak?.station ?? 0) / FOOT_M).toBeCloseTo(50, 9);
    expect((oak?.from.y ?? 0) / INCH_M).toBeCloseTo(OUTSIDE_IN / 2, 9);
    expect((oak?.at.y ?? 0) / INCH_M).toBeCloseTo(54, 9);
    expect(oak).toMatchObject({ rule: null, verdict: null, toCentre: false });
  });

  it('a tree without a diameter is measured to its middle, and says so', () => {
    expect(of([thing('oak', 'tree', [spot(50, 5)])])).toMatchObject([{ toCentre: true }]);
  });

  it('each stretch counts with its own size', () => {
    const stretches: Path['stretches'] = [
      ...fourInch,
      { from: feet(40), material: 'plastic', diameter: 12 * INCH_M, slope: 0 },
    ];
    const row = thing('row', 'right-of-way', [spot(0, 5), spot(100, 5)]);
    const [found] = of([row], drain({ stretches }));
    // the wall of plastic pipe is .12 of 3.975 in
    const outside = 12 * (1 + (2 * 0.12) / 3.975);
    expect((found?.distance ?? 0) / INCH_M).toBeCloseTo(60 - outside / 2, 6);
    expect(found?.station).toBeGreaterThanOrEqual(feet(40) - 1e-9);
  });
});

describe('what a clearance means by the rules', () => {
  // D14: UPC 718.3, a building sewer is not within 2 ft of a building
  it('2 ft from a building', () => {
    const deck = (y: number) => square('shed', 'shed', feet(30), feet(y), feet(10));
    const half = OUTSIDE_IN / 24;
    expect(of([deck(2.01 + half)])).toMatchObject([{ rule: 'building', verdict: 'meets' }]);
    expect(of([deck(1.99 + half)])).toMatchObject([
      { rule: 'building', verdict: 'misses', required: feet(2) },
    ]);
  });

  it('a pipe that begins in a house serves it', () => {
    expect(of([square('house', 'building', feet(-20), feet(-10), feet(20.5))])).toMatchObject([
      { verdict: 'serves' },
    ]);
  });

  // S7, S8: 50 ft from a well (UPC Table 721.1, from memory; county practice)
  it('50 ft from a well, and what the site says instead', () => {
    const well = thing('well', 'well', [spot(50, 45)], { diameter: feet(1) });
    expect(of([well])).toMatchObject([{ rule: 'well', verdict: 'misses' }]);
    const change = { rule: 'well', value: feet(40), who: 'lead', why: 'county' } as const;
    expect(of([well], drain(), (site) => changeRule(site, { change }))).toMatchObject([{ verdict: 'meets' }]);
  });

  it('a boundary or a service that is crossed is not missed; one alongside is', () => {
    const lines = (y: number, to: number) => [
      thing('line', 'boundary-line', [spot(50, y), spot(60, to)]),
      thing('gas', 'service', [spot(20, y), spot(30, to)], { carries: 'gas', diameter: INCH_M }),
    ];
    expect(of(lines(-5, 5)).map((c) => c.verdict)).toEqual(['crosses', 'crosses']);
    expect(of(lines(0.1, 0.1)).map((c) => c.verdict)).toEqual(['misses', 'misses']);
    expect(of(lines(5, 5)).map((c) => c.verdict)).toEqual(['meets', 'meets']);
  });

  // S1: IPC 603.2, 5 ft between water service and sewer, or by depth
  it('water nearer than 5 ft is a matter of depth', () => {
    const water = (y: number) => thing('water', 'service', [spot(0, y), spot(90, y)], { carries: 'water' });
    expect(of([water(4)])).toMatchObject([{ rule: 'waterService', verdict: 'by-depth' }]);
    expect(of([water(6)])).toMatchObject([{ rule: 'waterService', verdict: 'meets' }]);
  });

  // S5: Ten States Standards, Water Works 8.8.2 (section from memory): mains 10 ft edge to edge
  it('a water main is asked to be 10 ft off, by depth too', () => {
    const main = (ft: number) => {
      const y = ft + 3 / 12;
      const fields = { carries: 'water', diameter: feet(6 / 12) };
      return of([thing('main', 'service', [spot(0, y), spot(90, y)], fields)]);
    };
    expect(main(8.5)).toMatchObject([
      { rule: 'waterMain', required: expect.closeTo(feet(10), 9), verdict: 'by-depth' },
    ]);
    expect(main(10.5)).toMatchObject([{ rule: 'waterMain', verdict: 'meets' }]);
  });

  it('what misses comes first, by how much; then what depths decide; then by distance', () => {
    const found = of([
      thing('far', 'tree', [spot(50, 20)], { trunkDiameter: 0.3 }),
      thing('water', 'service', [spot(0, 4), spot(90, 4)], { carries: 'water' }),
      thing('well', 'well', [spot(50, 45)], { diameter: feet(1) }),
      square('shed', 'shed', feet(30), feet(1), feet(5)),
      thing('near', 'tree', [spot(50, 2)], { trunkDiameter: 0.3 }),
    ]);
    expect(found.map((c) => c.feature)).toEqual(['well', 'shed', 'water', 'near', 'far']);
  });

  it('without a reach only what a rule asks about, or is nearby, is listed', () => {
    const features = [
      thing('near', 'tree', [spot(50, 15)], { trunkDiameter: 0.3 }),
      thing('far', 'tree', [spot(50, 25)], { trunkDiameter: 0.3 }),
      thing('well', 'well', [spot(50, 45)], { diameter: feet(1) }),
    ];
    const site = yard({ features, paths: [drain()] });
    expect(clearances(site, derive(site)).map((c) => c.feature)).toEqual(['well', 'near']);
  });

  // C2: never less than 18 in beyond the outside of the facility
  it('a dig keeps off the tolerance zone, which is never less than the floor', () => {
    const gas = thing('gas', 'service', [spot(0, 0), spot(100, 0)], { carries: 'gas', diameter: 2 * INCH_M });
    const ring = [feet(1.6), feet(5)].flatMap((y) => [
      { x: feet(y < 1 ? 50 : 20), y },
      { x: feet(y < 1 ? 20 : 50), y },
    ]);
    const outline = {
      id: 'pit',
      ring: [ring[0], ring[1], ring[3], ring[2]].flatMap((p) => p ?? []),
      depth: null,
      along: null,
    };
    const change = { rule: 'toleranceZone', value: feet(1), who: 'lead', why: 'a slip' } as const;
    const site = changeRule(yard({ features: [gas] }), { change });
    const [found] = clearances(site, derive(site), { outlines: [outline] });
    expect(found).toMatchObject({ rule: 'toleranceZone', required: 18 * INCH_M, verdict: 'meets' });
    expect((found?.distance ?? 0) / INCH_M).toBeCloseTo(1.6 * 12 - 1, 6);
  });

  it('marks measure from their point', () => {
    const site = yard({
      features: [
        thing('head', 'cleanout', [spot(0, 0)]),
        thing('gas', 'service', [spot(0, 1), spot(100, 1)], { carries: 'gas', diameter: 2 * INCH_M }),
      ],
      paths: [drain()],
      runs: [push({ entry: 'head', path: 'drain' }, [feet(30)])],
    });
    const mark = clearances(site, derive(site)).find((c) => c.of.is === 'mark');
    expect(mark).toMatchObject({ feature: 'gas', rule: 'toleranceZone', verdict: 'misses', station: null });
    expect((mark?.distance ?? 0) / INCH_M).toBeCloseTo(11, 9);
  });

  it('a dig round a trunk reaches past it by its far side', () => {
    const oak = thing('oak', 'tree', [spot(5, 5)], { trunkDiameter: feet(1) });
    const site = yard({ features: [oak] });
    const ring = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ].map(([x = 0, y = 0]) => ({ x: feet(x), y: feet(y) }));
    const [found] = clearances(site, derive(site), {
      outlines: [{ id: 'pit', ring, depth: null, along: null }],
    });
    expect((found?.distance ?? 0) / FOOT_M).toBeCloseTo(-5.5, 9);
  });
});

describe('what is said of them', () => {
  const said = (features: readonly Feature[], path: Path = drain(), runs: Site['runs'] = []) => {
    const site = yard({ features: [...features], paths: [path], runs });
    const derived = derive(site);
    return clearanceFindings(site, derived, clearances(site, derived));
  };

  it('a planned pipe that misses a code is a must, a custom a should, one that lies there a note', () => {
    const well = thing('well', 'well', [spot(50, 45)], { diameter: feet(1) });
    const gas = thing('gas', 'service', [spot(0, 0.5), spot(90, 0.5)], { carries: 'gas', diameter: INCH_M });
    expect(said([well, gas])).toMatchObject([
      {
        code: 'pipe-too-near',
        severity: 'must',
        rule: 'well',
        values: { feature: 'well', required: feet(50) },
      },
      { code: 'pipe-too-near', severity: 'should', rule: 'otherService' },
    ]);
    const existing = said([well, gas], drain({ state: 'existing' }));
    expect(existing.map((f) => f.severity)).toEqual(['note', 'note']);
    // one that was just laid cannot be moved on paper any more
    const laid = said([well, gas], drain({ state: 'as-built' }));
    expect(laid.map((f) => f.severity)).toEqual(['should', 'should']);
    const [first] = said([well, gas]);
    expect(first?.at).toEqual({ kind: 'path', id: 'drain' });
    expect(first?.place?.y).toBeCloseTo(feet(44.5), 9);
  });

  // S9: Rossford OH: utility lines 5 ft from the building sewer
  it('a planned pipe nearer to a service than some codes ask is told so', () => {
    const gas = (ft: number) =>
      thing('gas', 'service', [spot(0, ft), spot(90, ft)], { carries: 'gas', diameter: INCH_M });
    const codes = (ft: number, state: Path['state'] = 'proposed') =>
      said([gas(ft)], drain({ state })).map((f) => [f.code, f.severity, f.rule]);
    expect(codes(4)).toEqual([['service-nearer-than-elsewhere', 'note', 'serviceLocal']]);
    expect(codes(6)).toEqual([]);
    expect(codes(4, 'existing')).toEqual([]);
  });

  it('a mark beside a service is dug by hand', () => {
    const head = thing('head', 'cleanout', [spot(0, 0)]);
    const gas = thing('gas', 'service', [spot(30, -20), spot(30, 20)], {
      carries: 'gas',
      diameter: 2 * INCH_M,
    });
    const run = push({ entry: 'head', path: 'drain' }, [feet(31), feet(40)]);
    const found = said([head, gas], drain(), [run]).filter((f) => f.code === 'mark-in-tolerance-zone');
    expect(found).toMatchObject([
      { severity: 'must', rule: 'toleranceZone', at: { kind: 'reading', run: 'run', id: 'r1' } },
    ]);
    // 31 ft of cable at 1/4 in per foot, in plan
    const plan = 31 / Math.sqrt(1 + 1 / 48 ** 2);
    expect((found[0]?.values.distance ?? 0) / INCH_M).toBeCloseTo(12 * (plan - 30) - 1, 9);
  });

  // D15: sewer-use ordinances after the EPA model, not parallel to and within 3 ft of a bearing wall
  it('a pipe along a wall within 3 ft, and not one that leaves it square or lies further off', () => {
    const house = (y: number) => square('house', 'building', feet(20), feet(y), feet(40));
    const along = (features: readonly Feature[], path?: Path) =>
      said(features, path).filter((f) => f.code === 'pipe-along-wall');
    const [found] = along([house(2.5)]);
    expect(found).toMatchObject({
      severity: 'should',
      rule: 'bearingWall',
      values: { feature: 'house', required: feet(3) },
    });
    expect(((found?.values.distance ?? 0) + (OUTSIDE_IN / 2) * INCH_M) / FOOT_M).toBeCloseTo(2.5, 9);
    // 40 ft of wall, and round its corners as far as 3 ft and half the pipe reach
    const reach = 3 + OUTSIDE_IN / 24;
    const beyond = Math.sqrt(reach ** 2 - 2.5 ** 2);
    const length = found?.code === 'pipe-along-wall' ? found.values.to - found.values.from : 0;
    expect(length / FOOT_M).toBeCloseTo(40 + 2 * beyond, 6);
    expect(along([house(3.3)])).toEqual([]);
    const out = pipe('drain', [spot(40, 10), spot(40, -30)], { state: 'proposed', stretches: fourInch });
    expect(along([house(2.5)], out)).toEqual([]);
  });

  it('a building that crosses itself is said to be doubtful', () => {
    const bow = thing('house', 'building', [spot(40, 1), spot(60, 21), spot(60, 1), spot(40, 21)]);
    expect(said([bow])).toContainEqual(
      expect.objectContaining({ code: 'outline-doubtful', at: { kind: 'feature', id: 'house' } }),
    );
  });
});
