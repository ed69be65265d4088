import type { Mix } from './chain';
import type { Way } from './way';

/** How many pieces of a run's way lead to a node that lies on it at the end of one; null for one that does not. */
export function piecesToNode(way: Way, node: number): number | null {
  const [first] = way;
  if (first === undefined) return null;
  if (isNode(first.from, node)) return 0;
  const ends = way.findIndex((piece) => isNode(piece.to, node));
  return ends < 0 ? null : ends + 1;
}

function isNode({ nodes, strays }: Mix, node: number): boolean {
  return strays.length === 0 && nodes.length === 1 && nodes[0]?.node === node;
}
