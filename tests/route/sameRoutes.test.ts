import { type Point, pointAtAzimuth, radians } from '@footmark/geometry';
import {
  type Bend,
  checkRoute,
  findRoutes,
  type Obstacle,
  type RouteRequest,
  type Shape,
} from '@footmark/route';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../random/seeded';

// The same request has the same answer, and what makes the search faster must not make its routes dearer than they were when this was written;
// that they are right is shown by the checker here and by the slow search beside.

const BENDS: readonly Bend[] = [bend(22.5, 0.1, 0.3), bend(45, 0.14, 0.4), bend(90, 0.28, 0.8)];

function bend(turn: number, laying: number, cost: number): Bend {
  return { id: String(turn), turn: radians(turn), radius: 0.2286, laying, cost };
}

/** An invented yard: a house, things scattered behind it, a main beyond them. */
function yard(seed: number, things: number): RouteRequest {
  const random = seededRandom(seed);
  const between = (a: number, b: number) => a + (b - a) * random();
  const side = 5 + 3 * Math.sqrt(things);
  const shape = (centre: Point, size: number): Shape => {
    const around = (angle: number) => pointAtAzimuth(centre, radians(angle), size);
    switch (Math.floor(between(0, 3))) {
      case 0:
        return { is: 'circle', centre, radius: size };
      case 1:
        return {
          is: 'ring',
          points: [0, 72, 144, 216, 288].map((angle) => around(angle + between(0, 40))),
        };
      default:
        return { is: 'line', points: [around(0), around(140), around(200)], halfWidth: 0.05 };
    }
  };
  const obstacles = Array.from({ length: things }, (_, i): Obstacle => {
    const centre = { x: between(-side / 2, side / 2), y: between(2.5, side - 2.5) };
    return { id: `thing ${i}`, shape: shape(centre, between(0.3, 1.2)), clearance: between(0, 0.6) };
  });
  const corners = [
    { x: -4, y: -5 },
    { x: 4, y: -5 },
    { x: 4, y: 0 },
    { x: -4, y: 0 },
  ];
  const drive = { x: between(-side / 3, side / 3), y: side / 2 };
  return {
    start: { at: { x: 0, y: 0 }, heading: 0, invert: 0 },
    ends: [
      {
        id: 'main',
        at: { from: { x: -3, y: side }, to: { x: 3, y: side + 1 } },
        headings: [{ from: radians(15), to: radians(75) }],
        invert: -1.5,
      },
    ],
    diameter: 0.1143,
    bends: BENDS,
    leastStraight: 0.1,
    mostBends: 6,
    obstacles: [{ id: 'house', shape: { is: 'ring', points: corners }, clearance: 0.6 }, ...obstacles],
    areas: [{ id: 'drive', shape: { is: 'circle', centre: drive, radius: side / 6 }, perMetre: 0.5 }],
    freeEnds: 1,
    grade: { least: 1 / 96, kept: true },
  };
}

/** The cost of the best route, as it was found when this was written. */
const known = [
  { seed: 1, things: 3, best: 11.009 },
  { seed: 2, things: 4, best: 11.8128 },
  { seed: 3, things: 5, best: 13.2912 },
  { seed: 4, things: 6, best: 14.8867 },
  { seed: 5, things: 8, best: 16.0921 },
  { seed: 6, things: 10, best: 17.3616 },
  { seed: 7, things: 12, best: 18.7663 },
  { seed: 8, things: 15, best: 18.7016 },
  { seed: 9, things: 18, best: 19.1606 },
  { seed: 10, things: 22, best: 21.8511 },
];

describe('the routes of ten yards', () => {
  it.each(known)(
    'seed $seed, $things things: sound, no dearer than they were, and the same twice',
    ({ seed, things, best }) => {
      const request = yard(seed, things);
      const found = findRoutes(request);
      const routes = found.is === 'found' ? found.routes : [];
      expect(routes.flatMap((route) => checkRoute(request, route))).toEqual([]);
      expect(routes[0]?.cost.total ?? Infinity).toBeLessThan(1.01 * best);
      expect(findRoutes(request)).toEqual(found);
    },
  );
});
