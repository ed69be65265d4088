import type { Point } from '@footmark/geometry';
import type { RouteRequest, Shape } from '@footmark/route';
import { awayFrom, firstWithin, inside, type Ray } from './rays';

/** The ground as a route to one place meets it. */
export type Ground = {
  /** How far the centre line may go along a ray, up to `most`. */
  readonly freeRun: (ray: Ray, most: number) => number;
  readonly isFree: (x: number, y: number) => boolean;
  /** Whether nothing is nearer to a place than it may be by at least `by`. */
  readonly hasRoom: (x: number, y: number, by: number) => boolean;
  /** What the areas add to the first metres of a ray. */
  readonly areasAlong: (ray: Ray) => (length: number) => number;
  /** What they add to a metre at a place. */
  readonly perMetreAt: (x: number, y: number) => number;
};

/** Metres: a line that touches is free. */
const TOUCH = 1e-6;
/** Metres between two places where a ray is measured that may pass what the free ends let it pass. */
const STEP = 5e-3;

type Kept = {
  readonly shape: Shape;
  /** From the centre line. */
  readonly by: number;
  readonly startBy: number;
  readonly endBy: number;
  /** A circle that holds the shape. */
  readonly round: { readonly x: number; readonly y: number; readonly radius: number };
};

export function groundTo(request: RouteRequest, end: Point): Ground {
  const { obstacles, areas, freeEnds, diameter } = request;
  const start = request.start.at;
  const kept = obstacles.map(({ shape, clearance }): Kept => {
    const by = clearance + diameter / 2;
    return {
      shape,
      by: by - TOUCH,
      startBy: Math.min(by, awayFrom(start.x, start.y, shape)) - TOUCH,
      endBy: Math.min(by, awayFrom(end.x, end.y, shape)) - TOUCH,
      round: roundOf(shape),
    };
  });
  const everywhere = kept.filter((k) => k.startBy === k.by && k.endBy === k.by);
  const waived = kept.filter((k) => !everywhere.includes(k));
  const isFar = ({ round }: Kept, x: number, y: number, by: number) =>
    (x - round.x) ** 2 + (y - round.y) ** 2 >= (round.radius + by) ** 2;
  const isNear = (to: Point, x: number, y: number) => Math.hypot(x - to.x, y - to.y) <= freeEnds;
  const askedAt = (k: Kept, x: number, y: number) =>
    Math.min(k.by, isNear(start, x, y) ? k.startBy : k.by, isNear(end, x, y) ? k.endBy : k.by);

  const waivedRun = (ray: Ray, k: Kept, most: number) => {
    let along = 0;
    for (;;) {
      const [x, y] = [ray.x + along * ray.ux, ray.y + along * ray.uy];
      const away = awayFrom(x, y, k.shape);
      if (away < k.by && away < askedAt(k, x, y)) return Math.max(0, along - STEP);
      if (along >= most) return most;
      along = Math.min(most, along + Math.max(STEP, away - k.by));
    }
  };

  return {
    freeRun: (ray, most) => {
      let run = most;
      for (const k of everywhere) run = Math.min(run, firstWithin(ray, k.shape, k.by));
      for (const k of waived) run = Math.min(run, waivedRun(ray, k, run));
      return run;
    },
    isFree: (x, y) => kept.every((k) => isFar(k, x, y, k.by) || awayFrom(x, y, k.shape) >= askedAt(k, x, y)),
    hasRoom: (x, y, by) =>
      kept.every((k) => isFar(k, x, y, k.by + by) || awayFrom(x, y, k.shape) >= k.by + by),
    areasAlong: (ray) => {
      const stretches = areas.flatMap(({ shape, perMetre }) =>
        inside(ray, shape).map(([from, to]) => ({ from: Math.max(0, from), to, perMetre })),
      );
      if (stretches.length === 0) return () => 0;
      return (length) =>
        stretches.reduce(
          (sum, { from, to, perMetre }) => sum + perMetre * Math.max(0, Math.min(length, to) - from),
          0,
        );
    },
    perMetreAt: (x, y) =>
      areas.reduce((sum, { shape, perMetre }) => sum + (awayFrom(x, y, shape) < 0 ? perMetre : 0), 0),
  };
}

function roundOf(shape: Shape): Kept['round'] {
  if (shape.is === 'circle') return { ...shape.centre, radius: shape.radius };
  const xs = shape.points.map((p) => p.x);
  const ys = shape.points.map((p) => p.y);
  const x = (Math.min(...xs) + Math.max(...xs)) / 2;
  const y = (Math.min(...ys) + Math.max(...ys)) / 2;
  const reach = Math.max(...shape.points.map((p) => Math.hypot(p.x - x, p.y - y)));
  return { x, y, radius: reach + (shape.is === 'line' ? shape.halfWidth : 0) };
}
