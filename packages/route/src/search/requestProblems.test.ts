import { type Point, radians } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Bend, Obstacle, RouteEnd, RouteRequest } from '../request';
import { findRoutes } from './findRoutes';
import { soundRequest } from './requestProblems';

// An invented yard: north out of a house wall to a tap, past a tree. The tangent of a 45° arc of 0.2286 m (9 in) radius is
// R tan(22.5°) = 0.2286 × 0.41421 = 0.09469 m (any handbook of curves).

const at = (x: number, y: number): Point => ({ x, y });
const elbow: Bend = { id: '45', turn: radians(45), radius: 0.2286, laying: 0.14, cost: 0.4 };
const tap: RouteEnd = { id: 'tap', at: at(0, 10), headings: null, invert: -1 };
const house: Obstacle = {
  id: 'house',
  shape: { is: 'ring', points: [at(-5, -6), at(5, -6), at(5, 0), at(-5, 0)] },
  clearance: 0.5,
};
const tree: Obstacle = {
  id: 'tree',
  shape: { is: 'circle', centre: at(1, 5), radius: 0.4 },
  clearance: 0.5,
};
const yard: RouteRequest = {
  start: { at: at(0, 0), heading: 0, invert: 0 },
  ends: [tap],
  diameter: 0.1,
  bends: [elbow],
  leastStraight: 0.1,
  mostBends: 4,
  obstacles: [house, tree],
  areas: [],
  freeEnds: 1,
  grade: { least: 1 / 48, kept: true },
};

const problemsOf = (request: RouteRequest) => {
  const sound = soundRequest(request);
  return sound.is === 'wrong' ? sound.problems : [];
};
const startAt = (x: number, y: number) => ({ ...yard, start: { ...yard.start, at: at(x, y) } });
const endAt = (place: RouteEnd['at']) => ({ ...yard, ends: [{ ...tap, at: place }] });

describe('a request that makes sense', () => {
  it('has no problem, with its start on the wall itself', () => {
    expect(soundRequest(yard)).toEqual({ is: 'sound', request: yard });
  });

  it('may start up to 1 cm within an outline', () => {
    expect(problemsOf(startAt(0, -0.009))).toEqual([]);
    expect(problemsOf(startAt(0, -0.011))).toEqual([
      { code: 'start-inside', values: { obstacle: 'house', depth: expect.closeTo(0.011, 9) } },
    ]);
  });

  it('loses the ends that do not, while another is left', () => {
    const buried = { ...tap, id: 'buried', at: at(1, 5) };
    expect(soundRequest({ ...yard, ends: [buried, tap] })).toEqual({ is: 'sound', request: yard });
  });
});

describe('a start or an end within an obstacle', () => {
  it('is told by how deep it lies', () => {
    expect(problemsOf(endAt(at(1, 5.1)))).toEqual([
      { code: 'end-inside', values: { end: 'tap', obstacle: 'tree', depth: expect.closeTo(0.3, 9) } },
    ]);
  });

  it('is no problem of a piece that comes out of it', () => {
    expect(problemsOf(endAt({ from: at(0.9, 5), to: at(1.1, 5) }))).toMatchObject([{ code: 'end-inside' }]);
    expect(problemsOf(endAt({ from: at(0.9, 5), to: at(3, 5) }))).toEqual([]);
    expect(problemsOf(endAt({ from: at(-1, 5), to: at(3, 5) }))).toEqual([]);
  });
});

describe('a start that is an end', () => {
  it('is told for a point and for a piece that comes by', () => {
    const expected = [{ code: 'start-is-end', values: { end: 'tap' } }];
    expect(problemsOf(endAt(at(0, 0)))).toEqual(expected);
    expect(problemsOf(endAt({ from: at(-1, -1e-4), to: at(1, -1e-4) }))).toEqual(expected);
  });
});

describe('bends', () => {
  it('must turn, and be as long as their arcs', () => {
    const bends = [
      { ...elbow, id: 'straight', turn: 0 },
      { ...elbow, id: 'short', laying: 0.0946 },
      { ...elbow, id: 'just', laying: 0.0947 },
    ];
    expect(problemsOf({ ...yard, bends })).toEqual([
      { code: 'bend-turn', values: { bend: 'straight', turn: 0 } },
      { code: 'bend-laying', values: { bend: 'short', laying: 0.0946, tangent: expect.closeTo(0.09469, 5) } },
    ]);
  });

  it('are needed unless an end lies straight ahead', () => {
    expect(problemsOf({ ...yard, bends: [] })).toEqual([]);
    expect(problemsOf({ ...endAt(at(1, 10)), bends: [] })).toEqual([{ code: 'no-bends', values: {} }]);
  });
});

describe('the fall', () => {
  const withInvert = (invert: number, kept = true) => ({
    ...yard,
    ends: [{ ...tap, invert }],
    grade: { least: 1 / 48, kept },
  });

  it('must be one, whether it is kept or only marked', () => {
    for (const kept of [true, false]) {
      expect(problemsOf(withInvert(0, kept))).toEqual([
        { code: 'end-not-lower', values: { end: 'tap', rise: 0 } },
      ]);
      expect(problemsOf(withInvert(0.3, kept))).toEqual([
        { code: 'end-not-lower', values: { end: 'tap', rise: 0.3 } },
      ]);
    }
  });

  it('must do for the straight way when it is kept: 10 m at 1 in 48 take 0.2083 m', () => {
    expect(problemsOf(withInvert(-0.2))).toEqual([
      {
        code: 'too-little-fall',
        values: { end: 'tap', needed: expect.closeTo(0.2083, 4), available: 0.2 },
      },
    ]);
    expect(problemsOf(withInvert(-0.2, false))).toEqual([]);
    expect(problemsOf(withInvert(-0.21))).toEqual([]);
  });
});

describe('a clearance larger than the yard', () => {
  it('is told with the most that would leave ground at both ends', () => {
    const wide = { ...tree, clearance: 30 };
    expect(problemsOf({ ...yard, obstacles: [house, wide] })).toEqual([
      {
        code: 'no-ground',
        // start and tap lie √26 m from the middle of the tree, 0.4 m of which is tree; 1 m more is free, 0.05 m is half the pipe
        values: { obstacle: 'tree', clearance: 30, most: expect.closeTo(Math.sqrt(26) - 0.4 + 1 - 0.05, 9) },
      },
    ]);
  });
});

describe('numbers that are none', () => {
  it.each([
    ['start', null, { start: { ...yard.start, heading: Number.NaN } }],
    ['end', 'tap', { ends: [{ ...tap, at: at(0, Number.POSITIVE_INFINITY) }] }],
    ['pipe', null, { diameter: -0.1 }],
    ['bend', '45', { bends: [{ ...elbow, radius: Number.NaN }] }],
    ['grade', null, { grade: { least: -1, kept: true } }],
    ['obstacle', 'tree', { obstacles: [{ ...tree, clearance: -1 }] }],
    ['area', 'lawn', { areas: [{ id: 'lawn', shape: tree.shape, perMetre: Number.NaN }] }],
  ] as const)('are told by the part that has them: %s', (part, id, change) => {
    expect(problemsOf({ ...yard, ...change })).toEqual([{ code: 'bad-number', values: { part, id } }]);
  });

  it('are missing points too', () => {
    const ring = { ...tree, shape: { is: 'ring', points: [at(3, 3), at(4, 4)] } as const };
    const line = {
      id: 'fence',
      shape: { is: 'line', points: [at(3, 3)], halfWidth: 0 },
      clearance: 0,
    } as const;
    expect(problemsOf({ ...yard, obstacles: [ring, line] })).toEqual([
      { code: 'too-few-points', values: { part: 'obstacle', id: 'tree' } },
      { code: 'too-few-points', values: { part: 'obstacle', id: 'fence' } },
    ]);
  });
});

describe('findRoutes', () => {
  it('does not look for routes of a request with a problem', () => {
    expect(findRoutes({ ...yard, ends: [] })).toEqual({
      is: 'wrong',
      problems: [{ code: 'no-end', values: {} }],
    });
  });
});
