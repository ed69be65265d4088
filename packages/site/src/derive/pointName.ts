import type { PointOwner } from '../document/pointOwners';
import type { Ref } from '../document/spot';

/** What people call a point: the thing's name or id, and which of its points. */
export function pointName(owners: ReadonlyMap<string, PointOwner>, ref: Ref): string {
  const owner = owners.get(ref.of);
  const name = owner === undefined || owner.name === '' ? ref.of : owner.name;
  return owner !== undefined && owner.vertices.length > 1 ? `${name} ${ref.at.toUpperCase()}` : name;
}
