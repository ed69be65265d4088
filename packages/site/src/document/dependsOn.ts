import { pointOwners, refKey, vertexOf } from './pointOwners';
import type { Site } from './site';
import { countedFrom, type Ref, refsOfSpot } from './spot';

/** Whether the place of `point` follows, over any number of steps, from the place of `on`; a point follows from itself. */
export function dependsOn(site: Site, point: Ref, on: Ref): boolean {
  const owners = new Map(pointOwners(site).map((o) => [o.id, o]));
  const wanted = refKey(on);
  const seen = new Set<string>();
  const ahead: Ref[] = [point];
  for (let ref = ahead.pop(); ref !== undefined; ref = ahead.pop()) {
    const key = refKey(ref);
    if (key === wanted) return true;
    if (seen.has(key)) continue;
    seen.add(key);
    const owner = owners.get(ref.of);
    const vertex = owner === undefined ? undefined : vertexOf(owner, ref.at);
    if (owner === undefined || vertex === undefined) continue;
    ahead.push(...refsOfSpot(vertex.spot));
    const index = owner.vertices.indexOf(vertex);
    const before = owner.vertices.slice(Math.max(0, index - countedFrom(vertex.spot)), index);
    ahead.push(...before.map((v) => ({ of: owner.id, at: v.id })));
  }
  return false;
}
