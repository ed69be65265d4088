import type { GradientRow } from '@footmark/adjust';
import type { Point } from '@footmark/geometry';
import type { NodeMix, Way, WayPiece } from './way';

// The unknowns hold the node n at 2n (x) and 2n + 1 (y).

/**
 * A place on a run's way as the nodes and the cable put it: the point, the unit vector in which the camera goes, and the plan distance
 * per cable.
 */
export type WayPlace = {
  readonly piece: number;
  readonly at: Point;
  readonly toward: Point;
  readonly perCable: number;
  /** Plan metres from the start of the piece. */
  readonly into: number;
};

/**
 * Where `along` metres of cable from the entry lead with the nodes where `x` has them. Before the first piece and past the last, straight
 * on from there: readings at the ends of a way move over them as the fit goes on.
 */
export function placeOnWay(way: Way, x: Float64Array, along: number): WayPlace | null {
  let cable = way[0]?.start ?? 0;
  for (const [i, piece] of way.entries()) {
    cable += dropBefore(way, i);
    const span = spanOf(piece, x);
    const length = Math.hypot(span.x, span.y);
    const end = cable + length * piece.ratio;
    if (along <= end || i === way.length - 1) {
      const from = mixAt(piece.from, x);
      const toward = length > 0 ? { x: span.x / length, y: span.y / length } : { x: 0, y: 0 };
      // within a drop the plan stands still
      const inDrop = i > 0 && along < cable;
      const perCable = inDrop ? 0 : 1 / piece.ratio;
      const into = (along - cable) * perCable;
      return {
        piece: i,
        at: { x: from.x + into * toward.x, y: from.y + into * toward.y },
        toward,
        perCable,
        into,
      };
    }
    cable = end;
  }
  return null;
}

/** Adds `factor` times the derivatives of a place's component in the direction `axis` with respect to the nodes, the cable held. */
export function addPlaceByNodes(
  way: Way,
  x: Float64Array,
  place: WayPlace,
  axis: Point,
  factor: number,
  out: GradientRow,
): void {
  const piece = way[place.piece];
  if (piece === undefined) return;
  const ahead = place.toward.x * axis.x + place.toward.y * axis.y;
  // P = A + d·u: dP = dA + d·du + u·dd, and d shrinks as the way to A grows
  for (let i = 0; i < place.piece; i++) {
    const before = way[i];
    if (before === undefined) continue;
    const { u } = unitOf(before, x);
    addMix(before.to, u, -factor * ahead * place.perCable * before.ratio, out);
    addMix(before.from, u, factor * ahead * place.perCable * before.ratio, out);
  }
  addMix(piece.from, axis, factor, out);
  const { u, length } = unitOf(piece, x);
  if (length === 0) return;
  const turn = { x: axis.x - ahead * u.x, y: axis.y - ahead * u.y }; // (I − uuᵀ)·axis
  addMix(piece.to, turn, (factor * place.into) / length, out);
  addMix(piece.from, turn, (-factor * place.into) / length, out);
}

/** The cable (m) from the entry to the start of a piece of the way, or with `piece` its number of pieces to its end. */
export function cableTo(way: Way, x: Float64Array, piece: number): number {
  let cable = way[0]?.start ?? 0;
  for (let i = 0; i < piece; i++) {
    const before = way[i];
    if (before === undefined) break;
    cable += dropBefore(way, i) + unitOf(before, x).length * before.ratio;
  }
  return cable;
}

/** Adds `factor` times the derivatives of `cableTo` with respect to the nodes. */
export function addCableByNodes(
  way: Way,
  x: Float64Array,
  piece: number,
  factor: number,
  out: GradientRow,
): void {
  for (let i = 0; i < piece; i++) {
    const before = way[i];
    if (before === undefined) return;
    const { u } = unitOf(before, x);
    addMix(before.to, u, factor * before.ratio, out);
    addMix(before.from, u, -factor * before.ratio, out);
  }
}

export function addMix(mix: NodeMix, axis: Point, factor: number, out: GradientRow): void {
  for (const { node, weight } of mix) {
    out.add(2 * node, factor * weight * axis.x);
    out.add(2 * node + 1, factor * weight * axis.y);
  }
}

export function mixAt(mix: NodeMix, x: Float64Array): Point {
  let [px, py] = [0, 0];
  for (const { node, weight } of mix) {
    px += weight * (x[2 * node] ?? 0);
    py += weight * (x[2 * node + 1] ?? 0);
  }
  return { x: px, y: py };
}

/** Cable between the end of the piece before and the start of this one: a vertical drop. */
function dropBefore(way: Way, piece: number): number {
  const [before, here] = [way[piece - 1], way[piece]];
  return before === undefined || here === undefined ? 0 : Math.max(0, here.start - before.end);
}

function spanOf(piece: WayPiece, x: Float64Array): Point {
  const [a, b] = [mixAt(piece.from, x), mixAt(piece.to, x)];
  return { x: b.x - a.x, y: b.y - a.y };
}

function unitOf(piece: WayPiece, x: Float64Array): { readonly u: Point; readonly length: number } {
  const span = spanOf(piece, x);
  const length = Math.hypot(span.x, span.y);
  return { u: length > 0 ? { x: span.x / length, y: span.y / length } : { x: 0, y: 0 }, length };
}
