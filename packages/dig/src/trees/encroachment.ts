import { ruleValue, type SiteRules } from '@footmark/site';

/** AS 4970-2009, 3.3.2 and 3.3.3: what the loss of a share of the tree protection zone is. */
export type Encroachment = 'none' | 'minor' | 'major';

/** Shares that differ from the limit by less are at it. */
const AT_LIMIT = 1e-9;

/** `structural`: the structural root zone is cut. */
export function encroachmentOf(
  site: { readonly rules: SiteRules },
  share: number,
  structural: boolean,
): Encroachment {
  if (structural || share > ruleValue(site, 'minorEncroachment') + AT_LIMIT) return 'major';
  return share > 0 ? 'minor' : 'none';
}
