import type { GradientRow } from '@footmark/adjust';
import type { Point } from '@footmark/geometry';
import { addMix, linkBetween, mixAt } from './chain';
import type { Way } from './way';

/**
 * A place on a run's way as the unknowns and the cable put it: the point, the unit vector in which the camera goes, and the plan distance
 * per cable, 0 within a drop.
 */
export type WayPlace = {
  readonly piece: number;
  readonly at: Point;
  readonly toward: Point;
  readonly perCable: number;
  /** Plan metres from the start of the piece, and the piece's length. */
  readonly into: number;
  readonly length: number;
};

/**
 * Where `along` metres of cable from the entry lead. Before the first piece and past the last, straight on from there: readings at the ends
 * of a way move over them as the fit goes on. With `only`, on that piece or straight on from it to either side: what hangs on
 * it has no corner there.
 */
export function placeOnWay(way: Way, x: Float64Array, along: number, only?: number): WayPlace | null {
  let cable = way[0]?.cableStart ?? 0;
  for (const [i, piece] of way.entries()) {
    cable += dropBefore(way, i);
    const { u: toward, length } = linkBetween(piece.from, piece.to, x);
    const end = cable + length * piece.ratio;
    if (only === undefined ? along <= end || i === way.length - 1 : i === only) {
      const from = mixAt(piece.from, x);
      // within a drop the plan stands still
      const inDrop = only === undefined && i > 0 && along < cable;
      const perCable = inDrop ? 0 : 1 / piece.ratio;
      const into = (along - cable) * perCable;
      const at = { x: from.x + into * toward.x, y: from.y + into * toward.y };
      return { piece: i, at, toward, perCable, into, length };
    }
    cable = end;
  }
  return null;
}

/** Adds `factor` times the derivatives of a place's component in the direction `axis`, the cable held. */
export function addPlaceByLinks(
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
  addCableByLinks(way, x, place.piece, -factor * ahead * place.perCable, out);
  addMix(piece.from, axis, factor, out);
  if (place.length === 0) return;
  const turn = { x: axis.x - ahead * place.toward.x, y: axis.y - ahead * place.toward.y }; // (I − uuᵀ)·axis
  addMix(piece.to, turn, (factor * place.into) / place.length, out);
  addMix(piece.from, turn, (-factor * place.into) / place.length, out);
}

/** The cable (m) from the entry over the first `pieces` pieces of a way. */
export function cableOver(way: Way, x: Float64Array, pieces: number): number {
  let cable = way[0]?.cableStart ?? 0;
  for (const [i, piece] of way.slice(0, pieces).entries()) {
    cable += dropBefore(way, i) + linkBetween(piece.from, piece.to, x).length * piece.ratio;
  }
  return cable;
}

/** Adds `factor` times the derivatives of `cableOver`. */
export function addCableByLinks(
  way: Way,
  x: Float64Array,
  pieces: number,
  factor: number,
  out: GradientRow,
): void {
  for (let i = 0; i < pieces; i++) {
    const piece = way[i];
    if (piece === undefined) return;
    const { u } = linkBetween(piece.from, piece.to, x);
    addMix(piece.to, u, factor * piece.ratio, out);
    addMix(piece.from, u, -factor * piece.ratio, out);
  }
}

/** Cable between the end of the piece before and the start of this one: a vertical drop. */
function dropBefore(way: Way, piece: number): number {
  const [before, here] = [way[piece - 1], way[piece]];
  return before === undefined || here === undefined ? 0 : Math.max(0, here.cableStart - before.cableEnd);
}
