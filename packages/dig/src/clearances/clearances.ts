import type { Derived, Site } from '@footmark/site';
import { type Required, requiredOn } from './clearanceRule';
import type { DigOutline } from './digOutline';
import { type ClearanceVerdict, clearanceTo, type EdgeClearance } from './edgeClearance';
import { type FeatureIndex, featureIndex } from './featureIndex';
import { type Subject, subjectsOf } from './subject';

export type ClearanceOptions = {
  readonly outlines?: readonly DigOutline[];
  /** Features further off than this (m) are left out; absent: that no rule asks about and that are not `nearby`. */
  readonly reach?: number;
};

/** Between every path, mark and outline of a site and every feature that something keeps clear of, the worst first. */
export function clearances(
  site: Site,
  derived: Derived,
  { outlines = [], reach }: ClearanceOptions = {},
): readonly EdgeClearance[] {
  const index = featureIndex(derived.features.values());
  const required = requiredOn(site);
  return worstFirst(
    subjectsOf(derived, outlines).flatMap((subject) => clearancesFrom(subject, index, required, reach)),
  );
}

/** Of one subject to the features that are nearer than `reach` (m; absent: that are worth listing), in the order of the site. */
export function clearancesFrom(
  subject: Subject,
  index: FeatureIndex,
  required: Required,
  reach?: number,
): EdgeClearance[] {
  const found: EdgeClearance[] = [];
  for (const feature of index.near(subject.table, reach ?? required.widest)) {
    const clearance = clearanceTo(subject, feature, required, reach);
    if (clearance !== null) found.push(clearance);
  }
  return found;
}

const RANK: Record<ClearanceVerdict, number> = { misses: 0, 'by-depth': 1, crosses: 2, serves: 3, meets: 3 };

/** Rules that are missed first, by how much; then what depths or the land decide; then all others by distance. */
export function worstFirst(found: readonly EdgeClearance[]): readonly EdgeClearance[] {
  const ranks: [EdgeClearance[], EdgeClearance[], EdgeClearance[], EdgeClearance[]] = [[], [], [], []];
  for (const one of found) ranks[one.verdict === null ? RANK.meets : RANK[one.verdict]]?.push(one);
  const [missed, ...others] = ranks;
  missed.sort((a, b) => a.distance - (a.required ?? 0) - (b.distance - (b.required ?? 0)));
  for (const one of others) one.sort((a, b) => a.distance - b.distance);
  return missed.concat(...others);
}
