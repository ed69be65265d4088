import { distance, type Point, pointAtAzimuth } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Feature } from '../document/feature';
import type { LegSpot, Spot } from '../document/spot';
import { DEGREE, pipe, push, ref, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';

const course = (azimuth: number, length: number): LegSpot => ({
  by: 'course',
  azimuth: azimuth * DEGREE,
  distance: length,
});

const arc = (radius: number, sweep: number, chord: number | null = null): LegSpot => ({
  by: 'arc',
  radius,
  sweep: sweep * DEGREE,
  chord: chord === null ? null : chord * DEGREE,
});

/** An outline with its last side measured. */
function lot(spots: readonly Spot[], closing?: LegSpot, balance?: 'compass', id = 'lot'): Feature {
  return {
    ...thing(id, 'boundary', spots),
    ...(closing === undefined ? {} : { closing }),
    ...(balance === undefined ? {} : { balance }),
  } as Feature; // a boundary is an area
}

/** A square of 20 m whose east side was measured 0.4 m too long and whose last side 0.3 m too short. */
const skew = [typed(100, 50), course(90, 20), course(0, 20.4), course(270, 20)];
const back = course(180, 19.7);

function derived(...features: readonly Feature[]) {
  const all = derive(yard({ features: [...features] }));
  const first = all.features.get(features[0]?.id ?? '');
  if (first === undefined) throw new Error('no outline');
  return { ...all, first };
}

function expectAt(found: Point | undefined, x: number, y: number): void {
  expect(found?.x).toBeCloseTo(x, 9);
  expect(found?.y).toBeCloseTo(y, 9);
}

describe('an outline with a closing course', () => {
  it('tells how far it comes out from where it began, and leaves the corners as measured', () => {
    const { first, findings } = derived(lot(skew, back));
    expect(first.closure).toMatchObject({ balanced: false });
    expectAt(first.closure?.misclosure, 0, 0.7);
    expect(first.closure?.perimeter).toBeCloseTo(80.1, 9);
    expect(first.closure?.ratio).toBeCloseTo(80.1 / 0.7, 9);
    expect(first.closure?.area).toBeCloseTo(20 * 20.4, 9);
    expectAt(first.points[3], 100, 70.4);
    expect(findings).toMatchObject([{ code: 'boundary-misclosure', severity: 'warning' }]);
  });

  it('shares the misclosure out by length, its first corner held', () => {
    const { first, findings, points } = derived(lot(skew, back, 'compass'));
    const share = (sides: number) => (0.7 * sides) / 80.1;
    expectAt(first.points[0], 100, 50);
    expectAt(first.points[1], 120, 50 - share(20));
    expectAt(first.points[2], 120, 70.4 - share(40.4));
    expectAt(first.points[3], 100, 70.4 - share(60.4));
    expect(first.measured).toEqual([true, true, true, true]);
    expect(points.get('lot/c')?.at).toBe(first.points[2]);
    expect(first.closure).toMatchObject({ balanced: true });
    expect(first.closure?.length).toBeCloseTo(0.7, 9); // as it was measured
    expect(findings).toMatchObject([{ values: { balanced: true } }]);
  });

  it('is a note above the limit, and nothing when it closes', () => {
    const near = [typed(0, 0), course(90, 20), course(0, 20), course(270, 20)];
    const { findings } = derived(lot(near, course(180, 19.98)));
    expect(findings).toMatchObject([{ code: 'boundary-misclosure', severity: 'note' }]);
    const closed = derived(lot(near, { by: 'turn', turn: -90 * DEGREE, distance: 20 }));
    expect(closed.findings).toEqual([]);
    expect(closed.first.closure?.length).toBeLessThan(1e-9);
    expect(derived(lot(near)).first.closure).toBeNull();
  });

  it('moves what is measured from its corners along, whatever the order in the file', () => {
    const last = { by: 'bearing', from: ref('lot', 'c'), azimuth: 0, distance: 3 } as const;
    const from = { by: 'bearing', from: ref('base'), azimuth: 90 * DEGREE, distance: 100 } as const;
    const base = thing('base', 'benchmark', [typed(0, 50)]);
    const outline = lot([from, ...skew.slice(1)], back, 'compass');
    const pole = thing('pole', 'pole', [last]);
    const share = (0.7 * 40.4) / 80.1;
    for (const order of [
      [base, outline, pole],
      [pole, outline, base],
      [outline, pole, base],
    ]) {
      const { points } = derive(yard({ features: order }));
      expectAt(points.get('pole/a')?.at, 120, 73.4 - share);
    }
  });

  it('cannot be balanced when a corner has a place of its own, and says which', () => {
    const { first, findings } = derived(lot([...skew.slice(0, 3), typed(100, 70)], back, 'compass'));
    expect(findings).toMatchObject([
      { code: 'cannot-balance', at: { id: 'lot', vertex: 'd' }, values: { because: 'held' } },
      { code: 'boundary-misclosure', values: { balanced: false } },
    ]);
    expectAt(first.points[1], 120, 50);
    expect(derived(lot(skew, undefined, 'compass')).findings).toMatchObject([
      { code: 'cannot-balance', values: { because: 'no-closing' } },
    ]);
  });

  it('closes with arcs: a lot on a turning circle, by hand', () => {
    // 30 × 20 without the quarter disc of radius 8 about its north-east corner (30, 20)
    const spots = [typed(0, 0), course(90, 30), course(0, 12), arc(8, 90, 315), course(270, 22)];
    const { first, findings } = derived(lot(spots, course(180, 20)));
    // the chord of the quarter leads 8 west and 8 north
    expectAt(first.points[3], 22, 20);
    expectAt(first.points[4], 0, 20);
    expect(findings).toEqual([]);
    // the arc turns right, so it lies left of its chord, inside the lot: a quarter disc is taken off
    expect(first.closure?.area).toBeCloseTo(600 - 16 * Math.PI, 9);
    expect(first.closure?.perimeter).toBeCloseTo(84 + 4 * Math.PI, 9);
  });

  it('keeps an arc an arc when it is balanced', () => {
    const spots = [typed(0, 0), course(90, 30), course(0, 12.3), arc(8, 90, 315), course(270, 22)];
    const { first } = derived(lot(spots, course(180, 20), 'compass'));
    const [from, to] = [first.points[2], first.points[3]] as [Point, Point];
    const onArc = first.outline.slice(3, first.outline.length - 2);
    const radius = distance(from, to) / Math.SQRT2;
    const chord = Math.atan2(to.x - from.x, to.y - from.y);
    const centre = pointAtAzimuth(from, chord + 45 * DEGREE, radius);
    expect(onArc.length).toBeGreaterThan(10);
    for (const p of onArc) expect(distance(p, centre)).toBeCloseTo(radius, 6);
  });
});

describe('the outline of a feature with arcs', () => {
  it('is its points when it has none', () => {
    const { first } = derived(lot(skew));
    expect(first.outline).toBe(first.points);
    expect(first.outlineMeasured).toBe(first.measured);
    expect(first.sweeps).toEqual([0, 0, 0]);
  });

  it('follows them within 2 mm, keeps the corners and knows which leg is measured', () => {
    const spots: readonly Spot[] = [typed(0, 0), arc(10, 180, 90), { by: 'finger', x: 20, y: -9 }];
    const { first } = derived(lot(spots));
    for (const corner of first.points) expect(first.outline).toContain(corner);
    // a half circle over the chord to the east turns right: it lies to the north of it
    const onArc = first.outline.slice(1, -2);
    for (const p of onArc) {
      expect(distance(p, { x: 10, y: 0 })).toBeCloseTo(10, 9);
      expect(p.y).toBeGreaterThan(0);
    }
    expect(first.outlineMeasured).toEqual([...first.outline.slice(0, -1).map(() => true), false]);
    expect(first.bounds.maxY).toBeGreaterThan(9.99);
  });

  it('is what marks keep clear of and tapes do not go through', () => {
    // a round-fronted house: the arc bulges 10 m to the north of its corners
    const house = {
      ...thing('house', 'building', [typed(-10, -5), typed(-10, 0), arc(10, 180, 90), typed(10, -5)]),
    };
    const site = yard({
      features: [house, thing('head', 'cleanout', [typed(0, 30)]), thing('post', 'pole', [typed(0, -30)])],
      paths: [pipe('drain', [typed(0, 30), typed(0, 12), typed(0, 4)])],
      runs: [push({ entry: 'head', path: 'drain' }, [18, 24])],
    });
    const [outside, under] = derive(site).marks;
    const clear = outside?.place?.clearances.find((c) => c.feature === 'house');
    expect(clear?.distance).toBeCloseTo(2, 2);
    expect(under?.place?.ties).toBeNull();
    expect(derive(site).findings.map((f) => f.code)).toContain('mark-under-building');
  });

  it('is for outlines: a pipe takes the leg as straight, and says so', () => {
    const site = yard({ paths: [pipe('drain', [typed(0, 0), course(0, 10), arc(5, 90)])] });
    expect(derive(site).findings).toMatchObject([
      { code: 'path-arc-taken-straight', at: { kind: 'path', id: 'drain', vertex: 'c' } },
    ]);
    expect(derive(site).paths.get('drain')?.length).toBeCloseTo(10 + 5 * Math.SQRT2, 9);
  });

  it('leaves a tangent curve and a turn in the direction in which the curve arrived', () => {
    const spots: readonly Spot[] = [
      typed(0, 0),
      course(0, 10),
      arc(5, 90), // out of the course to the north, round to the east
      { by: 'turn', turn: 0, distance: 4 },
    ];
    const { first } = derived(lot(spots));
    expectAt(first.points[2], 5, 15);
    expectAt(first.points[3], 9, 15);
  });
});
