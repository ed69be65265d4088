import { type Feature, fewestFeatureVertices } from './feature';
import { FEWEST_PATH_VERTICES, type Path } from './path';
import type { Site } from './site';
import { countedFrom, type Ref, refsOfSpot, type Vertex } from './spot';

/** Anything with points that others can be measured from. */
export type PointOwner = Feature | Path;

/** Features and paths, in the order of the file. */
export function pointOwners(site: Site): readonly PointOwner[] {
  return [...site.features, ...site.paths];
}

export function isPath(owner: PointOwner): owner is Path {
  return !('kind' in owner);
}

/** One text for one point, for use as a map's key. */
export function refKey(ref: Ref): string {
  return `${ref.of}/${ref.at}`;
}

export function vertexOf(owner: PointOwner, at: string): Vertex | undefined {
  return owner.vertices.find((v) => v.id === at);
}

/** The points, as `refKey`s, that the place of one vertex follows from: those it names and those it is counted from. */
export function neededPoints(owner: PointOwner, index: number): readonly string[] {
  const v = owner.vertices[index];
  if (v === undefined) return [];
  const before = owner.vertices.slice(Math.max(0, index - countedFrom(v.spot)), index);
  return [...refsOfSpot(v.spot), ...before.map((b) => ({ of: owner.id, at: b.id }))].map(refKey);
}

/** With fewer vertices than this a line or an outline is none. */
export function fewestVertices(owner: PointOwner): number {
  return isPath(owner) ? FEWEST_PATH_VERTICES : fewestFeatureVertices(owner.kind);
}
