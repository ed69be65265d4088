import { refKey } from '../document/pointOwners';
import type { Ref } from '../document/spot';
import type { Net } from './net';

/** The node that stands for a point of the site; null for one that is on no pipe of the net. */
export function nodeOfRef({ derived, nodeAt }: Net, ref: Ref): number | null {
  return nodeAt.get(derived.points.get(refKey(ref))?.is ?? '') ?? null;
}
