import type { Point } from '@footmark/geometry';
import { checkRoute, type Obstacle, type RouteEnd, type RouteRequest } from '@footmark/route';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../random/seeded';
import { measuredCost } from './measuredCost';
import { randomRequest } from './randomRequest';
import { awayFrom, firstWithin, inside } from './rays';
import { shortestWay } from './shortestWay';
import { slowSearch } from './slowSearch';

// The means that the search is judged by, against closed forms. Equal offsets are published multipliers: travel = 1.41421 x offset, run =
// offset for a pair of 45° bends. Arcs of 9 in radius: T 3.7279 in and L 7.0686 in for 45°, T 9 in and L 14.1372 in for 90°.

const INCH = 0.0254;
const OPTIONS = { mostBends: 3, step: 0.2 };
const at = (x: number, y: number): Point => ({ x, y });
const [BEND_22, BEND_45, BEND_60, BEND_90] = randomRequest(1, { obstacles: 2 }).bends;

function request(end: Pick<RouteEnd, 'at' | 'headings'>, over: Partial<RouteRequest> = {}): RouteRequest {
  return {
    start: { at: at(0, 0), heading: 0, invert: null },
    ends: [{ id: 'end', ...end, invert: null }],
    diameter: 0.1143,
    bends: [BEND_22, BEND_45, BEND_60, BEND_90].filter((b) => b !== undefined),
    leastStraight: 0.1,
    mostBends: 4,
    obstacles: [],
    areas: [],
    freeEnds: 1,
    grade: { least: 1 / 96, kept: false },
    ...over,
  };
}
const north = [{ from: 0, to: 0 }];
const post = (x: number, y: number, radius: number, clearance: number): Obstacle => ({
  id: 'post',
  shape: { is: 'circle', centre: at(x, y), radius },
  clearance,
});

describe('the slow search', () => {
  it('goes straight where it may', () => {
    const best = slowSearch(request({ at: at(0, 7), headings: null }), OPTIONS);
    expect(best?.cost).toBeCloseTo(7, 9);
    const piece = slowSearch(request({ at: { from: at(-2, 6), to: at(2, 6) }, headings: north }), OPTIONS);
    expect(piece?.cost).toBeCloseTo(6, 9);
  });

  it('takes an equal pair of 45° bends for an offset that bars the others', () => {
    const asked = request(
      { at: at(2, 8), headings: north },
      { bends: [BEND_45].filter((b) => b !== undefined) },
    );
    const best = slowSearch(asked, OPTIONS);
    // straights before and after 8 - run, less four tangents, and two arcs
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the handbook's figure
    const developed = 8 - 2 + 2 * 1.41421 - (4 * 3.7279 - 2 * 7.0686) * INCH;
    expect(best?.developed).toBeCloseTo(developed, 4);
    expect(best?.cost).toBeCloseTo(developed + 2 * 0.4, 4);
    expect(best?.route.bends.map((b) => b.to)).toEqual(['right', 'left']);
  });

  it('turns about as a car that only goes ahead would', () => {
    const south = [{ from: Math.PI, to: Math.PI }];
    const bends = [BEND_90].filter((b) => b !== undefined);
    const best = slowSearch(request({ at: at(3, 0), headings: south }, { bends }), OPTIONS);
    // up by the least that the first fitting takes, over by 3 m, down again
    const developed = 0.28 + 3 + 0.28 - (4 * 9 - 2 * 14.1372) * INCH;
    expect(best?.developed).toBeCloseTo(developed, 5);
  });

  it('goes round a post as near as it may', () => {
    const bends = [BEND_22].filter((b) => b !== undefined);
    const asked = request({ at: at(0, 12), headings: null }, { obstacles: [post(0, 6, 0.3, 0.2)], bends });
    const best = slowSearch(asked, { mostBends: 3, step: 0.1 });
    expect(best && checkRoute(asked, best.route)).toEqual([]);
    // out by 22.5° and back by two: both slants touch the circle of 0.3 + 0.2 + half the pipe, or the pipe turns at it
    expect(best?.route.bends.map((b) => b.to)).toEqual(expect.arrayContaining(['left', 'right']));
    expect(best?.developed).toBeGreaterThan(shortestWay(asked) ?? Infinity);
  });

  it('pays for ground only as far as it goes through it', () => {
    const asked = request(
      { at: at(0, 7), headings: null },
      { areas: [{ id: 'lawn', shape: { is: 'circle', centre: at(0, 3), radius: 1 }, perMetre: 0.05 }] },
    );
    expect(slowSearch(asked, OPTIONS)?.cost).toBeCloseTo(7 + 2 * 0.05, 9);
    const dear = { ...asked, areas: asked.areas.map((a) => ({ ...a, perMetre: 3 })) };
    const round = slowSearch(dear, OPTIONS);
    expect(round?.cost).toBeLessThan(7 + 2 * 3);
    expect(round && measuredCost(dear, round.route).cost).toBeCloseTo(round?.cost ?? 0, 9);
  });

  it('finds none where a wall bars all', () => {
    const wall: Obstacle = {
      id: 'wall',
      shape: { is: 'line', points: [at(-30, 4), at(30, 4)], halfWidth: 0.1 },
      clearance: 0,
    };
    expect(slowSearch(request({ at: at(0, 7), headings: null }, { obstacles: [wall] }), OPTIONS)).toBeNull();
    expect(
      shortestWay(request({ at: at(0, 7), headings: null }, { obstacles: [{ ...wall, clearance: 0.5 }] })),
    ).toBeGreaterThan(60);
  });

  it('is sound and not shorter than the bound in random yards', () => {
    for (let seed = 0; seed < 12; seed++) {
      const asked = randomRequest(seed, { obstacles: 2 + (seed % 4), mostBends: 2 });
      const best = slowSearch(asked, { mostBends: 2, step: 0.2 });
      if (best === null) continue;
      expect(checkRoute(asked, best.route), `seed ${seed}`).toEqual([]);
      expect(best.developed, `seed ${seed}`).toBeGreaterThan(shortestWay(asked) ?? Infinity);
      expect(measuredCost(asked, best.route).cost).toBeCloseTo(best.cost, 6);
    }
  }, 60_000);
});

describe('the shortest way', () => {
  it('round a circle is two tangents and an arc', () => {
    // not on the axis, where the way would run through two of the polygon's corners
    const asked = request({ at: at(0, 12), headings: null }, { obstacles: [post(0.1, 6, 1, 0.5)] });
    const radius = 1.5 + 0.1143 / 2;
    const away = Math.hypot(0.1, 6);
    const tangent = Math.sqrt(away ** 2 - radius ** 2);
    const arc = radius * (2 * Math.atan2(6, 0.1) - 2 * Math.acos(radius / away));
    const way = shortestWay(asked) ?? 0;
    expect(way).toBeLessThan(2 * tangent + arc);
    expect(way).toBeGreaterThan((2 * tangent + arc) * 0.9985);
  });

  it('is as the crow flies where nothing stands, to a piece too', () => {
    expect(shortestWay(request({ at: at(3, 4), headings: null }))).toBeCloseTo(5 - 1e-3, 9);
    const piece = shortestWay(request({ at: { from: at(-3, 5), to: at(3, 5) }, headings: null })) ?? 0;
    expect(piece).toBeLessThan(5);
    expect(piece).toBeGreaterThan(4.97);
  });
});

describe('rays', () => {
  it('enter and leave where a walk along them does', () => {
    const random = seededRandom(7);
    for (let seed = 0; seed < 40; seed++) {
      const { obstacles } = randomRequest(seed, { obstacles: 5 });
      for (const { shape } of obstacles) {
        const from = shape.is === 'circle' ? shape.centre : (shape.points[0] ?? at(0, 0));
        const heading = 2 * Math.PI * random();
        const [ux, uy] = [Math.sin(heading), Math.cos(heading)];
        const ray = { x: from.x - 5 * ux + 2 * random() - 1, y: from.y - 5 * uy + 2 * random() - 1, ux, uy };
        const by = 0.1 + random();
        if (awayFrom(ray.x, ray.y, shape) <= by) continue;
        const first = firstWithin(ray, shape, by);
        const stretches = inside(ray, shape);
        for (let t = 0; t < 10; t += 0.05) {
          const away = awayFrom(ray.x + t * ux, ray.y + t * uy, shape);
          if (t < first) expect(away).toBeGreaterThanOrEqual(by - 1e-9);
          if (Math.abs(away) < 1e-9) continue;
          expect(stretches.some(([a, b]) => t >= a && t <= b)).toBe(away < 0);
        }
        if (first < 10) expect(awayFrom(ray.x + first * ux, ray.y + first * uy, shape)).toBeCloseTo(by, 9);
      }
    }
  });
});
