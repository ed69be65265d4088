import type { Point } from '@footmark/geometry';
import type { Derived, EarthFit } from '@footmark/site';

/** What must be known of a site to place things in it; plain data, for a worker too. */
export type IncomingSite = {
  readonly toEarth: EarthFit | null;
  /** The middle of its yard (m); null for an empty one. */
  readonly middle: Point | null;
};

export function incomingSite({ frame, features }: Pick<Derived, 'frame' | 'features'>): IncomingSite {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { bounds } of features.values()) {
    minX = Math.min(minX, bounds.minX);
    minY = Math.min(minY, bounds.minY);
    maxX = Math.max(maxX, bounds.maxX);
    maxY = Math.max(maxY, bounds.maxY);
  }
  const middle = features.size === 0 ? null : { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  return { toEarth: frame.toEarth, middle };
}
