import { distance, type Point } from '@footmark/geometry';
import type { Derived } from '../derive/derive';
import type { DerivedPath } from '../derive/derivePaths';
import type { Located } from './placed';

/**
 * A place on a leg of a pipe where the sonde was located, and where among the unknowns the pipe's distance from the straight leg is
 * there: to the right of the flow, metres.
 */
export type Stray = {
  readonly path: string;
  readonly leg: number;
  /** 0 at the leg's upstream end, 1 at the other. */
  readonly share: number;
  /** The features that located it there. */
  readonly locates: readonly string[];
  readonly unknown: number;
};

/** A leg of a path: its drawn ends, its length (m), and the unit vector to the right of the flow. */
export type Leg = {
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
  readonly right: Point;
};

export function legOf(on: DerivedPath, leg: number): Leg | null {
  const [from, to] = [on.points[leg], on.points[leg + 1]];
  if (from === undefined || to === undefined) return null;
  const length = distance(from, to);
  return { from, to, length, right: { x: (to.y - from.y) / length, y: -(to.x - from.x) / length } };
}

/** Metres along a leg under which two located places are one: they share their stray. */
const SAME_PLACE_M = 0.3;

/** The strays of all legs, those of one leg one after the other with the flow. */
export function strayNodes(derived: Derived, located: Located, unknown: () => number): readonly Stray[] {
  const found = [...located.values()]
    .map(({ locates, at }) => {
      const on = derived.paths.get(at.path);
      const length = on === undefined ? 0 : (legOf(on, at.leg)?.length ?? 0);
      return { ...at, metres: at.share * length, locates: [...locates] };
    })
    .sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : a.leg - b.leg || a.share - b.share));
  const merged: typeof found = [];
  for (const next of found) {
    const last = merged.at(-1);
    const near =
      last?.path === next.path && last.leg === next.leg && next.metres - last.metres < SAME_PLACE_M;
    if (near) last.locates.push(...next.locates);
    else merged.push(next);
  }
  return merged.map(({ path, leg, share, locates }) => ({ path, leg, share, locates, unknown: unknown() }));
}

/**
 * What the located places beside a place on a leg leave open of its stray: variance (m²). A pipe's stray is taken as a walk of independent
 * steps that comes back to the leg at both its ends: between two known places it is the straight line between them, and grows
 * unsure by q·d₁·d₂/(d₁ + d₂) (Brownian bridge; any text on stochastic processes).
 */
export function strayVariance(
  strays: readonly Stray[],
  at: { readonly path: string; readonly leg: number; readonly share: number },
  length: number,
  perMetre: number,
): number {
  const own = strays.filter((s) => s.path === at.path && s.leg === at.leg);
  const low = own.findLast((s) => s.share <= at.share)?.share ?? 0;
  const high = own.find((s) => s.share > at.share)?.share ?? 1;
  const [d1, d2] = [(at.share - low) * length, (high - at.share) * length];
  return d1 + d2 > 0 ? (perMetre * d1 * d2) / (d1 + d2) : 0;
}

/** What a stray's variance grows by per metre, from its deviation (m) in the middle of 10 m: at the middle of L it is q·L/4. */
export function strayPerMetre(atMiddleOfTen: number): number {
  return (4 * atMiddleOfTen ** 2) / 10;
}
