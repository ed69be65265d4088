import { distance } from '@footmark/geometry';
import { sigmaOf } from '../../rules/sigmaOf';
import type { Net } from '../net';
import { nodeOfRef } from '../nodeOfRef';
import type { Tagged } from '../tagged';

/** Plan lengths between points of a pipe that are known from elsewhere. */
export function* lengthEvidence(net: Net): Generator<Tagged> {
  for (const path of net.site.paths) {
    if (!net.paths.includes(path.id)) continue;
    for (const known of path.knownLengths ?? []) {
      const ends = [known.from, known.to].map((at) => path.vertices.findIndex((v) => v.id === at));
      const [low, high] = [Math.min(...ends), Math.max(...ends)];
      const nodes = path.vertices.slice(low, high + 1).map((v) => nodeOfRef(net, { of: path.id, at: v.id }));
      if (nodes.length < 2 || nodes.some((n) => n === null)) continue;
      const legs = (x: Float64Array) =>
        nodes.slice(1).map((n, i) => {
          const [a, b] = [2 * (nodes[i] ?? 0), 2 * (n ?? 0)];
          const [dx, dy] = [(x[b] ?? 0) - (x[a] ?? 0), (x[b + 1] ?? 0) - (x[a + 1] ?? 0)];
          return { a, b, dx, dy, length: Math.hypot(dx, dy) };
        });
      yield {
        tag: { is: 'length', path: path.id, length: known.id },
        observation: {
          kind: 'custom',
          id: `length/${path.id}/${known.id}`,
          value: known.length + savedBetween(net, path.id, low, high),
          sigma: sigmaOf(net.site, 'knownLength'),
          evaluate: (x) => legs(x).reduce((sum, l) => sum + l.length, 0),
          gradient: (x, out) => {
            for (const { a, b, dx, dy, length } of legs(x)) {
              if (length === 0) continue;
              out.add(b, dx / length);
              out.add(b + 1, dy / length);
              out.add(a, -dx / length);
              out.add(a + 1, -dy / length);
            }
          },
        },
      };
    }
  }
}

/** What the bends between two points of a drawn pipe save against its corners (m). */
function savedBetween({ derived }: Net, path: string, low: number, high: number): number {
  const on = derived.paths.get(path);
  if (on === undefined) return 0;
  const corners = on.points.slice(low, high + 1);
  const straight = corners.slice(1).reduce((sum, p, i) => sum + distance(corners[i] ?? p, p), 0);
  const [a, b] = [on.line.vertexStations[low] ?? 0, on.line.vertexStations[high] ?? 0];
  return straight - (b - a);
}
