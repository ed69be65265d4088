import {
  clearances,
  type DigOutline,
  type DigSeverity,
  digOutlines,
  type EdgeClearance,
  type Excavation,
  excavationsOf,
  type Holes,
  type TreeEncroachments,
  treeEncroachments,
} from '@footmark/dig';
import type { RunsFit, Site } from '@footmark/site';
import type { AnyDigFinding } from '@footmark/words';
import { useFit } from '../fit/fitSession';
import { derivedFrom, useSite } from '../session/siteSession';

/** What stands in the way on a site: its planned digs, its trees, what is near, and all that is to be said of it. */
export type Digging = {
  readonly excavations: readonly Excavation[];
  /** What the digs take at the top; one whose depth is not known is missing. */
  readonly outlines: readonly DigOutline[];
  readonly trees: TreeEncroachments;
  /** From every pipe, mark and dig to everything that a rule asks about or that is near, the worst first. */
  readonly clearances: readonly EdgeClearance[];
  /** What must be done first, then what should be looked at, then notes. */
  readonly findings: readonly AnyDigFinding[];
};

const RANK: Record<DigSeverity, number> = { must: 0, should: 1, note: 2 };

const diggingOf = new WeakMap<Site, { readonly fit: RunsFit | null; readonly digging: Digging }>();

/**
 * What stands in the way, computed once for each state of a site and each fit of it. Pits that do not say how large they are follow the
 * holes of the fit; without one they have no size, and a finding says so.
 */
export function diggingFrom(site: Site, fit: RunsFit | null): Digging {
  const known = diggingOf.get(site);
  if (known !== undefined && known.fit === fit) return known.digging;
  const digging = compute(site, fit);
  diggingOf.set(site, { fit, digging });
  return digging;
}

/** What stands in the way on the open site. */
export function useDigging(): Digging {
  const site = useSite();
  const { fit } = useFit();
  return diggingFrom(site, fit);
}

function compute(site: Site, fit: RunsFit | null): Digging {
  const derived = derivedFrom(site);
  const excavations = excavationsOf(site, derived, holesOf(fit));
  const outlines = digOutlines(excavations);
  const trees = treeEncroachments(site, derived, excavations);
  const found: readonly AnyDigFinding[] = [...excavations.flatMap((e) => e.findings), ...trees.findings];
  return {
    excavations,
    outlines,
    trees,
    clearances: clearances(site, derived, { outlines }),
    findings: found.toSorted((a, b) => RANK[a.severity] - RANK[b.severity]),
  };
}

function holesOf(fit: RunsFit | null): Holes {
  return new Map([...(fit?.marks ?? [])].map(([reading, { zone }]) => [reading, zone.hole]));
}
