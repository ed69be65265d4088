import type { GradientRow } from '@footmark/adjust';
import type { Point } from '@footmark/geometry';
import type { ReadingTrace } from '../derive/readingAlong';
import type { Net, NetRun } from './net';
import type { PlacedMark } from './placedMark';
import { addCableByLinks, addPlaceByLinks, cableOver, placeOnWay, type WayPlace } from './wayPlace';

/** A reading in the net, ready to be asked where it leads. */
export type NetReading = {
  readonly mark: PlacedMark;
  readonly on: NetRun;
  /** Where its count is among the unknowns; null for one that is taken as read. */
  readonly counter: number | null;
};

export function netReading(net: Net, reading: string): NetReading | null {
  const mark = net.marks.get(reading);
  const on = mark === undefined ? undefined : net.runs.get(mark.run.id);
  if (mark === undefined || on === undefined) return null;
  return { mark, on, counter: net.counters.get(reading) ?? null };
}

/** Cable (m) along the pipe from the entry to the lens, `behind` metres further back. */
export function alongOf({ mark, on, counter }: NetReading, x: Float64Array, behind: number): number {
  const { trace } = mark;
  const counted = counter === null ? trace.counted : (x[counter] ?? 0);
  const leg = on.entryLeg === null ? trace.entryLeg : (x[on.entryLeg] ?? 0);
  return (
    startOf(on, trace, x) + (x[on.scale] ?? 1) * (counted - (x[on.zero] ?? 0)) - leg + trace.ahead - behind
  );
}

/** Cable (m) from the entry to where the counter was zeroed, which moves with the point of the pipe that it was zeroed at. */
function startOf({ way, origin }: NetRun, trace: ReadingTrace, x: Float64Array): number {
  return origin === null ? trace.start : cableOver(way, x, origin.pieces) + origin.further;
}

/** Adds `factor` times the derivatives of `alongOf`. */
export function addAlong(
  { mark, on, counter }: NetReading,
  x: Float64Array,
  factor: number,
  out: GradientRow,
): void {
  const counted = counter === null ? mark.trace.counted : (x[counter] ?? 0);
  const scale = x[on.scale] ?? 1;
  if (on.origin !== null) addCableByLinks(on.way, x, on.origin.pieces, factor, out);
  out.add(on.scale, factor * (counted - (x[on.zero] ?? 0)));
  out.add(on.zero, -factor * scale);
  if (on.entryLeg !== null) out.add(on.entryLeg, -factor);
  if (counter !== null) out.add(counter, factor * scale);
}

/** Where a reading leads, `behind` metres back from the lens; with `only`, on that piece of its way: see `placeOnWay`. */
export function placeOfReading(
  reading: NetReading,
  x: Float64Array,
  behind: number,
  only?: number,
): WayPlace | null {
  return placeOnWay(reading.on.way, x, alongOf(reading, x, behind), only);
}

/** Adds `factor` times the derivatives of the component of a reading's place in the direction `axis`. */
export function addPlace(
  reading: NetReading,
  x: Float64Array,
  place: WayPlace,
  axis: Point,
  factor: number,
  out: GradientRow,
): void {
  addPlaceByLinks(reading.on.way, x, place, axis, factor, out);
  const ahead = place.toward.x * axis.x + place.toward.y * axis.y;
  addAlong(reading, x, factor * ahead * place.perCable, out);
}
