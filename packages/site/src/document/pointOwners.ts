import type { Feature } from './feature';
import type { Path } from './path';
import type { Site } from './site';
import type { Ref, Vertex } from './spot';

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
