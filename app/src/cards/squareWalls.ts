import { distance as apart, azimuthBetween, type Point, signedAngle } from '@footmark/geometry';
import {
  derive,
  followsPrevious,
  isPath,
  kindSpec,
  type LegChange,
  type PointOwner,
  refKey,
  type Site,
  setLegLength,
  type Vertex,
} from '@footmark/site';

/** A corner that is off by less (rad, half a degree) is square. */
const SQUARE_RAD = Math.PI / 360;

/** Sides that differ by less (m) are equal: the side across has followed by itself. */
const SAME_M = 0.001;

/** In an outline of four square corners, the vertex at the end of the side across from the one that ends at `end`; else null. */
export function wallAcross(
  owner: PointOwner,
  end: Vertex,
  places: ReadonlyMap<string, { at: Point }>,
): Vertex | null {
  if (isPath(owner) || kindSpec(owner.kind).shape !== 'area' || owner.vertices.length !== 4) return null;
  const corners = owner.vertices.flatMap((v) => places.get(refKey({ of: owner.id, at: v.id }))?.at ?? []);
  const isSquare = corners.every((b, i) => {
    const [a, c] = [corners.at(i - 1), corners[(i + 1) % 4]];
    if (a === undefined || c === undefined) return false;
    return (
      Math.abs(Math.abs(signedAngle(azimuthBetween(b, c) - azimuthBetween(a, b))) - Math.PI / 2) < SQUARE_RAD
    );
  });
  if (corners.length < 4 || !isSquare) return null;
  return owner.vertices[(owner.vertices.findIndex((v) => v.id === end.id) + 2) % 4] ?? null;
}

/** Gives the side across the same length, so that the outline stays square; the corners at its far end stay where they are. */
export function lengthAcross(
  site: Site,
  owner: PointOwner,
  end: Vertex,
  distance: number,
  keeps: 'start' | 'end',
): LegChange {
  const { points } = derive(site);
  const index = owner.vertices.findIndex((v) => v.id === end.id);
  const start = owner.vertices.at(index - 1);
  const [a, b] = [start, end].map((v) => v && points.get(refKey({ of: owner.id, at: v.id }))?.at);
  if (a && b && Math.abs(apart(a, b) - distance) < SAME_M) return { ok: true, site };
  // the side's start has moved with the wall when it is counted from it; else it is the start that must move
  const moved = keeps === 'start' && start !== undefined && followsPrevious(start.spot);
  return setLegLength(site, {
    of: owner.id,
    end: end.id,
    distance,
    keeps: moved || keeps === 'end' ? 'start' : 'end',
    places: points,
  });
}
