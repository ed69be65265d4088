import type { Path } from '../document/path';
import { refKey } from '../document/pointOwners';

/**
 * What the place of a point hangs on, followed through all that it is measured from: null for coordinates, which are fixed in the
 * site's frame; the key of the one point that was put there by eye; or `several` of these, which were never measured from each
 * other. Two points that hang on the same lie to each other as measured, wherever that was put down.
 */
export type Anchor = string | null;

/** No key of a point is this: they all have a slash. */
const SEVERAL = 'several';

/** The anchor of what is measured from points with these, one or more. */
export function commonAnchor(anchors: readonly Anchor[]): Anchor {
  const [first = SEVERAL] = anchors;
  return anchors.every((anchor) => anchor === first) ? first : SEVERAL;
}

type Anchored = { readonly anchor: Anchor; readonly measured: boolean };

/**
 * The site's datum, from which a mark can be taped: the anchor that most measured points of the pipes hang on, the first of those
 * that tie. Where no pipe was measured, the one that most measured points of all do; undefined without any.
 */
export function datumOf(paths: readonly Path[], points: ReadonlyMap<string, Anchored>): Anchor | undefined {
  const ofPaths = paths.flatMap((path) =>
    path.vertices.flatMap((v) => points.get(refKey({ of: path.id, at: v.id })) ?? []),
  );
  const datum = mostCommon(ofPaths);
  return datum === undefined ? mostCommon([...points.values()]) : datum; // null is an anchor too
}

function mostCommon(points: readonly Anchored[]): Anchor | undefined {
  const counts = new Map<Anchor, number>();
  for (const { anchor, measured } of points)
    if (measured && anchor !== SEVERAL) counts.set(anchor, (counts.get(anchor) ?? 0) + 1);
  const most = Math.max(...counts.values());
  for (const [anchor, count] of counts) if (count === most) return anchor;
  return undefined;
}
