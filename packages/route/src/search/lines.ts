import type { Point } from '@footmark/geometry';
import type { Direction } from './direction';

/** Along and across a direction, metres from the frame's origin. */
export function alongOf({ ahead }: Direction, p: Point): number {
  return p.x * ahead.x + p.y * ahead.y;
}

export function acrossOf({ right }: Direction, p: Point): number {
  return p.x * right.x + p.y * right.y;
}

/** Lines nearer to each other than this (m) are one. */
const SAME_LINE_M = 1e-5;

type Reached = {
  readonly along: number;
  readonly until: number;
  readonly cost: number;
  readonly bends: number;
};

/**
 * Which legs are worth going on with: on one line, one that begins further on is not when an earlier one comes by there, free of everything, at
 * no more cost and with no more bends.
 */
export class Lines {
  private readonly byLine = new Map<number, Map<number, Reached[]>>();

  /** `until`: how far the leg is free (m along the direction). `more`: what the way from an earlier leg's start costs beyond its length. */
  isWorth(
    direction: Direction,
    leg: Reached & { readonly at: Point },
    more: (along: number) => number,
  ): boolean {
    const lines = this.byLine.get(direction.key) ?? new Map<number, Reached[]>();
    const line = Math.round(acrossOf(direction, leg.at) / SAME_LINE_M);
    const others = lines.get(line);
    const { along, until, cost, bends } = leg;
    if (others === undefined) {
      this.byLine.set(direction.key, lines.set(line, [{ along, until, cost, bends }]));
      return true;
    }
    for (const other of others) {
      if (other.along > along || other.until < along || other.bends > bends) continue;
      if (other.cost + (along - other.along) + more(other.along) <= cost + SAME_LINE_M) return false;
    }
    others.push({ along, until, cost, bends });
    return true;
  }
}
