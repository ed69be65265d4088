import type { GradientRow } from '@footmark/adjust';
import { addMix, type Chain, linkAt, linkBetween, mixAt } from './chain';
import type { Net } from './net';
import { addPlace, type NetReading, placeOfReading } from './readingPlace';
import { pieceAt } from './way';
import type { WayPlace } from './wayPlace';

/** Plan metres from the start of the pipe to the place of a reading, link by link; null for a reading that leads nowhere. */
export function stationOfReading(net: Net, reading: NetReading, x: Float64Array): number | null {
  const place = placeOfReading(reading, x, 0, pieceOf(net, reading));
  const on = place === null ? null : linkOf(net, reading, place);
  if (place === null || on === null) return null;
  const { chain, link, ahead } = on;
  const start = chain.mixes[link];
  if (start === undefined) return null;
  const from = mixAt(start, x);
  let station = (place.at.x - from.x) * ahead.x + (place.at.y - from.y) * ahead.y;
  for (const { a, b } of linksBefore(chain, link)) station += linkBetween(a, b, x).length;
  return station;
}

/** Adds `factor` times the derivatives of `stationOfReading`. */
export function addStation(
  net: Net,
  reading: NetReading,
  x: Float64Array,
  factor: number,
  out: GradientRow,
): void {
  const place = placeOfReading(reading, x, 0, pieceOf(net, reading));
  const on = place === null ? null : linkOf(net, reading, place);
  if (place === null || on === null) return;
  const { chain, link, ahead } = on;
  // the place lies on its link: turning the link does not change how far along it that is, to first order
  addPlace(reading, x, place, ahead, factor, out);
  const start = chain.mixes[link];
  if (start !== undefined) addMix(start, ahead, -factor, out);
  for (const { a, b } of linksBefore(chain, link)) {
    const { u } = linkBetween(a, b, x);
    addMix(b, u, factor, out);
    addMix(a, u, -factor, out);
  }
}

/** The piece that a reading is held to while the fit goes on, so that it crosses no corner. */
function pieceOf(net: Net, reading: NetReading): number | undefined {
  const at = net.looked.get(reading.mark.reading.id);
  return at === undefined ? undefined : pieceAt(reading.on.way, at);
}

/** The link of the pipe's chain on which a place lies, and the unit vector of the flow there. */
function linkOf(net: Net, reading: NetReading, place: WayPlace) {
  const piece = reading.on.way[place.piece];
  const chain = net.chains.get(piece?.path ?? '');
  if (piece === undefined || chain === undefined) return null;
  const sign = piece.end >= piece.start ? 1 : -1;
  const link = linkAt(chain, (piece.start + piece.end) / 2);
  return { chain, link, ahead: { x: sign * place.toward.x, y: sign * place.toward.y } };
}

function* linksBefore({ mixes }: Chain, link: number) {
  for (let i = 0; i < link; i++) {
    const [a, b] = [mixes[i], mixes[i + 1]];
    if (a !== undefined && b !== undefined) yield { a, b };
  }
}
