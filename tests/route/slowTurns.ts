import type { RouteBend, RouteRequest } from '@footmark/route';
import type { Ground } from './ground';

/** A bend to one side, as the slow search lays it. */
export type SlowTurn = {
  readonly bend: RouteBend;
  /** To the right positive. */
  readonly turn: number;
  readonly radius: number;
  readonly tangent: number;
  /** Of the laying length beyond the arc. */
  readonly over: number;
  readonly cost: number;
  /** From the start to the end of the arc: ahead, and to the right. */
  readonly ahead: number;
  readonly right: number;
};

/** A place on the centre line where a leg begins or an arc does, and what it took to get there. */
export type SlowPlace = {
  readonly x: number;
  readonly y: number;
  readonly heading: number;
  readonly developed: number;
  readonly cost: number;
};

/** Metres between two places where an arc is measured. */
const STEP = 1e-2;

export function slowTurns({ bends }: RouteRequest): readonly SlowTurn[] {
  return bends.flatMap(({ id, turn, radius, laying, cost }) =>
    (['right', 'left'] as const).map((to): SlowTurn => {
      const tangent = radius * Math.tan(turn / 2);
      const side = to === 'right' ? 1 : -1;
      return {
        bend: { bend: id, to },
        turn: side * turn,
        radius,
        tangent,
        over: Math.max(0, laying - tangent),
        cost,
        ahead: radius * Math.sin(turn),
        right: side * radius * (1 - Math.cos(turn)),
      };
    }),
  );
}

/** The end of a turn that begins at a place; null where it is not free. */
export function afterTurn(ground: Ground, from: SlowPlace, turn: SlowTurn): SlowPlace | null {
  const length = turn.radius * Math.abs(turn.turn);
  const [sin, cos] = [Math.sin(from.heading), Math.cos(from.heading)];
  const side = Math.sign(turn.turn);
  const centreX = from.x + side * turn.radius * cos;
  const centreY = from.y - side * turn.radius * sin;
  const pointAt = (along: number) => {
    const heading = from.heading + (side * along) / turn.radius;
    return [
      centreX - side * turn.radius * Math.cos(heading),
      centreY + side * turn.radius * Math.sin(heading),
    ] as const;
  };
  const steps = Math.ceil(length / STEP);
  const middle = pointAt(length / 2);
  const roomy = ground.hasRoom(middle[0], middle[1], length / 2);
  let areas = 0;
  for (let i = 0; i <= steps; i++) {
    const [x, y] = pointAt((i / steps) * length);
    if (!roomy && !ground.isFree(x, y)) return null;
    const share = i === 0 || i === steps ? 0.5 : 1;
    areas += (share / steps) * length * ground.perMetreAt(x, y);
  }
  const [x, y] = pointAt(length);
  return {
    x,
    y,
    heading: from.heading + turn.turn,
    developed: from.developed + length,
    cost: from.cost + length + turn.cost + areas,
  };
}
