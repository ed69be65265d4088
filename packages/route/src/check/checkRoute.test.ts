import { type Point, pointAtAzimuth, radians, rotate } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Route } from '../foundRoute';
import type { RouteRequest } from '../request';
import { at, codes, INCH, onlyFault, request, sound, withEnd, withPoint } from '../testing/soundRoute';
import { checkRoute } from './checkRoute';

// One sound route, and for every fault that route (or its request) with just this one. Invented site; the offsets are the trade's published
// multipliers: travel = 1.41421 x offset and run = offset for an equal pair of 45° bends, 2.61313 and 2.41421 for 22.5°, 1.15470 and
// 0.57735 for 60° (any pipefitter's handbook). Arcs of 9 in radius: L = R d, T = R tan(d/2): for 45° 7.0686 in and 3.7279 in.

// biome-ignore lint/suspicious/noApproximativeNumericConstant: the handbook's figure, to its five decimals
const TRAVEL_45 = 1.41421;

/** An equal pair right and left with its middle leg as long as the handbook says for a travel. */
const pair = (id: string, { offset, travel, run }: { offset: number; travel: number; run: number }) => {
  const points = [at(0, 0), at(0, 1.5), at(offset, 1.5 + run), at(offset, 8)];
  const [, from, to] = points;
  expect(from && to ? Math.hypot(to.x - from.x, to.y - from.y) : 0).toBeCloseTo(travel, 4);
  const route: Route = {
    points,
    bends: [
      { bend: id, to: 'right' },
      { bend: id, to: 'left' },
    ],
    end: 'main',
  };
  return checkRoute({ ...request, obstacles: [] }, route);
};

describe('a sound route', () => {
  it('has no fault', () => {
    expect(checkRoute(request, sound)).toEqual([]);
  });

  it('has none wherever the yard lies and however it is turned', () => {
    const turned = radians(37);
    const move = (p: Point) => {
      const { x, y } = rotate(p, -turned);
      return at(x + 500, y - 900);
    };
    const moved: RouteRequest = {
      ...request,
      start: { ...request.start, at: move(request.start.at), heading: turned },
      ends: [{ id: 'tap', at: move(at(2, 8)), headings: [{ from: turned, to: turned }], invert: null }],
      obstacles: request.obstacles.map((o) => ({
        ...o,
        shape:
          o.shape.is === 'circle'
            ? { ...o.shape, centre: move(o.shape.centre) }
            : { ...o.shape, points: o.shape.points.map(move) },
      })),
    };
    expect(checkRoute(moved, { ...sound, points: sound.points.map(move) })).toEqual([]);
  });
});

describe('published offsets', () => {
  it('are turns of equal pairs', () => {
    expect(pair('45', { offset: 2, travel: 2 * TRAVEL_45, run: 2 })).toEqual([]);
  });

  it('hold to their five decimals for 22.5° and 60°', () => {
    // the run's fifth decimal turns the leg by up to 2e-6 rad: legs are made from the angle, multipliers checked against them
    for (const [id, degrees, travel, run] of [
      ['22', 22.5, 2.61313, 2.41421],
      ['60', 60, 1.1547, 0.57735],
    ] as const) {
      const offset = 1.2;
      const exact = pointAtAzimuth(at(0, 1.5), radians(degrees), offset / Math.sin(radians(degrees)));
      expect(exact.y - 1.5).toBeCloseTo(offset * run, 4);
      expect(pair(id, { offset, travel: offset * travel, run: exact.y - 1.5 })).toEqual([]);
    }
  });

  it('of one bend are not those of another', () => {
    const faults = pair('22', { offset: 2, travel: 2 * TRAVEL_45, run: 2 });
    expect(faults.map((f) => f.code)).toEqual(['wrong-turn', 'wrong-turn']);
  });
});

describe('a route with just one fault', () => {
  it('is no line', () => {
    expect(onlyFault(request, { ...sound, points: [at(0, 0)] })?.code).toBe('no-line');
    expect(onlyFault(request, withPoint(2, at(Number.NaN, 4)))?.code).toBe('no-line');
  });

  it('takes a bend that is not in the request', () => {
    const route: Route = { ...sound, bends: [{ bend: 'elbow', to: 'right' }, ...sound.bends.slice(1)] };
    expect(onlyFault(request, route)).toEqual({
      code: 'unknown-bend',
      at: at(0, 2),
      values: { vertex: 1, bend: 'elbow' },
    });
  });

  it('has a bend too few or too many', () => {
    const few = onlyFault(request, { ...sound, bends: sound.bends.slice(0, 1) });
    expect(few).toMatchObject({ code: 'bend-count', values: { bends: 1, vertices: 2 } });
    const many = onlyFault(request, { ...sound, bends: [...sound.bends, { bend: '45', to: 'left' }] });
    expect(many).toMatchObject({ code: 'bend-count', values: { bends: 3, vertices: 2 } });
  });

  it('starts elsewhere', () => {
    expect(onlyFault(request, withPoint(0, at(0, 0.002)))).toMatchObject({
      code: 'start-elsewhere',
      values: { away: expect.closeTo(0.002, 9) },
    });
    expect(codes(request, withPoint(0, at(0, 0.0009)))).toEqual([]);
  });

  it('leaves in another heading', () => {
    const asked = { ...request, start: { ...request.start, heading: 2e-6 } };
    expect(onlyFault(asked, sound)).toMatchObject({
      code: 'start-heading',
      values: { heading: 0, asked: 2e-6 },
    });
    expect(codes({ ...request, start: { ...request.start, heading: 2 * Math.PI - 5e-7 } }, sound)).toEqual(
      [],
    );
  });

  it('ends short of the point', () => {
    expect(onlyFault(request, withPoint(3, at(2, 7.998)))).toMatchObject({
      code: 'end-elsewhere',
      values: { end: 'tap', away: expect.closeTo(0.002, 9) },
    });
  });

  it('ends beside the straight piece', () => {
    const main: Route = { ...sound, end: 'main' };
    expect(codes(request, main)).toEqual([]);
    const short = { ...main, points: [...sound.points.slice(0, 3), at(2, 7.9)] };
    expect(onlyFault(request, short)).toMatchObject({ code: 'end-elsewhere', values: { end: 'main' } });
    const piece = { id: 'main', at: { from: at(-4, 8), to: at(1.99, 8) }, headings: null, invert: null };
    expect(onlyFault({ ...request, ends: [piece] }, main)).toMatchObject({
      code: 'end-elsewhere',
      values: { away: expect.closeTo(0.01, 9) },
    });
  });

  it('goes to an end that nobody named', () => {
    expect(onlyFault(request, { ...sound, end: 'pond' })?.code).toBe('unknown-end');
  });

  it('arrives in a heading that is not allowed', () => {
    const east = radians(90);
    expect(onlyFault(withEnd({ headings: [{ from: 2e-6, to: east }] }), sound)).toMatchObject({
      code: 'end-heading',
      values: { end: 'tap', heading: 0 },
    });
    expect(codes(withEnd({ headings: [] }), sound)).toEqual(['end-heading']);
    // an interval over north, one that ends there, the whole round, and none asked
    for (const headings of [
      [{ from: radians(350), to: radians(10) }],
      [{ from: radians(300), to: 0 }],
      [{ from: -Math.PI, to: Math.PI }],
      [
        { from: 1, to: 2 },
        { from: 0, to: 0 },
      ],
      null,
    ]) {
      expect(codes(withEnd({ headings }), sound)).toEqual([]);
    }
    expect(codes(withEnd({ headings: [{ from: radians(10), to: radians(350) }] }), sound)).toEqual([
      'end-heading',
    ]);
  });

  it('turns by something else than its bend, or to the other side', () => {
    const other: Route = {
      ...sound,
      bends: [
        { bend: '45', to: 'right' },
        { bend: '60', to: 'left' },
      ],
    };
    expect(onlyFault(request, other)).toMatchObject({
      code: 'wrong-turn',
      at: at(2, 4),
      values: { vertex: 2, bend: '60', asked: radians(-60), turn: expect.closeTo(radians(-45), 9) },
    });
    const side: Route = {
      ...sound,
      bends: [
        { bend: '45', to: 'left' },
        { bend: '45', to: 'left' },
      ],
    };
    expect(onlyFault(request, side)).toMatchObject({ code: 'wrong-turn', values: { vertex: 1 } });
  });

  it('has a middle leg without room for both fittings and the straight between them', () => {
    // the run of a 45° pair is its offset: the leg of 0.38 m is a travel, the offset it over 1.41421
    const travel = 0.14 + 0.14 + 0.1;
    const offset = (length: number) => length * Math.SQRT1_2;
    const small = (length: number): Route => ({
      ...sound,
      points: [at(0, 0), at(0, 1), at(offset(length), 1 + offset(length)), at(offset(length), 8)],
      end: 'main',
    });
    const clear = { ...request, obstacles: [] };
    expect(codes(clear, small(travel))).toEqual([]);
    expect(onlyFault(clear, small(travel - 1e-5))).toMatchObject({
      code: 'short-leg',
      values: { leg: 1, least: expect.closeTo(travel, 12), length: expect.closeTo(travel - 1e-5, 12) },
    });
  });

  it('has a first or a last leg shorter than the fitting on it, which need no straight', () => {
    const clear = { ...request, obstacles: [] };
    const first = (length: number): Route => ({
      ...sound,
      points: [at(0, 0), at(0, length), at(2, 2 + length), at(2, 8)],
    });
    expect(codes(clear, first(0.14))).toEqual([]);
    expect(onlyFault(clear, first(0.1399))).toMatchObject({
      code: 'short-leg',
      values: { leg: 0, least: 0.14 },
    });
    const last = (length: number): Route => ({
      ...sound,
      points: [at(0, 0), at(0, 6 - length), at(2, 8 - length), at(2, 8)],
    });
    expect(codes(clear, last(0.14))).toEqual([]);
    expect(onlyFault(clear, last(0.1399))).toMatchObject({
      code: 'short-leg',
      values: { leg: 2, least: 0.14 },
    });
  });

  it('has no room for the tangent of an arc whose laying length was given too small', () => {
    // T of a 45° bend of 9 in radius: 3.7279 in
    const bends = request.bends.map((b) => ({ ...b, laying: 0 }));
    const route: Route = { ...sound, points: [at(0, 0), at(0, 0.09), at(2, 2.09), at(2, 8)] };
    expect(onlyFault({ ...request, bends, obstacles: [] }, route)).toMatchObject({
      code: 'short-leg',
      values: { leg: 0, least: expect.closeTo(3.7279 * INCH, 5) },
    });
  });

  it('doubles a point', () => {
    const clear = { ...request, leastStraight: 0, obstacles: [] };
    const route: Route = {
      ...sound,
      points: [at(0, 0), at(0, 2), at(0, 2), at(2, 4), at(2, 8)],
      bends: [...sound.bends.slice(0, 1), ...sound.bends],
    };
    expect(onlyFault(clear, route)).toMatchObject({ code: 'short-leg', values: { leg: 1, length: 0 } });
  });

  it('has more bends than asked', () => {
    expect(onlyFault({ ...request, mostBends: 1 }, sound)).toMatchObject({
      code: 'too-many-bends',
      values: { bends: 2, most: 1 },
    });
  });

  it('needs more fall than there is', () => {
    // straights 2 + 2.8284 + 4 less four tangents of 3.7279 in, and two arcs of 7.0686 in
    const developed = 6 + 2 * Math.SQRT2 - (4 * 3.7279 - 2 * 7.0686) * INCH;
    const needed = developed / 48;
    expect(codes(withEnd({ invert: 10 - needed - 1e-5 }), sound)).toEqual([]);
    expect(onlyFault(withEnd({ invert: 10 - needed + 1e-5 }), sound)).toMatchObject({
      code: 'too-little-fall',
      values: { needed: expect.closeTo(needed, 5), available: expect.closeTo(needed - 1e-5, 9) },
    });
    const tooHigh = withEnd({ invert: 11 });
    expect(codes(tooHigh, sound)).toEqual(['too-little-fall']);
    expect(codes({ ...tooHigh, grade: { ...request.grade, kept: false } }, sound)).toEqual([]);
    expect(codes(withEnd({ invert: null }), sound)).toEqual([]);
    expect(codes({ ...tooHigh, start: { ...request.start, invert: null } }, sound)).toEqual([]);
  });
});
