import type { Derived } from '../derive/derive';
import { refKey } from '../document/pointOwners';
import type { Ref } from '../document/spot';

/** Where the nodes are: by the key of the point that each stands for. */
type Nodes = { readonly derived: Derived; readonly nodeAt: ReadonlyMap<string, number> };

/** The node that stands for a point of the site; null for one that is on no pipe of the net. */
export function nodeOfRef({ derived, nodeAt }: Nodes, ref: Ref): number | null {
  return nodeAt.get(derived.points.get(refKey(ref))?.is ?? '') ?? null;
}
