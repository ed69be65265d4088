import {
  azimuthBetween,
  COINCIDENT_M,
  distance,
  type Point,
  radiusOfArc,
  signedAngle,
} from '@footmark/geometry';
import { isBalanced } from '../derive/closing';
import type { Feature } from '../document/feature';
import type { PathVertex } from '../document/path';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { countedFrom, type Spot, type Vertex } from '../document/spot';

/** Present places of points, by `of/at`. */
export type Places = ReadonlyMap<string, { readonly at: Point }>;

/** Radians: directions this close are the same but for rounding; over a kilometre they part by a micrometre. */
const SAME_HEADING_RAD = 1e-9;

type PlaceOf = (vertex: { readonly id: string }) => Point | undefined;

/** The present places of one thing's vertices. */
export function placesWithin(owner: string, places: Places): PlaceOf {
  return (vertex) => places.get(refKey({ of: owner, at: vertex.id }))?.at;
}

/**
 * A spot that has the point at `at` whatever it was measured from: a curve from `from` stays one of its sweep, with the radius and
 * the chord that its ends now have; all else is a place by eye, and so is a curve without a start or with its ends at one place.
 */
export function spotAt(at: Point, spot: Spot, from: Point | undefined): Spot {
  const chord = from === undefined ? 0 : distance(from, at);
  if (spot.by !== 'arc' || from === undefined || chord < COINCIDENT_M) {
    return { by: 'finger', x: at.x, y: at.y };
  }
  return {
    by: 'arc',
    radius: radiusOfArc(chord, spot.sweep),
    sweep: spot.sweep,
    chord: azimuthBetween(from, at),
  };
}

/**
 * The vertices of a line after an edit, with every one that the edit did not mean where it was: one that is counted from a point or
 * from a direction that is no longer the same is put there by `spotAt`. `placeBefore` and `placeAfter` give the places before the edit
 * and those meant after it; a vertex is meant to change when they differ.
 */
export function holdPlaces(
  before: readonly PathVertex[],
  after: readonly PathVertex[],
  placeBefore: PlaceOf,
  placeAfter: PlaceOf,
): PathVertex[] {
  const held: PathVertex[] = [];
  const indexBefore = new Map(before.map((v, i) => [v.id, i]));
  for (const [i, vertex] of after.entries()) {
    const at = placeAfter(vertex);
    const was = indexBefore.get(vertex.id) ?? -1;
    const counts = countedFrom(vertex.spot);
    const meant = was === -1 || at === undefined || at !== placeBefore(vertex);
    const sameStart = start(held, i, placeAfter) === start(before, was, placeBefore);
    const sameHeading = agree(arrival(held, i - 1, placeAfter), arrival(before, was - 1, placeBefore));
    const stands = counts === 0 || (counts === 1 ? sameStart : sameStart && sameHeading);
    held.push(
      meant || stands ? vertex : { ...vertex, spot: spotAt(at, vertex.spot, start(held, i, placeAfter)) },
    );
  }
  return held;
}

function start(vertices: readonly Vertex[], index: number, placeOf: PlaceOf): Point | undefined {
  const from = vertices[index - 1];
  return from === undefined ? undefined : placeOf(from);
}

function agree(a: number | undefined, b: number | undefined): boolean {
  return a === b || (a !== undefined && b !== undefined && Math.abs(signedAngle(a - b)) < SAME_HEADING_RAD);
}

/** The azimuth in which a line comes to its vertex: of the leg to it, or of the tangent at the end of the curve. */
function arrival(vertices: readonly Vertex[], index: number, placeOf: PlaceOf): number | undefined {
  const [from, vertex] = [start(vertices, index, placeOf), vertices[index]];
  const at = vertex === undefined ? undefined : placeOf(vertex);
  if (from === undefined || at === undefined || vertex === undefined) return undefined;
  return azimuthBetween(from, at) + (vertex.spot.by === 'arc' ? vertex.spot.sweep / 2 : 0);
}

/**
 * A site in which the misclosure of an outline is no longer shared out: its corners stand where that had brought them, no longer as
 * measured. Any other thing is left as it is.
 */
export function unbalanced(site: Site, id: string, places: Places): Site {
  const feature = site.features.find((f) => f.id === id);
  if (feature?.balance === undefined) return site;
  const { balance: _, ...rest } = feature;
  const kept = isBalanced(feature) ? { ...rest, vertices: standing(feature, places) } : rest;
  return { ...site, features: site.features.map((f) => (f === feature ? (kept as Feature) : f)) }; // the kind is unchanged
}

function standing(feature: Feature, places: Places): Vertex[] {
  const placeOf = placesWithin(feature.id, places);
  return feature.vertices.map((v, i) => {
    const at = placeOf(v);
    return i === 0 || at === undefined
      ? v
      : { ...v, spot: spotAt(at, v.spot, start(feature.vertices, i, placeOf)) };
  });
}
