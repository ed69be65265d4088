import type { Ref, Spot } from '../document/spot';

/** A spot with every point that it names put through `change`. */
export function mapSpotRefs(spot: Spot, change: (ref: Ref) => Ref): Spot {
  switch (spot.by) {
    case 'tapes':
      return { ...spot, tapes: spot.tapes.map((tape) => ({ ...tape, from: change(tape.from) })) };
    case 'offset':
    case 'between':
      return { ...spot, from: change(spot.from), to: change(spot.to) };
    case 'bearing':
      return { ...spot, from: change(spot.from) };
    case 'at':
      return { ...spot, point: change(spot.point) };
    default:
      return spot;
  }
}
