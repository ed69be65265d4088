import { pointOwners, type Target } from '@footmark/site';
import { handlesOf, type Marquee, type Overlay } from './overlay';

/** Features and paths all of whose points lie in a box. */
export function thingsInBox({ site, derived }: Overlay, { from, to }: Marquee): readonly Target[] {
  const [minX, maxX] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const [minY, maxY] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
  return pointOwners(site).flatMap((owner): Target[] => {
    const handles = handlesOf(site, derived, owner.id);
    const inside = handles.every(({ at }) => at.x >= minX && at.x <= maxX && at.y >= minY && at.y <= maxY);
    if (handles.length === 0 || !inside) return [];
    return [{ kind: 'kind' in owner ? 'feature' : 'path', id: owner.id }];
  });
}
