import type { Point } from '@footmark/geometry';
import type { Feature } from '../document/feature';
import type { PathVertex } from '../document/path';
import { fewestVertices, isPath, type PointOwner, pointOwners, refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { type Ref, refsOfSpot, type Spot, type Vertex } from '../document/spot';
import { type Edit, unknown } from './edit';
import { holdPlaces, type Places, placesWithin, spotAt, unbalanced } from './holdPlaces';
import { releaseSetAside } from './releaseSetAside';
import { releaseSiteRefs } from './releaseSiteRefs';

/** Says anew how a point got its place. */
export const setSpot: Edit<{ ref: Ref; spot: Spot }> = (site, { ref, spot }) =>
  withVertices(site, ref.of, (vertices) => {
    vertexIndex(vertices, ref);
    return vertices.map((v) => (v.id === ref.at ? { ...v, spot } : v));
  });

/**
 * Puts a point somewhere by eye; at the end of a curve, the curve goes on to there with the sweep that it has. The other points of its
 * line stay where they are: `places` gives the present places, by `of/at`. An outline that was balanced is so no longer.
 */
export const movePoint: Edit<{ ref: Ref; to: Point; places: Places }> = (site, { ref, to, places }) =>
  withVertices(unbalanced(site, ref.of, places), ref.of, (vertices) => {
    const index = vertexIndex(vertices, ref);
    const placeOf = placesWithin(ref.of, places);
    const before = vertices[index - 1];
    const from = before === undefined ? undefined : placeOf(before);
    const moved = vertices.map((v, i) => (i === index ? { ...v, spot: spotAt(to, v.spot, from) } : v));
    return holdPlaces(vertices, moved, placeOf, (v) => (v.id === ref.at ? to : placeOf(v)));
  });

/** Moves a whole thing by a displacement (m). Points that were taped from others stay: their measurements hold them. */
export const moveThing: Edit<{ id: string; by: Point }> = (site, { id, by }) =>
  withVertices(site, id, (vertices) =>
    vertices.map((v) =>
      v.spot.by === 'finger' || v.spot.by === 'coordinates'
        ? { ...v, spot: { ...v.spot, x: v.spot.x + by.x, y: v.spot.y + by.y } }
        : v,
    ),
  );

/** Moves several things by one displacement (m), as `moveThing` does each. */
export const moveThings: Edit<{ ids: readonly string[]; by: Point }> = (site, { ids, by }) =>
  ids.reduce((moved, id) => moveThing(moved, { id, by }), site);

/**
 * Puts a new point between two of a line, behind the point `after`; no other point of the line moves. In a curve, what is left of it
 * begins at the new point. An outline that was balanced is so no longer.
 */
export const insertVertex: Edit<{ ref: Ref; vertex: Vertex; places: Places }> = (
  site,
  { ref, vertex, places },
) =>
  withVertices(unbalanced(site, ref.of, places), ref.of, (vertices) => {
    const index = vertexIndex(vertices, ref);
    const placeOf = placesWithin(ref.of, places);
    const { spot } = vertex;
    const to = spot.by === 'finger' || spot.by === 'coordinates' ? { x: spot.x, y: spot.y } : undefined;
    const longer = vertices.toSpliced(index + 1, 0, vertex);
    return holdPlaces(vertices, longer, placeOf, (v) => (v.id === vertex.id ? to : placeOf(v)));
  });

/**
 * Takes a point out of a line or an outline; what was measured from it stays where it is, as put there by eye, and a curve that began
 * there begins at the point before it. An outline that was balanced is so no longer. Throws a RangeError when too few points would be
 * left: ask `fewestVertices`, and take the whole thing out instead.
 */
export const removeVertex: Edit<{ ref: Ref; places: Places }> = (site, { ref, places }) => {
  const owner = pointOwners(site).find((o) => o.id === ref.of);
  if (owner !== undefined && owner.vertices.length <= fewestVertices(owner)) {
    throw new RangeError(`removeVertex: ${ref.of} has ${owner.vertices.length} points and needs them`);
  }
  const freed = releaseFrom(site, (other) => refKey(other) === refKey(ref), places);
  const without = withVertices(unbalanced(freed, ref.of, places), ref.of, (vertices) => {
    const placeOf = placesWithin(ref.of, places);
    const shorter = vertices.toSpliced(vertexIndex(vertices, ref), 1);
    return holdPlaces(vertices, shorter, placeOf, placeOf);
  });
  return releaseSetAside(without);
};

/** A vertex id that the owner does not use yet: a…z, then aa, ab and so on. */
export function freeVertexId(vertices: readonly { readonly id: string }[]): string {
  const used = new Set(vertices.map((v) => v.id));
  for (let n = 0; ; n++) {
    const name = letters(n).toLowerCase();
    if (!used.has(name)) return name;
  }
}

/** A, B … Z, AA, AB … for 0, 1, … */
export function letters(n: number): string {
  return n < 26 ? String.fromCharCode(65 + n) : letters(Math.floor(n / 26) - 1) + letters(n % 26);
}

/**
 * Frees every spot that is measured from a point for which `gone` holds: it becomes a place by eye, where the point is now, so
 * that nothing jumps and no name leads nowhere. The frame and the pictures are freed as well, see `releaseSiteRefs`.
 */
export function releaseFrom(site: Site, gone: (ref: Ref) => boolean, places: Places): Site {
  const freed = (owner: PointOwner, v: PathVertex): PathVertex => {
    const place = places.get(refKey({ of: owner.id, at: v.id }))?.at;
    return place !== undefined && refsOfSpot(v.spot).some(gone)
      ? { ...v, spot: { by: 'finger', x: place.x, y: place.y } }
      : v;
  };
  return releaseSiteRefs(mapVertices(site, freed), gone, places);
}

function mapVertices(site: Site, change: (owner: PointOwner, vertex: PathVertex) => PathVertex): Site {
  return {
    ...site,
    features: site.features.map((f) => {
      const vertices = f.vertices.map((v) => change(f, v));
      return vertices.every((v, i) => v === f.vertices[i]) ? f : { ...f, vertices };
    }),
    paths: site.paths.map((p) => {
      const vertices = p.vertices.map((v) => change(p, v));
      return vertices.every((v, i) => v === p.vertices[i]) ? p : { ...p, vertices };
    }),
  };
}

function vertexIndex(vertices: readonly Vertex[], ref: Ref): number {
  const index = vertices.findIndex((v) => v.id === ref.at);
  return index < 0 ? unknown('point', refKey(ref)) : index;
}

/**
 * Changes the vertices of a feature or a path. An outline whose first or last point becomes another loses its closing course, which
 * led from the one to the other.
 */
export function withVertices(
  site: Site,
  id: string,
  change: (vertices: readonly PathVertex[]) => PathVertex[],
): Site {
  const owner = pointOwners(site).find((o) => o.id === id) ?? unknown('thing', id);
  return isPath(owner)
    ? {
        ...site,
        paths: site.paths.map((p) => (p.id === id ? { ...p, vertices: change(p.vertices) } : p)),
      }
    : {
        ...site,
        features: site.features.map((f) => (f.id === id ? withCorners(f, change(f.vertices)) : f)),
      };
}

function withCorners(feature: Feature, vertices: Vertex[]): Feature {
  const same = [0, -1].every((end) => vertices.at(end)?.id === feature.vertices.at(end)?.id);
  if (same || feature.closing === undefined) return { ...feature, vertices };
  const { closing: _, balance: __, ...open } = feature;
  return { ...open, vertices };
}
