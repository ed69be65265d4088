import { stationOf } from '@footmark/geometry';
import { refKey } from '../../document/pointOwners';
import type { Ref } from '../../document/spot';
import { sigmaOf } from '../../rules/sigmaOf';
import type { Net } from '../net';
import { nodeOfRef } from '../nodeOfRef';
import { pointSigmas } from '../pointSigma';
import { addAlong, alongOf, type NetReading, netReading } from '../readingPlace';
import { legPlace } from '../stray';
import type { Tagged } from '../tagged';
import { addCableByNodes, cableTo } from '../wayPlace';

/** A reading that saw a point of the plan is as far along as that point. */
export function* seenEvidence(net: Net): Generator<Tagged> {
  const sigmaOfPoint = pointSigmas(net.site, net.derived.points);
  for (const reading of net.marks.values()) {
    const { seenAt } = reading.reading;
    const here = netReading(net, reading.reading.id);
    if (seenAt === undefined || here === null) continue;
    const target = pointOnWay(net, here, seenAt);
    if (target === null) continue;
    const { piece, fixed } = target;
    yield {
      tag: { is: 'seen', run: reading.run.id, reading: reading.reading.id },
      observation: {
        kind: 'custom',
        id: `seen/${reading.run.id}/${reading.reading.id}`,
        value: fixed ?? 0,
        sigma: Math.hypot(sigmaOf(net.site, 'sameThing'), fixed === null ? 0 : sigmaOfPoint(seenAt)),
        evaluate: (x) => alongOf(here, x, 0) - (fixed === null ? cableTo(here.on.way, x, piece) : 0),
        gradient: (x, out) => {
          addAlong(here, x, 1, out);
          if (fixed === null) addCableByNodes(here.on.way, x, piece, -1, out);
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
function pointOnWay(net: Net, { on }: NetReading, ref: Ref): { piece: number; fixed: number | null } | null {
  const node = nodeOfRef(net, ref);
  if (node !== null) {
    const ends = on.way.findIndex((p) => p.to.length === 1 && p.to[0]?.node === node);
    if (ends >= 0) return { piece: ends + 1, fixed: null };
    if (on.way[0]?.from.length === 1 && on.way[0].from[0]?.node === node) return { piece: 0, fixed: null };
  }
  const at = net.derived.points.get(refKey(ref))?.at;
  if (at === undefined) return null;
  let nearest: { away: number; along: number } | null = null;
  for (const piece of on.way) {
    const path = net.derived.paths.get(piece.path);
    if (path === undefined) continue;
    const found = stationOf(path.line, at);
    const { leg: index, share } = legPlace(path, found.station);
    const [low, high] = [Math.min(piece.fromShare, piece.toShare), Math.max(piece.fromShare, piece.toShare)];
    if (index !== piece.leg || share < low || share > high || found.distance > SEEN_REACH_M) continue;
    if (nearest !== null && nearest.away <= found.distance) continue;
    const into = Math.abs(share - piece.fromShare) / Math.max(high - low, Number.MIN_VALUE);
    nearest = { away: found.distance, along: piece.start + into * (piece.end - piece.start) };
  }
  return nearest === null ? null : { piece: 0, fixed: nearest.along };
}
