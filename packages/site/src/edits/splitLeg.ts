import {
  azimuthBetween,
  distance,
  interpolate,
  longChord,
  type Point,
  pointAtAzimuth,
  radiusOfArc,
} from '@footmark/geometry';
import { isPath, pointOwners } from '../document/pointOwners';
import type { Ref } from '../document/spot';
import { kindSpec } from '../kinds/featureKinds';
import { type Edit, unknown } from './edit';
import { holdPlaces, type Places, placesWithin, spotAt, unbalanced } from './holdPlaces';
import { withVertices } from './vertexEdits';

/**
 * Puts a point with the id `id` into the middle of the leg behind the point `after`, and no other point of the line moves. It is there by
 * eye; a curve becomes two of half its sweep each, so that the line stays what it was. An outline that was balanced is so no longer.
 * `places`: where the points are now, by `of/at`. Throws when no leg begins there.
 */
export const splitLeg: Edit<{ after: Ref; id: string; places: Places }> = (site, { after, id, places }) => {
  const plain = unbalanced(site, after.of, places);
  const owner = pointOwners(plain).find((o) => o.id === after.of) ?? unknown('thing', after.of);
  const closed = !isPath(owner) && kindSpec(owner.kind).shape === 'area';
  const placeOf = placesWithin(after.of, places);
  return withVertices(plain, after.of, (vertices) => {
    const index = vertices.findIndex((v) => v.id === after.at);
    const start = vertices[index];
    const next = vertices[index + 1];
    const end = next ?? (closed ? vertices[0] : undefined);
    const [a, b] = [start && placeOf(start), end && placeOf(end)];
    if (a === undefined || b === undefined) return unknown('leg', `${after.of}/${after.at}`);
    const curve = next?.spot.by === 'arc' ? { ...next, spot: next.spot } : null;
    const middle = curve === null ? interpolate(a, b, 0.5) : middleOfArc(a, b, curve.spot.sweep);
    const half = curve === null ? null : { ...curve.spot, sweep: curve.spot.sweep / 2 };
    const vertex = { id, spot: spotAt(middle, half ?? { by: 'finger', ...middle }, a) };
    const longer =
      curve === null || half === null
        ? vertices.toSpliced(index + 1, 0, vertex)
        : vertices.toSpliced(index + 1, 1, vertex, { ...curve, spot: half });
    return holdPlaces(vertices, longer, placeOf, (v) => (v.id === id ? middle : placeOf(v)));
  });
};

function middleOfArc(a: Point, b: Point, sweep: number): Point {
  const radius = radiusOfArc(distance(a, b), sweep);
  return pointAtAzimuth(a, azimuthBetween(a, b) - sweep / 4, longChord(radius, sweep / 2));
}
