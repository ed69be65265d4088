import { degrees, normalizeAzimuth, type Point, pointAtAzimuth, radians } from '@footmark/geometry';
import type { Area, Bend, Headings, Obstacle, RouteEnd, RouteRequest, Shape } from '@footmark/route';
import { seededRandom } from '../random/seeded';

// Invented yards: a house wall, what stands before it, and a main or a tap beyond. Each lies turned and shifted, so that nothing is square to
// the axes.

export type YardRecipe = {
  /** With the house. */
  readonly obstacles: number;
  readonly mostBends?: number;
};

const INCH = 0.0254;
const RADIUS = 9 * INCH;
/** Outside diameter of a 4 in drain (m). */
const DIAMETER = 0.1143;
const FREE_ENDS = 1;
const CLEARANCES = [0, 0.15, 0.3, 0.6, 1] as const;
const BENDS = [bend(22.5, 0.1, 0.3), bend(45, 0.14, 0.4), bend(60, 0.19, 0.5), bend(90, 0.28, 0.8)];

type Dice = {
  readonly between: (a: number, b: number) => number;
  readonly count: (a: number, b: number) => number;
  readonly chance: (share: number) => boolean;
  readonly pick: <T>(from: readonly [T, ...(readonly T[])]) => T;
};

/** The same yard for the same seed and recipe. */
export function randomRequest(seed: number, { obstacles, mostBends = 6 }: YardRecipe): RouteRequest {
  const dice = diceOf(seed);
  const side = 4.5 + 3.2 * Math.sqrt(obstacles);
  const start: Point = { x: dice.between(0.25, 0.75) * side, y: 0 };
  const end = randomEnd(dice, side);
  const [left, right, back] = [
    start.x - dice.between(1.5, 4),
    start.x + dice.between(1.5, 4),
    -dice.between(3, 6),
  ];
  const house: Obstacle = {
    id: 'house',
    shape: {
      is: 'ring',
      points: [
        { x: left, y: back },
        { x: right, y: back },
        { x: right, y: 0 },
        { x: left, y: 0 },
      ],
    },
    clearance: dice.pick([0.3, 0.6, 0.9]),
  };
  const things = Array.from({ length: obstacles - 1 }, (_, i) =>
    randomObstacle(dice, { id: `thing ${i + 1}`, side, keepFree: [start, ...placesOf(end)] }),
  );
  const areas = Array.from({ length: dice.count(0, 3) }, (_, i): Area => {
    const centre = { x: dice.between(0, side), y: dice.between(0, side) };
    const shape = randomShape(dice, centre, dice.between(0.8, 2.5));
    return { id: `ground ${i + 1}`, shape, perMetre: dice.between(0.2, 1.2) };
  });
  const least = dice.pick([1 / 96, 1 / 48]);
  const fall = least * side * dice.between(1.1, 1.8);
  const invert = dice.chance(0.3) ? null : -fall;
  const request: RouteRequest = {
    start: { at: start, heading: 0, invert: 0 },
    ends: [{ ...end, invert }],
    diameter: DIAMETER,
    bends: BENDS,
    leastStraight: 0.1,
    mostBends,
    obstacles: [house, ...things],
    areas,
    freeEnds: FREE_ENDS,
    grade: { least, kept: dice.chance(0.5) },
  };
  return moved(request, {
    turn: dice.between(0, 2 * Math.PI),
    by: { x: dice.between(-50, 50), y: dice.between(-50, 50) },
    mirror: false,
  });
}

export type Motion = { readonly turn: number; readonly by: Point; readonly mirror: boolean };

/** A request mirrored in the y axis, if asked, then turned clockwise about the origin, then shifted. */
export function moved(request: RouteRequest, motion: Motion): RouteRequest {
  const point = (p: Point) => movedPoint(p, motion);
  const heading = (azimuth: number) => normalizeAzimuth((motion.mirror ? -azimuth : azimuth) + motion.turn);
  const headings = ({ from, to }: Headings): Headings =>
    motion.mirror ? { from: heading(to), to: heading(from) } : { from: heading(from), to: heading(to) };
  const shape = (s: Shape): Shape =>
    s.is === 'circle' ? { ...s, centre: point(s.centre) } : { ...s, points: s.points.map(point) };
  return {
    ...request,
    start: { ...request.start, at: point(request.start.at), heading: heading(request.start.heading) },
    ends: request.ends.map((end) => ({
      ...end,
      at: 'x' in end.at ? point(end.at) : { from: point(end.at.from), to: point(end.at.to) },
      headings: end.headings?.map(headings) ?? null,
    })),
    obstacles: request.obstacles.map((o) => ({ ...o, shape: shape(o.shape) })),
    areas: request.areas.map((a) => ({ ...a, shape: shape(a.shape) })),
  };
}

export function movedPoint({ x, y }: Point, { turn, by, mirror }: Motion): Point {
  const [sin, cos] = [Math.sin(turn), Math.cos(turn)];
  const across = mirror ? -x : x;
  return { x: by.x + across * cos + y * sin, y: by.y - across * sin + y * cos };
}

function bend(turn: number, laying: number, cost: number): Bend {
  return { id: String(turn), turn: radians(turn), radius: RADIUS, laying, cost };
}

function diceOf(seed: number): Dice {
  const random = seededRandom(seed);
  return {
    between: (a, b) => a + (b - a) * random(),
    count: (a, b) => a + Math.floor((b - a + 1) * random()),
    chance: (share) => random() < share,
    pick: (from) => from[Math.floor(from.length * random())] ?? from[0],
  };
}

/** Beyond the yard: a tap, or anywhere on a piece of a main that passes there, in any heading or slanting into it. */
function randomEnd(dice: Dice, side: number): Omit<RouteEnd, 'invert'> {
  const middle: Point = { x: dice.between(0.15, 0.85) * side, y: dice.between(0.85, 1) * side };
  const along = radians(90 + dice.between(-20, 20));
  const headings = dice.chance(0.4)
    ? null
    : [slanting(along, dice.pick([0, 45, 90])), slanting(along, dice.count(10, 80))];
  if (dice.chance(0.5)) return { id: 'tap', at: middle, headings };
  const half = dice.between(1, 3);
  const piece = { from: pointAtAzimuth(middle, along, -half), to: pointAtAzimuth(middle, along, half) };
  return { id: 'main', at: piece, headings };
}

/** About an angle to a main, as wide as the slack of a joint or a few bends would be. */
function slanting(along: number, angle: number): Headings {
  const about = along - radians(angle);
  const slack = radians(25);
  return { from: normalizeAzimuth(about - slack), to: normalizeAzimuth(about + slack) };
}

/** Close enough together that nothing fits between. */
function placesOf({ at }: Pick<RouteEnd, 'at'>): readonly Point[] {
  if ('x' in at) return [at];
  const { from, to } = at;
  return Array.from({ length: 25 }, (_, i) => ({
    x: from.x + (i / 24) * (to.x - from.x),
    y: from.y + (i / 24) * (to.y - from.y),
  }));
}

type Site = { readonly id: string; readonly side: number; readonly keepFree: readonly Point[] };

/** Somewhere in the yard, not so near that no pipe could leave or arrive; near enough now and then that the free ends count. */
function randomObstacle(dice: Dice, { id, side, keepFree }: Site): Obstacle {
  const size = dice.between(0.2, 1.3);
  const clearance = dice.pick(CLEARANCES);
  const room = size + 0.35 + (dice.chance(0.8) ? clearance : 0);
  for (;;) {
    const centre = { x: dice.between(-0.1, 1.1) * side, y: dice.between(0.05, 1.05) * side };
    if (keepFree.some((p) => Math.hypot(p.x - centre.x, p.y - centre.y) < room)) continue;
    return { id, shape: randomShape(dice, centre, size), clearance };
  }
}

/** Within `size` of its centre. */
function randomShape(dice: Dice, centre: Point, size: number): Shape {
  const turn = dice.between(0, 360);
  const around = (angle: number, away: number) => pointAtAzimuth(centre, radians(turn + angle), away * size);
  switch (dice.count(0, 3)) {
    case 0:
      return { is: 'circle', centre, radius: size };
    case 1: {
      const corners = dice.count(3, 7);
      const points = Array.from({ length: corners }, (_, i) =>
        around((360 * (i + dice.between(0.1, 0.9))) / corners, 1),
      );
      return { is: 'ring', points };
    }
    case 2: {
      // the corners of a square but for a notch at one of them
      const notch = dice.between(0.1, 0.6);
      const at = (x: number, y: number) => around(degrees(Math.atan2(x, y)), Math.hypot(x, y) * Math.SQRT1_2);
      return {
        is: 'ring',
        points: [
          at(-1, -1),
          at(1, -1),
          at(1, notch - 1),
          at(notch - 1, notch - 1),
          at(notch - 1, 1),
          at(-1, 1),
        ],
      };
    }
    default: {
      const halfWidth = dice.between(0.02, 0.2) * size;
      const ends = [around(0, 0.8), around(dice.between(120, 240), 0.8)];
      return { is: 'line', points: dice.chance(0.5) ? ends : [...ends, around(90, 0.7)], halfWidth };
    }
  }
}
