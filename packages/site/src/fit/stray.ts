import { distance, type Point, stationOfVertex } from '@footmark/geometry';
import type { Derived } from '../derive/derive';
import type { DerivedPath } from '../derive/derivePaths';
import type { PlacedMark } from './placedMark';
import { sondeStation } from './sondeStation';

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
export function strayNodes(
  derived: Derived,
  marks: ReadonlyMap<string, PlacedMark>,
  located: ReadonlyMap<string, readonly string[]>,
  unknown: () => number,
): readonly Stray[] {
  const found: { path: string; leg: number; share: number; metres: number; locates: string[] }[] = [];
  for (const [reading, locates] of located) {
    const mark = marks.get(reading);
    const place = mark === undefined ? null : sondeStation(derived, mark);
    const on = place === null ? undefined : derived.paths.get(place.path);
    if (place === null || on === undefined) continue;
    const { leg, share } = legPlace(on, place.station);
    const metres = share * (legOf(on, leg)?.length ?? 0);
    found.push({ path: place.path, leg, share, metres, locates: [...locates] });
  }
  found.sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : a.leg - b.leg || a.share - b.share));
  const merged: typeof found = [];
  for (const next of found) {
    const last = merged.at(-1);
    const near =
      last?.path === next.path && last.leg === next.leg && next.metres - last.metres < SAME_PLACE_M;
    if (near) last.locates.push(...next.locates);
    else merged.push(next);
  }
  return merged.map(({ metres: _, ...stray }) => ({ ...stray, unknown: unknown() }));
}

/** The leg on which a station lies, and how far along it as a share of its length. */
export function legPlace(on: DerivedPath, station: number): { readonly leg: number; readonly share: number } {
  const legs = on.points.length - 1;
  let leg = 0;
  while (leg < legs - 1 && station >= stationOfVertex(on.line, leg + 1)) leg++;
  const [a, b] = [stationOfVertex(on.line, leg), stationOfVertex(on.line, leg + 1)];
  return { leg, share: Math.min(1, Math.max(0, (station - a) / (b - a))) };
}

/**
 * Of a place on a leg: how its stray follows from those of the located places beside it, and the variance (m²) that they leave.
 * A pipe's stray is taken as a walk of independent steps that comes back to the leg at both its ends: between two known places it is
 * the straight line between them, and grows unsure by q·d₁·d₂/(d₁ + d₂) (Brownian bridge; any text on stochastic processes).
 */
export function strayAt(
  strays: readonly Stray[],
  at: { readonly path: string; readonly leg: number; readonly share: number },
  length: number,
  perMetre: number,
): { readonly weights: readonly { unknown: number; weight: number }[]; readonly variance: number } {
  const own = strays.filter((s) => s.path === at.path && s.leg === at.leg);
  const before = own.findLast((s) => s.share <= at.share);
  const after = own.find((s) => s.share > at.share);
  const [low, high] = [before?.share ?? 0, after?.share ?? 1];
  const [d1, d2] = [(at.share - low) * length, (high - at.share) * length];
  const span = d1 + d2;
  const t = span > 0 ? d1 / span : 0;
  return {
    weights: [
      ...(before === undefined ? [] : [{ unknown: before.unknown, weight: 1 - t }]),
      ...(after === undefined ? [] : [{ unknown: after.unknown, weight: t }]),
    ],
    variance: span > 0 ? (perMetre * d1 * d2) / span : 0,
  };
}

/** What a stray's variance grows by per metre, from its deviation (m) in the middle of 10 m: at the middle of L it is q·L/4. */
export function strayPerMetre(atMiddleOfTen: number): number {
  return (4 * atMiddleOfTen ** 2) / 10;
}
