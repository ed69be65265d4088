import { alongRouteAt } from '../../derive/runRoute';
import { refKey } from '../../document/pointOwners';
import type { Ref } from '../../document/spot';
import { sigmaOf } from '../../rules/sigmaOf';
import type { Net } from '../net';
import { nodeOfRef } from '../nodeOfRef';
import { piecesToNode } from '../pointOnWay';
import { pointSigmas } from '../pointSigma';
import { addAlong, alongOf, type NetReading, netReading } from '../readingPlace';
import type { Tagged } from '../tagged';
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

/**
 * A point on a run's way: the number of pieces that lead to it when it is a node there, else the cable to the nearest place of the way,
 * which then does not move.
 */
function pointOnWay(net: Net, { on }: NetReading, ref: Ref): { pieces: number; fixed: number | null } | null {
  const node = nodeOfRef(net, ref);
  const pieces = node === null ? null : piecesToNode(on.way, node);
  if (pieces !== null) return { pieces, fixed: null };
  const { derived, site } = net;
  const [at, route] = [derived.points.get(refKey(ref))?.at, derived.routes.get(on.run.id)];
  const fixed =
    at === undefined || route === undefined ? null : alongRouteAt(route, derived.paths, at, site.entryReach);
  return fixed === null ? null : { pieces: 0, fixed };
}
