import type { FeatureOf } from '../document/feature';

/** With more stems than this the mean counts for each (BS 5837:2012, 4.6.1). */
const MOST_STEMS_COUNTED_EACH = 5;

/**
 * The one stem diameter (m) that a tree counts with: of several stems the equivalent, √(Σ d²) for two to five and √(mean² · n) for
 * more (BS 5837:2012, 4.6.1 a and b; the second from memory); else the trunk's. Null when neither was measured. The clearance to a
 * tree of several stems is to a round trunk of this diameter about its point, as the stems' own places are not known.
 */
export function stemDiameterOf({ fields }: FeatureOf<'tree'>): number | null {
  const stems = fields.stemDiameters;
  if (stems === undefined || stems.length === 0) return fields.trunkDiameter ?? null;
  if (stems.length <= MOST_STEMS_COUNTED_EACH) return Math.hypot(...stems);
  const mean = stems.reduce((sum, d) => sum + d, 0) / stems.length;
  return Math.sqrt(mean ** 2 * stems.length);
}
