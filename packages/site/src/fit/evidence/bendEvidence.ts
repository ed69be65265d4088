import { azimuthBetween, deflectionBetween } from '@footmark/geometry';
import { sigmaOf } from '../../rules/sigmaOf';
import type { Net } from '../net';
import { nodeOfRef } from '../nodeOfRef';
import type { Tagged } from '../tagged';

/** Fittings turn a pipe by what they are made for, to the side on which it is drawn. */
export function* bendEvidence(net: Net): Generator<Tagged> {
  for (const path of net.site.paths) {
    const on = net.derived.paths.get(path.id);
    if (on === undefined || !net.paths.includes(path.id)) continue;
    for (const [i, v] of path.vertices.entries()) {
      const [p, q, r] = [on.points[i - 1], on.points[i], on.points[i + 1]];
      if (v.bend === undefined || p === undefined || q === undefined || r === undefined) continue;
      const nodes = [i - 1, i, i + 1].map((j) =>
        nodeOfRef(net, { of: path.id, at: path.vertices[j]?.id ?? '' }),
      );
      const [a, b, c] = nodes;
      if (a == null || b == null || c == null) continue;
      const drawn = deflectionBetween(azimuthBetween(p, q), azimuthBetween(q, r));
      yield {
        tag: { is: 'bend', path: path.id, vertex: v.id },
        observation: {
          kind: 'angle',
          id: `bend/${path.id}/${v.id}`,
          station: { at: 2 * b },
          backsight: { at: 2 * a },
          foresight: { at: 2 * c },
          value: Math.PI + (drawn < 0 ? -v.bend : v.bend),
          sigma: sigmaOf(net.site, 'fittingAngle'),
        },
      };
    }
  }
}
