import { type Point, radians } from '@footmark/geometry';
import {
  type Bend,
  checkRoute,
  findRoutes,
  type Obstacle,
  type RatedRoute,
  type RouteEnd,
  type RouteRequest,
} from '@footmark/route';
import { describe, expect, it } from 'vitest';
import { measuredCost } from './measuredCost';
import { type Motion, moved, movedPoint, randomRequest } from './randomRequest';

// Every route found is held against its request by the checker, which shares nothing with the search. Sites whose best route is known: equal
// pairs of 45° bends by the trade's multipliers (travel = 1.41421 x offset, run = offset), arcs of 9 in radius by the handbook (45°: T 3.7279 in,
// L 7.0686 in; 90°: T 9 in, L 14.1372 in).

const SITES = 1000;
/** Things on a site, one after another: few on most, for a run of the tests is no benchmark. */
const THINGS = [2, 3, 4, 3, 4, 2, 3, 4, 3, 5];
const PER_TEST = 100;
const MINUTE = 60_000;

/** Metres of pipe that ground costs more or less along a bend's legs than along its arc, at the most. */
const AT_A_BEND = 0.1;

const INCH = 0.0254;
const at = (x: number, y: number): Point => ({ x, y });

function routesOf(request: RouteRequest): readonly RatedRoute[] {
  const answer = findRoutes(request);
  return answer.is === 'found' ? answer.routes : [];
}

function siteOf(seed: number): RouteRequest {
  return randomRequest(seed, { obstacles: THINGS[seed % THINGS.length] ?? 2 });
}

describe(`${SITES} random sites`, () => {
  it.each(Array.from({ length: SITES / PER_TEST }, (_, i) => i * PER_TEST))(
    'have no broken route, from seed %i on',
    (first) => {
      let withRoutes = 0;
      for (let seed = first; seed < first + PER_TEST; seed++) {
        const request = siteOf(seed);
        const routes = routesOf(request);
        if (routes.length > 0) withRoutes += 1;
        for (const route of routes) {
          expect(checkRoute(request, route), `seed ${seed}`).toEqual([]);
          const { cost, developed } = measuredCost(request, route);
          expect(route.cost.length, `seed ${seed}`).toBeCloseTo(developed, 6);
          // ground that costs counts along the legs, and here along the arcs
          const apart = Math.abs(route.cost.total - cost);
          expect(apart, `seed ${seed}`).toBeLessThan(1e-6 + AT_A_BEND * route.bends.length);
        }
        const costs = routes.map((r) => r.cost.total);
        expect(costs, `seed ${seed}`).toEqual([...costs].sort((a, b) => a - b));
      }
      expect(withRoutes).toBeGreaterThan(0.8 * PER_TEST);
    },
    2 * MINUTE,
  );
});

describe('the same site', () => {
  // with one cheapest route: where a pair may slide along at the same cost, one of its places is as right as another
  const seeds = [12, 13, 14, 15, 16, 17, 18, 20, 22, 24];

  it(
    'has the same routes each time it is asked',
    () => {
      for (const seed of seeds) {
        const request = siteOf(seed);
        expect(findRoutes(structuredClone(request)), `seed ${seed}`).toEqual(findRoutes(request));
      }
    },
    MINUTE,
  );

  it.each<[string, Motion]>([
    ['mirrored', { mirror: true, turn: 0, by: at(0, 0) }],
    ['turned', { mirror: false, turn: radians(73), by: at(0, 0) }],
    ['shifted', { mirror: false, turn: 0, by: at(640, -1280) }],
  ])(
    'has its routes %s',
    (_, motion) => {
      for (const seed of seeds) {
        const request = siteOf(seed);
        const before = routesOf(request);
        const after = routesOf(moved(request, motion));
        expect(before.length, `seed ${seed}`).toBeGreaterThan(0);
        expect(after.length, `seed ${seed}`).toBe(before.length);
        for (const [i, route] of before.entries()) {
          expect(after[i]?.cost.total, `seed ${seed}`).toBeCloseTo(route.cost.total, 6);
          expect(after[i]?.bends.map((b) => b.bend)).toEqual(route.bends.map((b) => b.bend));
          expect(after[i]?.bends.map((b) => b.to)).toEqual(
            route.bends.map(({ to }) => (motion.mirror ? (to === 'left' ? 'right' : 'left') : to)),
          );
          for (const [k, p] of route.points.entries()) {
            const expected = movedPoint(p, motion);
            const got = after[i]?.points[k];
            expect(Math.hypot((got?.x ?? 0) - expected.x, (got?.y ?? 0) - expected.y)).toBeLessThan(1e-5);
          }
        }
      }
    },
    MINUTE,
  );
});

describe('a site whose best route is known', () => {
  const [BEND_45, BEND_90] = ['45', '90'].map((id) =>
    randomRequest(1, { obstacles: 2 }).bends.find((b) => b.id === id),
  );
  const request = (end: Pick<RouteEnd, 'at' | 'headings'>, over: Partial<RouteRequest>): RouteRequest => ({
    start: { at: at(0, 0), heading: 0, invert: null },
    ends: [{ id: 'end', ...end, invert: null }],
    diameter: 0.1143,
    bends: [BEND_45, BEND_90].filter((b) => b !== undefined),
    leastStraight: 0.1,
    mostBends: 4,
    obstacles: [],
    areas: [],
    freeEnds: 1,
    grade: { least: 1 / 96, kept: false },
    ...over,
  });
  const only = (bend: Bend | undefined) => ({ bends: bend === undefined ? [] : [bend] });
  const sound = (asked: RouteRequest) => {
    const [best] = routesOf(asked);
    if (best === undefined) throw new Error('no route');
    expect(checkRoute(asked, best)).toEqual([]);
    return best;
  };
  const north = [{ from: 0, to: 0 }];
  const tree = (x: number, y: number, radius: number): Obstacle => ({
    id: 'tree',
    shape: { is: 'circle', centre: at(x, y), radius },
    clearance: 0.5,
  });

  it('is straight where nothing stands in the way', () => {
    const best = sound(request({ at: at(0, 9), headings: null }, { obstacles: [tree(2, 5, 1)] }));
    expect(best.bends).toEqual([]);
    expect(best.points).toEqual([at(0, 0), at(0, 9)]);
    expect(best.cost.total).toBeCloseTo(9, 9);
  });

  it('is one pair of 45° bends past a circle, as long as the published travel says', () => {
    // the same length wherever the pair is; the tree leaves it no place but before
    for (const y of [5.5, 2.2]) {
      const offset = 2;
      const obstacles = [y > 4 ? tree(0, y, 0.6) : tree(offset, y, 0.6)];
      const best = sound(request({ at: at(offset, 9), headings: north }, { ...only(BEND_45), obstacles }));
      expect(best.bends).toEqual([
        { bend: '45', to: 'right' },
        { bend: '45', to: 'left' },
      ]);
      const [, from, to] = best.points;
      // biome-ignore lint/suspicious/noApproximativeNumericConstant: the handbook's figure
      const travel = 1.41421 * offset;
      expect(Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0))).toBeCloseTo(travel, 4);
      expect(best.cost.length).toBeCloseTo(9 - offset + travel - (4 * 3.7279 - 2 * 7.0686) * INCH, 4);
      // past the tree: its outside 0.5 m away
      expect(y > 4 ? (from?.y ?? 9) < y - 1 : (from?.y ?? 0) > 0).toBe(true);
    }
  });

  it('turns about with two 90° bends, as near as the fittings let it', () => {
    const south = [{ from: Math.PI, to: Math.PI }];
    const best = sound(request({ at: at(3, 0), headings: south }, only(BEND_90)));
    expect(best.bends.map((b) => b.to)).toEqual(['right', 'right']);
    // up the laying length, over, and down
    expect(best.cost.length).toBeCloseTo(0.28 + 3 + 0.28 - (4 * 9 - 2 * 14.1372) * INCH, 5);
  });

  it('turns about wider where the two bends do not fit beside each other', () => {
    // 0.5 m over is less than two laying lengths and the straight between: out and back with more bends, or none
    const south = [{ from: Math.PI, to: Math.PI }];
    const asked = request({ at: at(0.5, 0), headings: south }, only(BEND_90));
    for (const route of routesOf(asked)) {
      expect(checkRoute(asked, route)).toEqual([]);
      expect(route.bends.length).toBeGreaterThan(2);
    }
    expect(routesOf({ ...asked, mostBends: 2 })).toEqual([]);
  });

  it('is straight on to the nearest of two ends that both lie ahead', () => {
    const asked = request({ at: at(0, 9), headings: null }, {});
    const near: RouteEnd = {
      id: 'near',
      at: { from: at(-2, 6), to: at(2, 6) },
      headings: null,
      invert: null,
    };
    expect(sound({ ...asked, ends: [...asked.ends, near] })).toMatchObject({ end: 'near', bends: [] });
  });

  it('has none through a closed fence', () => {
    const fence: Obstacle = {
      id: 'fence',
      shape: {
        is: 'line',
        points: [at(-3, -3), at(3, -3), at(3, 3), at(-3, 3), at(-3, -3)],
        halfWidth: 0.05,
      },
      clearance: 0,
    };
    expect(findRoutes(request({ at: at(0, 9), headings: null }, { obstacles: [fence] })).is).toBe('none');
  });
});
