import { azimuthBetween, type Point, pointAtAzimuth } from '@footmark/geometry';
import { hasClosing, isBalanced } from '../derive/closing';
import type { Feature } from '../document/feature';
import type { PathVertex } from '../document/path';
import { isPath, type PointOwner, pointOwners, refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { followsPrevious, type LegSpot, type Spot } from '../document/spot';
import { kindSpec } from '../kinds/featureKinds';
import { unknown } from './edit';
import { setClosing } from './featureEdits';
import { spotAt } from './holdPlaces';
import { withVertices } from './vertexEdits';

/**
 * Why a leg cannot be given a length: its end that would have to move is `held` by tapes or other points, the leg is a `curve`, it
 * is the side that `closes` an outline whose corners are counted from its first, or it is one of an outline that is `balanced`, whose
 * sides are not as long as they were measured.
 */
export type LegProblem = 'held' | 'curve' | 'closes' | 'balanced';

export type LegChange =
  | { readonly ok: true; readonly site: Site }
  | { readonly ok: false; readonly code: LegProblem };

type Args = {
  readonly of: string;
  /** The vertex at the leg's end. */
  readonly end: string;
  readonly distance: number;
  /** Which end of the leg stays where it is. */
  readonly keeps: 'start' | 'end';
  readonly places: ReadonlyMap<string, { at: Point }>;
};

/**
 * Gives the leg that ends at a vertex a length (m); its direction stays. Keeping the start, the end moves, and with it what is counted
 * from it. Keeping the end, only the start moves, and if it was counted from the point before it becomes a place by eye, or stays the
 * end of a curve of the same sweep. The last side of an outline with a closing course is that course: its measured length changes and no
 * corner moves. Throws when there is no such leg.
 */
export function setLegLength(site: Site, { of, end, distance, keeps, places }: Args): LegChange {
  const owner = pointOwners(site).find((o) => o.id === of) ?? unknown('thing', of);
  const index = owner.vertices.findIndex((v) => v.id === end);
  const last = owner.vertices.length - 1;
  const from = index > 0 ? index - 1 : isClosed(owner) && index === 0 ? last : -1;
  const [startVertex, endVertex] = [owner.vertices[from], owner.vertices[index]];
  const place = (v: { id: string } | undefined) => places.get(refKey({ of, at: v?.id ?? '' }))?.at;
  const [a, b] = [place(startVertex), place(endVertex)];
  if (startVertex === undefined || endVertex === undefined || !a || !b) return unknown('leg', `${of}/${end}`);
  if (isBalanced(owner)) return { ok: false, code: 'balanced' };
  const closing = index === 0;
  if (closing && hasClosing(owner)) return closingLength(site, owner, distance);
  if (!closing && endVertex.spot.by === 'arc') return { ok: false, code: 'curve' };
  const azimuth = azimuthBetween(a, b);
  const chained = closing && followsPrevious(owner.vertices[1]?.spot ?? endVertex.spot);

  if (keeps === 'start') {
    if (chained) return { ok: false, code: 'closes' };
    const spot = movedEnd(endVertex.spot, pointAtAzimuth(a, azimuth, distance), distance);
    return spot === null ? { ok: false, code: 'held' } : changed({ [index]: spot });
  }
  const startAt = pointAtAzimuth(b, azimuth + Math.PI, distance);
  const start = startVertex.spot;
  const free = start.by === 'finger' || start.by === 'coordinates' || followsPrevious(start);
  if (!free) return { ok: false, code: 'held' };
  const startSpot: Spot =
    start.by === 'coordinates'
      ? { by: 'coordinates', ...startAt }
      : spotAt(startAt, start, place(owner.vertices[from - 1]));
  // the end stays: a course from the moved start leads to where it was
  const endSpot: Spot = followsPrevious(endVertex.spot)
    ? { by: 'course', azimuth, distance }
    : endVertex.spot;
  return changed(closing ? { [from]: startSpot } : { [from]: startSpot, [index]: endSpot });

  function changed(spots: Readonly<Record<number, Spot>>): LegChange {
    const edited = withVertices(site, of, (vertices) =>
      vertices.map((v, i): PathVertex => (spots[i] === undefined ? v : { ...v, spot: spots[i] })),
    );
    return { ok: true, site: edited };
  }
}

function closingLength(site: Site, feature: Feature & { closing: LegSpot }, distance: number): LegChange {
  const { id, closing } = feature;
  return closing.by === 'arc'
    ? { ok: false, code: 'curve' }
    : { ok: true, site: setClosing(site, { id, closing: { ...closing, distance } }) };
}

function movedEnd(spot: Spot, to: Point, distance: number): Spot | null {
  switch (spot.by) {
    case 'course':
    case 'turn':
      return { ...spot, distance };
    case 'finger':
    case 'coordinates':
      return { by: spot.by, ...to };
    default:
      return null;
  }
}

function isClosed(owner: PointOwner): boolean {
  return !isPath(owner) && kindSpec(owner.kind).shape === 'area';
}
