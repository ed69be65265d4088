import { type Point, radians } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { checkRoute } from '../check/checkRoute';
import type { RouteRequest } from '../request';
import { findRoutes } from './findRoutes';

// An invented yard. An offset of 2 m over 8 m with two 45° bends of 0.2286 m (9 in) radius is 6 + 1.41421 × 2 m long, less 0.00984 m for
// either arc: 8.80875 m (any pipefitter's handbook; 2 R tan(22.5°) − R π / 4). At 1 in 48 that takes 0.1835 m.

const at = (x: number, y: number): Point => ({ x, y });
const north = [{ from: 0, to: 0 }];
const yard: RouteRequest = {
  start: { at: at(0, 0), heading: 0, invert: 0 },
  ends: [
    { id: 'near', at: at(2, 8), headings: north, invert: -0.18 },
    { id: 'far', at: at(-2, 16), headings: north, invert: -2 },
  ],
  diameter: 0.1,
  bends: [{ id: '45', turn: radians(45), radius: 0.2286, laying: 0.14, cost: 0.4 }],
  leastStraight: 0.1,
  mostBends: 2,
  obstacles: [],
  areas: [],
  freeEnds: 1,
  grade: { least: 1 / 48, kept: true },
};

describe('the fall that is kept', () => {
  const endsOf = (request: RouteRequest) => {
    const found = findRoutes(request);
    const routes = found.is === 'found' ? found.routes : [];
    expect(routes.flatMap((route) => checkRoute(request, route))).toEqual([]);
    return routes.map((route) => route.end);
  };

  it('is that of the end at which a route arrives, not of another that lies lower', () => {
    expect(endsOf(yard)).toEqual(['far']);
  });

  it('lets a route arrive where there is enough', () => {
    const ends = yard.ends.map((end) => (end.id === 'near' ? { ...end, invert: -0.184 } : end));
    expect(endsOf({ ...yard, ends })[0]).toBe('near');
  });
});
