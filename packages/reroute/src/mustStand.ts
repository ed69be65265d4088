import type { Relaxation } from '@footmark/route';
import type { FeatureKind, Site } from '@footmark/site';

/** No pipe is laid through these, whoever allows it (common practice, no source). */
const STANDING: ReadonlySet<FeatureKind> = new Set([
  'building',
  'shed',
  'tree',
  'well',
  'septic-tank',
  'manhole',
  'main',
]);
/** What services carry that can be moved out of the way; what one carries may not be known. */
const MOVABLE: ReadonlySet<unknown> = new Set(['water', 'reclaimed-water', 'storm-drain', 'communication']);
/** Less room to these is for others to allow: to what stands, to drinking water, to the roots that hold a tree up. */
const GUARDED: ReadonlySet<FeatureKind> = new Set(['building', 'shed', 'well', 'tree']);

/** Whether a route that goes through an obstacle is not even to be tried. */
export function mustStand(obstacle: string, { features }: Site): boolean {
  const feature = features.find((f) => f.id === obstacle);
  if (feature === undefined) return false;
  if (feature.kind === 'service' || feature.kind === 'meter') return !MOVABLE.has(feature.fields.carries);
  return STANDING.has(feature.kind);
}

/** Whether somebody else has to allow a change before it can be made. */
export function isToBeAsked(change: Relaxation['change'], { features }: Site): boolean {
  if (change.is !== 'less-clearance') return false;
  return features.some((f) => f.id === change.obstacle && GUARDED.has(f.kind));
}
