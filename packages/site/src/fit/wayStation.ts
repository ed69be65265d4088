import type { GradientRow } from '@footmark/adjust';
import { refKey } from '../document/pointOwners';
import type { Net } from './net';
import { addAlong, type NetReading, placeOfReading } from './readingPlace';
import type { WayPlace } from './wayPlace';
import { addPlaceByNodes } from './wayPlace';

/**
 * Plan metres from the start of a path to the place of a reading, corner to corner, where the nodes are in `x`. A place on another path
 * than asked counts from where that path begins: then the two are not on one pipe, and nothing is compared.
 */
export function stationOfPlace(net: Net, reading: NetReading, path: string, x: Float64Array): number {
  const place = placeOfReading(reading, x, 0);
  const piece = place === null ? undefined : reading.on.way[place.piece];
  if (place === null || piece === undefined) return 0;
  const start = cornerOf(net, piece.path, piece.leg, x);
  const ahead = aheadOf(reading, place);
  const into = (place.at.x - start.x) * ahead.x + (place.at.y - start.y) * ahead.y;
  return lengthTo(net, path, piece.leg, x) + into;
}

/** Adds `factor` times the derivatives of `stationOfPlace`. */
export function addStation(
  net: Net,
  reading: NetReading,
  path: string,
  x: Float64Array,
  factor: number,
  out: GradientRow,
): void {
  const place = placeOfReading(reading, x, 0);
  const piece = place === null ? undefined : reading.on.way[place.piece];
  if (place === null || piece === undefined) return;
  const ahead = aheadOf(reading, place);
  // the place lies on its leg: turning the leg's direction does not change how far along it is, to first order
  addPlaceByNodes(reading.on.way, x, place, ahead, factor, out);
  const same = place.toward.x * ahead.x + place.toward.y * ahead.y;
  addAlong(reading, x, factor * same * place.perCable, out);
  const start = nodeAtVertex(net, piece.path, piece.leg);
  out.add(2 * start, -factor * ahead.x);
  out.add(2 * start + 1, -factor * ahead.y);
  for (let leg = 0; leg < piece.leg; leg++) {
    const [a, b] = [nodeAtVertex(net, path, leg), nodeAtVertex(net, path, leg + 1)];
    const [dx, dy] = [(x[2 * b] ?? 0) - (x[2 * a] ?? 0), (x[2 * b + 1] ?? 0) - (x[2 * a + 1] ?? 0)];
    const length = Math.hypot(dx, dy);
    if (length === 0) continue;
    out.add(2 * b, (factor * dx) / length);
    out.add(2 * b + 1, (factor * dy) / length);
    out.add(2 * a, (-factor * dx) / length);
    out.add(2 * a + 1, (-factor * dy) / length);
  }
}

/** Unit vector of the flow on the leg of a place. */
function aheadOf(reading: NetReading, place: WayPlace) {
  const piece = reading.on.way[place.piece];
  const sign = piece !== undefined && piece.toShare < piece.fromShare ? -1 : 1;
  return { x: sign * place.toward.x, y: sign * place.toward.y };
}

function lengthTo(net: Net, path: string, leg: number, x: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < leg; i++) {
    const [a, b] = [cornerOf(net, path, i, x), cornerOf(net, path, i + 1, x)];
    sum += Math.hypot(b.x - a.x, b.y - a.y);
  }
  return sum;
}

function cornerOf(net: Net, path: string, vertex: number, x: Float64Array) {
  const node = nodeAtVertex(net, path, vertex);
  return { x: x[2 * node] ?? 0, y: x[2 * node + 1] ?? 0 };
}

function nodeAtVertex({ derived, nodeAt }: Net, path: string, vertex: number): number {
  const v = derived.paths.get(path)?.path.vertices[vertex];
  return nodeAt.get(derived.points.get(refKey({ of: path, at: v?.id ?? '' }))?.is ?? '') ?? 0;
}
