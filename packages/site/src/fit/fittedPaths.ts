import { distance, interpolate, stationOf } from '@footmark/geometry';
import type { Derived } from '../derive/derive';
import type { Net } from './net';
import { nodeOfRef } from './nodeOfRef';
import type { LegPlace } from './placed';
import type { FittedPath } from './runsFit';
import { legOf } from './stray';

/** Strays under this (m) bend no leg, and one nearer than this (m along the leg) to a point of the pipe makes no new point of it. */
const LEAST_STRAY_M = 0.01;
const CLEAR_OF_POINTS_M = 0.15;

/**
 * The pipes of the net as a solution has them, with new points where a locate found the pipe off its leg. `sigmaBefore`: how sure a place
 * was without the evidence (m).
 */
export function fittedPaths(
  net: Net,
  x: Float64Array,
  sigmaBefore: (at: LegPlace) => number,
): readonly FittedPath[] {
  return net.paths.flatMap((id) => {
    const on = net.derived.paths.get(id);
    if (on === undefined) return [];
    const corners = on.path.vertices.map((v, i) => {
      const node = nodeOfRef(net, { of: id, at: v.id });
      const drawn = on.points[i] ?? { x: 0, y: 0 };
      const at = node === null ? drawn : { x: x[2 * node] ?? 0, y: x[2 * node + 1] ?? 0 };
      const last = i === on.points.length - 1;
      return {
        vertex: v.id,
        added: null,
        at,
        measured: on.measured[i] ?? false,
        sigma: sigmaBefore({ path: id, leg: last ? i - 1 : i, share: last ? 1 : 0 }),
        moved: distance(at, drawn),
      };
    });
    const points: FittedPath['points'][number][] = [];
    for (const [i, corner] of corners.entries()) {
      points.push(corner);
      const next = corners[i + 1];
      const leg = legOf(on, i);
      if (next === undefined || leg === null) continue;
      const strays = net.strays.filter((s) => s.path === id && s.leg === i);
      // one that is dropped would be drawn over by the others' bends: a leg keeps all of its own or none
      if (strays.every((s) => Math.abs(x[s.unknown] ?? 0) < LEAST_STRAY_M)) continue;
      for (const stray of strays) {
        const off = x[stray.unknown] ?? 0;
        const along = Math.min(stray.share, 1 - stray.share) * leg.length;
        if (along < CLEAR_OF_POINTS_M) continue;
        const straight = interpolate(corner.at, next.at, stray.share);
        const at = { x: straight.x + off * leg.right.x, y: straight.y + off * leg.right.y };
        const drawn = interpolate(leg.from, leg.to, stray.share);
        points.push({
          vertex: null,
          added: { after: corner.vertex, locates: stray.locates },
          at,
          measured: true,
          sigma: sigmaBefore(stray),
          moved: distance(at, drawn),
        });
      }
    }
    return [{ id, points }];
  });
}

/** How far (m) the furthest point of fitted pipes is from the pipes as they are shown. */
export function furthestMove(paths: readonly FittedPath[], shown: Derived): number {
  let furthest = 0;
  for (const { id, points } of paths) {
    const on = shown.paths.get(id);
    if (on === undefined) continue;
    for (const { vertex, at } of points) {
      const index = on.path.vertices.findIndex((v) => v.id === vertex);
      const place = index < 0 ? undefined : on.points[index];
      furthest = Math.max(
        furthest,
        place === undefined ? stationOf(on.line, at).distance : distance(place, at),
      );
    }
  }
  return furthest;
}
