import { type Point, radians } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { checkRoute } from '../check/checkRoute';
import type { Bend, Obstacle, RouteRequest } from '../request';
import type { NoRoute } from './blocked';
import { findRoutes } from './findRoutes';
import { changed } from './relaxation';

// Invented yards of which one requirement is known to be too much, and by how much: from plane geometry, and for pairs of 45° bends from the
// published multiplier of an offset, travel = 1.41421 × offset (any pipefitter's handbook). Each way that is opened is held by the checker
// against the request that opens it.

const at = (x: number, y: number): Point => ({ x, y });
const elbow: Bend = { id: '45', turn: radians(45), radius: 0.2286, laying: 0.14, cost: 0.4 };
const yard: RouteRequest = {
  start: { at: at(0, 0), heading: 0, invert: 0 },
  ends: [{ id: 'tap', at: at(0, 12), headings: [{ from: 0, to: 0 }], invert: -2 }],
  diameter: 0.09,
  bends: [elbow],
  leastStraight: 0.1,
  mostBends: 4,
  obstacles: [],
  areas: [],
  freeEnds: 1,
  grade: { least: 1 / 48, kept: true },
};

/** A wall all around the start, 6 m to each side, with a gap in the north. */
function wallWithGap(gap: number, clearance: number): Obstacle {
  const corners = [at(6, 6), at(6, -6), at(-6, -6), at(-6, 6)];
  return {
    id: 'wall',
    shape: { is: 'line', points: [at(gap / 2, 6), ...corners, at(-gap / 2, 6)], halfWidth: 0 },
    clearance,
  };
}

function noneOf(request: RouteRequest): NoRoute {
  const found = findRoutes(request);
  if (found.is !== 'none') throw new Error(`a request with no route has ${found.is}`);
  for (const { change, route } of found.relaxations)
    expect(checkRoute(changed(request, change), route)).toEqual([]);
  return found;
}

const changesOf = (request: RouteRequest) => noneOf(request).relaxations.map((r) => r.change);

describe('a wall with a gap', () => {
  it('leaves a way to who comes as near to it as half the gap less half the pipe', () => {
    const request = { ...yard, obstacles: [wallWithGap(0.8, 0.5)] };
    expect(noneOf(request).because).toEqual([{ code: 'ground', obstacles: ['wall'] }]);
    // (0.8 − 0.09) / 2 = 0.355
    expect(changesOf(request)).toEqual([{ is: 'less-clearance', obstacle: 'wall', from: 0.5, to: 0.35 }]);
  });

  it('is gone through when it has none', () => {
    const request = { ...yard, obstacles: [wallWithGap(0, 0.5)] };
    expect(changesOf(request)).toEqual([{ is: 'through', obstacle: 'wall' }]);
  });

  it('gives way before a wider clearance does, the one that has to give less first', () => {
    const post = (id: string, x: number, clearance: number): Obstacle => ({
      id,
      shape: { is: 'circle', centre: at(x, 6), radius: 0.1 },
      clearance,
    });
    // between post and wall end 2 m apart the pipe runs with 0.5 to the wall; 2 − 0.1 − 0.5 − 0.09 = 1.31 is left for the post
    const request = { ...yard, obstacles: [wallWithGap(2, 0.5), post('post', 1, 1.4)] };
    const [first] = changesOf(request);
    expect(first).toEqual({ is: 'less-clearance', obstacle: 'post', from: 1.4, to: 1.31 });
  });
});

describe('an offset of 2 m with two bends', () => {
  const offset: RouteRequest = {
    ...yard,
    ends: [{ id: 'tap', at: at(2, 8), headings: [{ from: 0, to: 0 }], invert: -2 }],
    mostBends: 2,
  };

  it('needs as much fall as it is long', () => {
    const ends = offset.ends.map((end) => ({ ...end, invert: -0.18 }));
    // 6 + 1.41421 × 2, less what two arcs are shorter than their tangents: 2 R tan(22.5°) − R π / 4 = 0.00984 each
    const length = 6 + 2 * Math.SQRT2 - 2 * 0.00984;
    const none = noneOf({ ...offset, ends });
    expect(none.because).toEqual([{ code: 'fall' }]);
    expect(none.relaxations.map((r) => r.change)).toEqual([
      { is: 'less-fall', from: 1 / 48, to: expect.closeTo(0.18 / length, 5) },
    ]);
  });

  it('is not made with one, unless the pipe may arrive aslant', () => {
    const none = noneOf({ ...offset, mostBends: 1 });
    expect(none.because).toEqual([{ code: 'headings' }, { code: 'bends' }]);
    expect(none.relaxations.map((r) => r.change)).toEqual([
      { is: 'more-bends', from: 1, to: 2 },
      { is: 'any-heading', end: 'tap' },
    ]);
  });

  it('has no room for straight pipe between its bends when it is of 0.3 m', () => {
    // travel 1.41421 × 0.3 = 0.424; the two fittings take 0.28 of it, and 0.3 is asked between them
    const ends = offset.ends.map((end) => ({ ...end, at: at(0.3, 8) }));
    const changes = changesOf({ ...offset, ends, leastStraight: 0.3 });
    expect(changes).toContainEqual({ is: 'no-straight', from: 0.3 });
  });
});

describe('two requirements at once', () => {
  it('are told as such', () => {
    const wall = wallWithGap(0, 0.5);
    const house: Obstacle = {
      id: 'house',
      shape: { is: 'ring', points: [at(-9, 8), at(9, 8), at(9, 7), at(-9, 7)] },
      clearance: 0.3,
    };
    const none = noneOf({ ...yard, mostBends: 1, obstacles: [wall, house] });
    expect(none.relaxations).toEqual([]);
    expect(none.because).toEqual([{ code: 'ground', obstacles: ['wall'] }]);
    const open = noneOf({ ...yard, mostBends: 0, bends: [], obstacles: [house, { ...house, id: 'shed' }] });
    expect(open.because).toEqual([{ code: 'together', obstacles: ['house', 'shed'] }]);
  });
});

describe('a search that does not look everywhere', () => {
  it('says so', () => {
    const request = { ...yard, obstacles: [{ ...wallWithGap(3, 0.5), id: 'fence' }], mostBends: 0 };
    const aside = { ...request, ends: request.ends.map((end) => ({ ...end, at: at(1, 12) })) };
    expect(findRoutes(aside)).toMatchObject({ is: 'none', gaveUp: false });
    expect(findRoutes({ ...aside, mostBends: 4 }, { mostPlaces: 1 })).toMatchObject({
      is: 'none',
      gaveUp: true,
    });
  });

  it('stops when it is told to', () => {
    const request = { ...yard, obstacles: [wallWithGap(0.8, 0.5)] };
    expect(findRoutes(request, { shouldStop: () => true })).toEqual({ is: 'stopped' });
  });
});
