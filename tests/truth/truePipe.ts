import { flattenPath, type Point, pathLine } from '@footmark/geometry';

// A pipe as it really lies, made without the program's own reckoning of stations: a fine polyline that is walked step by step.

/** A fine polyline with the cable (m) from its start to each of its points. */
export type TruePipe = { readonly points: readonly Point[]; readonly cable: readonly number[] };

/** Sine modes that a stray is made of. */
const MODES = 5;
const STEP_M = 0.05;

export type TrueShape = {
  readonly corners: readonly Point[];
  /** Centre-line radius (m) of the bends. */
  readonly bendRadius: number;
  readonly slope: number;
  /** Variance of the stray per metre: in the middle of a leg L it is q·L/4. */
  readonly perMetre: number;
};

/**
 * Corners with round bends, each leg strayed to the side by a random smooth curve that is nothing at its ends: the first modes of a
 * Brownian bridge (Karhunen–Loève).
 */
export function truePipe({ corners, bendRadius, slope, perMetre }: TrueShape, gauss: () => number): TruePipe {
  const built = pathLine(corners.map((point) => ({ point, bendRadius })));
  if (!built.ok) throw new Error(built.code);
  const legs = corners.slice(1).map((to, i) => {
    const from = corners[i] as Point;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    return { from, to, length, modes: Array.from({ length: MODES }, gauss) };
  });
  const points = dense(flattenPath(built.value, 0.0005)).map((p) => {
    // the stray of the leg that the point is nearest to
    let best = { away: Infinity, t: 0, leg: legs[0] as (typeof legs)[number] };
    for (const leg of legs) {
      const t = Math.min(
        1,
        Math.max(
          0,
          ((p.x - leg.from.x) * (leg.to.x - leg.from.x) + (p.y - leg.from.y) * (leg.to.y - leg.from.y)) /
            leg.length ** 2,
        ),
      );
      const away = Math.hypot(
        p.x - leg.from.x - t * (leg.to.x - leg.from.x),
        p.y - leg.from.y - t * (leg.to.y - leg.from.y),
      );
      if (away < best.away) best = { away, t, leg };
    }
    const { leg, t } = best;
    const stray = leg.modes.reduce(
      (sum, z, j) =>
        sum +
        (z * Math.sqrt(2 * perMetre * leg.length) * Math.sin((j + 1) * Math.PI * t)) / ((j + 1) * Math.PI),
      0,
    );
    const right = { x: (leg.to.y - leg.from.y) / leg.length, y: -(leg.to.x - leg.from.x) / leg.length };
    return { x: p.x + stray * right.x, y: p.y + stray * right.y };
  });
  const cable = [0];
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    cable.push((cable[i - 1] ?? 0) + Math.hypot(b.x - a.x, b.y - a.y) * Math.hypot(1, slope));
  }
  return { points, cable };
}

export function lengthOf(pipe: TruePipe): number {
  return pipe.cable.at(-1) ?? 0;
}

/** The point at a cable length from the start. */
export function pointAt({ points, cable }: TruePipe, along: number): Point {
  const i = Math.max(
    1,
    cable.findIndex((c) => c >= along),
  );
  const [a, b] = [points[i - 1] as Point, points[i] as Point];
  const [ca, cb] = [cable[i - 1] as number, cable[i] as number];
  const t = cb > ca ? (along - ca) / (cb - ca) : 0;
  return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
}

/** The cable length at which the pipe is nearest to a point. */
export function alongNearest({ points, cable }: TruePipe, to: Point): number {
  let best = { away: Infinity, along: 0 };
  for (const [i, p] of points.entries()) {
    const away = Math.hypot(p.x - to.x, p.y - to.y);
    if (away < best.away) best = { away, along: cable[i] ?? 0 };
  }
  return best.along;
}

function dense(points: readonly Point[]): readonly Point[] {
  const out: Point[] = points.slice(0, 1);
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const steps = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / STEP_M));
    for (let k = 1; k <= steps; k++) {
      out.push({ x: a.x + ((b.x - a.x) * k) / steps, y: a.y + ((b.y - a.y) * k) / steps });
    }
  }
  return out;
}
