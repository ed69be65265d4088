import { isPath, type PointOwner, type Target } from '@footmark/site';

/** What is selected when a feature or a path is. */
export function targetOf(owner: PointOwner): Extract<Target, { kind: 'feature' | 'path' }> {
  return { kind: isPath(owner) ? 'path' : 'feature', id: owner.id };
}
