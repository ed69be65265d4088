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

// The same request has the same answer, from one day to the next too: what makes the search faster must not make its routes others. The
// routes below are what the search gave when it was written; that they are right is shown by the checker here and by the slow search beside.

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

/** The cost of each route, then its bends, each to the right or to the left. */
const known = [
  { seed: 1, things: 3, routes: ['11.0090 22.5r'] },
  { seed: 2, things: 4, routes: ['11.8128 22.5r'] },
  {
    seed: 3,
    things: 5,
    routes: [
      '13.2912 22.5l 22.5r 22.5r',
      '13.3536 22.5l 45r',
      '13.9244 22.5l 45r',
      '14.3584 22.5r 22.5l 22.5r',
      '18.2644 45r 22.5l 45l 45l 45r 45r',
    ],
  },
  {
    seed: 4,
    things: 6,
    routes: [
      '14.8867 45r 45l 22.5r',
      '15.1541 45l 22.5r 22.5r 22.5r',
      '15.3134 45l 22.5r 45r',
      '18.1876 45l 22.5r 22.5r 45r 45l 22.5r',
    ],
  },
  {
    seed: 5,
    things: 8,
    routes: [
      '16.0921 22.5l 22.5r 22.5r',
      '16.7201 22.5l 45r',
      '17.4720 22.5r 22.5l 22.5r',
      '17.9759 45r 22.5l 45l 45r',
    ],
  },
  {
    seed: 6,
    things: 10,
    routes: [
      '17.3616 45r 22.5l 22.5l 22.5r',
      '17.7394 45l 22.5r 22.5r 22.5r',
      '17.7847 45l 22.5r 45r',
      '18.1171 45l 22.5r 22.5r 22.5r',
      '18.2374 45l 45r 22.5r',
    ],
  },
  {
    seed: 7,
    things: 12,
    routes: [
      '18.7663 45r 22.5l 22.5l 22.5l 45r',
      '19.1812 22.5r 22.5l 22.5r',
      '19.3501 45l 22.5l 45r 22.5r 22.5r',
      '19.6660 22.5r 45l 45r',
      '22.8786 22.5l 45l 22.5r 45r 45r',
    ],
  },
  {
    seed: 8,
    things: 15,
    routes: [
      '18.7016 22.5r 22.5l 22.5r',
      '19.6867 22.5r 22.5l 22.5r 22.5r 45l 22.5r',
      '19.8470 22.5r 22.5l 22.5l 45r',
      '21.7788 45r 45l 45r 22.5l 45l 45r',
      '21.8368 45r 45l 22.5l 45l 45r 45r',
    ],
  },
  { seed: 9, things: 18, routes: ['19.1606 22.5l 22.5r 22.5r', '19.9329 22.5r 22.5l 22.5l 45r'] },
  {
    seed: 10,
    things: 22,
    routes: [
      '21.8511 45r 45l 22.5r',
      '25.0215 22.5l 22.5l 22.5r 22.5r 22.5r',
      '25.2776 45l 22.5r 45r',
      '26.2382 22.5l 22.5l 22.5r 45r',
      '27.6562 22.5l 45l 45r 22.5r 45r',
    ],
  },
];

describe('the routes of ten yards', () => {
  it.each(known)('seed $seed, $things things', ({ seed, things, routes: asBefore }) => {
    const request = yard(seed, things);
    const found = findRoutes(request);
    const routes = found.is === 'found' ? found.routes : [];
    expect(routes.flatMap((route) => checkRoute(request, route))).toEqual([]);
    const lines = routes.map(
      ({ cost, bends }) => `${cost.total.toFixed(4)} ${bends.map((b) => b.bend + b.to[0]).join(' ')}`,
    );
    expect(lines).toEqual(asBefore);
  });
});
