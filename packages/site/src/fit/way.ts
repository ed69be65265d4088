import { developedAt, distance, stationOfVertex } from '@footmark/geometry';
import type { DerivedPath } from '../derive/derivePaths';
import type { RunRoute } from '../derive/runRoute';
import { type Chain, chainAt, type Mix } from './chain';

/**
 * A straight piece of a run's way, on one link of a pipe's chain, from place `start` to place `end` there. `cableStart` and `cableEnd`: the
 * cable (m) from the entry at its ends in the drawing; `ratio` cable per plan length on it (grade, and what bends save).
 */
export type WayPiece = {
  readonly path: string;
  readonly start: number;
  readonly end: number;
  readonly from: Mix;
  readonly to: Mix;
  readonly cableStart: number;
  readonly cableEnd: number;
  readonly ratio: number;
};

/** A run's way, in the order in which the camera went through it. */
export type Way = readonly WayPiece[];

/** Below this (m) a station is that of the vertex: at a bend, where a branch comes in is a little beside the middle of its arc. */
const AT_VERTEX_M = 0.02;

/** The way of a run over the chains of its pipes. A piece without length in plan is left out: a drop is cable between two pieces. */
export function wayOf(
  route: RunRoute,
  paths: ReadonlyMap<string, DerivedPath>,
  chains: ReadonlyMap<string, Chain>,
): Way {
  const pieces: WayPiece[] = [];
  for (const leg of route.legs) {
    const on = paths.get(leg.path);
    const chain = chains.get(leg.path);
    if (on === undefined || chain === undefined) continue;
    const downstream = leg.toStation >= leg.fromStation;
    const origin = developedAt(on.profile, leg.fromStation, 'after');
    const cable = (place: number, side: 'before' | 'after') =>
      leg.fromAlong + Math.abs(developedAt(on.profile, stationAt(on, place), side) - origin);
    const places = placesBetween(chain, placeOf(on, leg.fromStation), placeOf(on, leg.toStation));
    for (const [i, start] of places.entries()) {
      const end = places[i + 1];
      if (end === undefined) break;
      const [from, to] = [chainAt(chain, start), chainAt(chain, end)];
      const plan = distance(from.drawn, to.drawn);
      if (plan < AT_VERTEX_M) continue;
      // a drop at the head of a way is climbed before its first piece
      const cableStart = cable(start, downstream ? 'after' : 'before');
      const cableEnd = cable(end, downstream ? 'before' : 'after');
      const ratio = (cableEnd - cableStart) / plan;
      pieces.push({ path: leg.path, start, end, from: from.mix, to: to.mix, cableStart, cableEnd, ratio });
    }
  }
  return pieces;
}

/** Both places and the chain's own between them, in the order of the way. */
function placesBetween(chain: Chain, from: number, to: number): readonly number[] {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const ascending = [low, ...chain.places.filter((p) => p > low && p < high), high];
  return to >= from ? ascending : ascending.toReversed();
}

/** A station as a place that counts legs; that of a vertex near enough to it. */
export function placeOf(on: DerivedPath, station: number): number {
  const last = on.points.length - 2;
  let leg = 0;
  while (leg < last && station >= stationOfVertex(on.line, leg + 1)) leg++;
  const [a, b] = [stationOfVertex(on.line, leg), stationOfVertex(on.line, leg + 1)];
  if (station - a < AT_VERTEX_M) return leg;
  if (b - station < AT_VERTEX_M) return leg + 1;
  return leg + (station - a) / (b - a);
}

function stationAt(on: DerivedPath, place: number): number {
  const leg = Math.min(Math.floor(place), on.points.length - 2);
  const [a, b] = [stationOfVertex(on.line, leg), stationOfVertex(on.line, leg + 1)];
  return place === leg + 1 ? b : a + (place - leg) * (b - a);
}

/** The first piece of a way that holds a place on a leg of a path; undefined for one that the way does not pass. */
export function pieceAt(
  way: Way,
  at: { readonly path: string; readonly leg: number; readonly share: number },
): number | undefined {
  const place = at.leg + at.share;
  const index = way.findIndex(
    (p) =>
      p.path === at.path &&
      Math.floor((p.start + p.end) / 2) === at.leg &&
      Math.min(p.start, p.end) <= place &&
      place <= Math.max(p.start, p.end),
  );
  return index < 0 ? undefined : index;
}
