import { developedAt, distance, stationOfVertex } from '@footmark/geometry';
import type { DerivedPath } from '../derive/derivePaths';
import type { RunRoute } from '../derive/runRoute';

/** A place made of nodes: their coordinates by these weights, which sum to 1. */
export type NodeMix = readonly { readonly node: number; readonly weight: number }[];

/**
 * A piece of a run's way between two neighbouring points of a pipe, straight in plan. `ratio` is cable per plan length on it (grade,
 * and what bends save); `start` and `end` the cable (m) from the entry at its ends, in the drawing. `leg` counts the legs of the path,
 * `fromShare` and `toShare` the place of the ends on it (0: upstream end).
 */
export type WayPiece = {
  readonly path: string;
  readonly leg: number;
  readonly fromShare: number;
  readonly toShare: number;
  readonly from: NodeMix;
  readonly to: NodeMix;
  readonly start: number;
  readonly end: number;
  readonly ratio: number;
};

/** A run's way as straight pieces, in the order in which the camera went through them. */
export type Way = readonly WayPiece[];

/** Below this (m) a station is that of the vertex: at a bend, where a branch comes in is a little beside the middle of its arc. */
const AT_VERTEX_M = 0.02;

/**
 * The way of a run over the nodes of the net: `nodeOf(path, vertex)` gives the node at each vertex. A piece without length in plan is
 * left out: a drop is cable between two pieces.
 */
export function wayOf(
  route: RunRoute,
  paths: ReadonlyMap<string, DerivedPath>,
  nodeOf: (path: string, vertex: number) => number,
): Way {
  const pieces: WayPiece[] = [];
  for (const leg of route.legs) {
    const on = paths.get(leg.path);
    if (on === undefined) continue;
    const downstream = leg.toStation >= leg.fromStation;
    const stations = stationsBetween(on, leg.fromStation, leg.toStation);
    const origin = developedAt(on.profile, leg.fromStation, 'after');
    const cable = (station: number, side: 'before' | 'after') =>
      leg.fromAlong + Math.abs(developedAt(on.profile, station, side) - origin);
    for (const [i, from] of stations.entries()) {
      const to = stations[i + 1];
      if (to === undefined) break;
      const index = legAt(on, (from + to) / 2);
      const share = (station: number) => shareOf(on, index, station);
      const mix = (station: number): NodeMix => {
        const at = share(station);
        const parts = [
          { node: nodeOf(leg.path, index), weight: 1 - at },
          { node: nodeOf(leg.path, index + 1), weight: at },
        ];
        return parts.filter((p) => p.weight !== 0);
      };
      const start = cable(from, downstream ? 'after' : 'before');
      const end = cable(to, downstream ? 'before' : 'after');
      const plan = planLength(on, index) * Math.abs(share(to) - share(from));
      if (plan < AT_VERTEX_M) continue;
      pieces.push({
        path: leg.path,
        leg: index,
        fromShare: share(from),
        toShare: share(to),
        from: mix(from),
        to: mix(to),
        start,
        end,
        ratio: (end - start) / plan,
      });
    }
  }
  return pieces;
}

/** The two stations and those of the vertices between them, in the order of the way. */
function stationsBetween(on: DerivedPath, from: number, to: number): readonly number[] {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const between = on.points
    .map((_, i) => stationOfVertex(on.line, i))
    .filter((s) => s > low + AT_VERTEX_M && s < high - AT_VERTEX_M);
  const ascending = [low, ...between, high];
  return to >= from ? ascending : ascending.toReversed();
}

/** From corner to corner (m). */
function planLength(on: DerivedPath, leg: number): number {
  const [a, b] = [on.points[leg], on.points[leg + 1]];
  return a === undefined || b === undefined ? 0 : distance(a, b);
}

/** The leg, counted from 0, on which a station lies. */
function legAt(on: DerivedPath, station: number): number {
  const last = on.points.length - 2;
  for (let i = 0; i < last; i++) if (station < stationOfVertex(on.line, i + 1)) return i;
  return last;
}

function shareOf(on: DerivedPath, leg: number, station: number): number {
  const [a, b] = [stationOfVertex(on.line, leg), stationOfVertex(on.line, leg + 1)];
  const share = (station - a) / (b - a);
  if (Math.abs(station - a) < AT_VERTEX_M) return 0;
  if (Math.abs(station - b) < AT_VERTEX_M) return 1;
  return Math.min(1, Math.max(0, share));
}
