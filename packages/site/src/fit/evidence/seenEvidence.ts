import { stationOf } from '@footmark/geometry';
import { refKey } from '../../document/pointOwners';
import type { Ref } from '../../document/spot';
import { sigmaOf } from '../../rules/sigmaOf';
import type { Mix } from '../chain';
import type { Net } from '../net';
import { nodeOfRef } from '../nodeOfRef';
import { pointSigmas } from '../pointSigma';
import { addAlong, alongOf, type NetReading, netReading } from '../readingPlace';
import type { Tagged } from '../tagged';
import { placeOf } from '../way';
import { addCableByLinks, cableOver } from '../wayPlace';

/** A reading that saw a point of the plan is as far along as that point. */
export function* seenEvidence(net: Net): Generator<Tagged> {
  const sigmaOfPoint = pointSigmas(net.site, net.derived.points);
  for (const reading of net.marks.values()) {
    const { seenAt } = reading.reading;
    const here = netReading(net, reading.reading.id);
    if (seenAt === undefined || here === null) continue;
    const target = pointOnWay(net, here, seenAt);
    if (target === null) continue;
    const { pieces, fixed } = target;
    yield {
      tag: { is: 'seen', run: reading.run.id, reading: reading.reading.id },
      observation: {
        kind: 'custom',
        id: `seen/${reading.run.id}/${reading.reading.id}`,
        value: fixed ?? 0,
        sigma: Math.hypot(sigmaOf(net.site, 'sameThing'), fixed === null ? 0 : sigmaOfPoint(seenAt)),
        evaluate: (x) => alongOf(here, x, 0) - (fixed === null ? cableOver(here.on.way, x, pieces) : 0),
        gradient: (x, out) => {
          addAlong(here, x, 1, out);
          if (fixed === null) addCableByLinks(here.on.way, x, pieces, -1, out);
        },
      },
    };
  }
}

/** Furthest (m) that a point may lie off a pipe that is said to have been seen from inside it. */
const SEEN_REACH_M = 1;

/**
 * A point on a run's way: the number of pieces that lead to it when it is a node there, else the cable to the nearest place of the way,
 * which then does not move.
 */
function pointOnWay(net: Net, { on }: NetReading, ref: Ref): { pieces: number; fixed: number | null } | null {
  const node = nodeOfRef(net, ref);
  const first = on.way[0];
  if (node !== null && first !== undefined) {
    if (isNode(first.from, node)) return { pieces: 0, fixed: null };
    const ends = on.way.findIndex((p) => isNode(p.to, node));
    if (ends >= 0) return { pieces: ends + 1, fixed: null };
  }
  const at = net.derived.points.get(refKey(ref))?.at;
  if (at === undefined) return null;
  let nearest: { away: number; along: number } | null = null;
  for (const piece of on.way) {
    const path = net.derived.paths.get(piece.path);
    if (path === undefined) continue;
    const found = stationOf(path.line, at);
    const place = placeOf(path, found.station);
    const [low, high] = [Math.min(piece.start, piece.end), Math.max(piece.start, piece.end)];
    if (place < low || place > high || found.distance > SEEN_REACH_M) continue;
    if (nearest !== null && nearest.away <= found.distance) continue;
    const into = Math.abs(place - piece.start) / (high - low);
    nearest = { away: found.distance, along: piece.cableStart + into * (piece.cableEnd - piece.cableStart) };
  }
  return nearest === null ? null : { pieces: 0, fixed: nearest.along };
}

function isNode({ nodes, strays }: Mix, node: number): boolean {
  return strays.length === 0 && nodes.length === 1 && nodes[0]?.node === node;
}
