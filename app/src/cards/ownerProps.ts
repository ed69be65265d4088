import type { PointOwner } from '@footmark/site';

/** A feature or a path, and whether its last point leads back to its first. */
export type OwnerProps = { readonly owner: PointOwner; readonly closed: boolean };
