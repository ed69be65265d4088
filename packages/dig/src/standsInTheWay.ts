import type { Derived, RunsFit, Site } from '@footmark/site';
import type { ClearanceFinding } from './clearances/clearanceFinding';
import { clearanceFindings } from './clearances/clearanceFindings';
import { clearances } from './clearances/clearances';
import { type DigOutline, withKnownEdge } from './clearances/digOutline';
import type { EdgeClearance } from './clearances/edgeClearance';
import { mostPressingFirst } from './digFinding';
import { type DrainChecks, drainChecks } from './drain/drainChecks';
import type { DrainFinding } from './drain/drainFinding';
import { digOutlines } from './excavation/digOutlines';
import type { Excavation } from './excavation/excavation';
import type { ExcavationFinding } from './excavation/excavationFinding';
import { excavationsOf } from './excavation/excavationsOf';
import type { Land } from './land/land';
import type { LandFinding } from './land/landFinding';
import { landOf } from './land/landOf';
import { type Lazy, lazily } from './lazily';
import type { ServiceFinding } from './services/serviceFinding';
import { type Services, servicesOf } from './services/servicesOf';
import { type WhiteLine, whiteLines } from './services/whiteLines';
import { type TreeEncroachments, treeEncroachments } from './trees/treeEncroachments';
import type { TreeFinding } from './trees/treeFinding';

/** Everything that this package finds. */
export type AnyDigFinding =
  | ClearanceFinding
  | DrainFinding
  | ExcavationFinding
  | LandFinding
  | ServiceFinding
  | TreeFinding;

/** What stands in the way on a site: its planned digs, its trees, what is near, and all that is to be said of it. */
export type InTheWay = {
  readonly excavations: readonly Excavation[];
  /** The ground that the digs take. */
  readonly outlines: readonly DigOutline[];
  readonly trees: TreeEncroachments;
  /** From every pipe, mark and dig whose depth is known to everything that a rule asks about or that is near, the worst first. */
  readonly clearances: readonly EdgeClearance[];
  readonly land: Land;
  readonly services: Services;
  readonly drains: DrainChecks;
  readonly whiteLines: readonly WhiteLine[];
  /** What must be done first, then what should be looked at, then notes; of each the one-call ticket and services first: they wait longest and hurt most. */
  readonly findings: readonly AnyDigFinding[];
};

/**
 * What stands in the way, each part computed when it is first asked for. Pits that do not say how large they are follow the holes of the
 * fit; without one they have no size, and a finding says so. `today`: an ISO day, which the one-call ticket is held against.
 */
export function standsInTheWay(site: Site, derived: Derived, fit: RunsFit | null, today: string): InTheWay {
  const parts: Lazy<InTheWay> = {
    excavations: () => excavationsOf(site, derived, holesOf(fit)),
    outlines: () => digOutlines(all.excavations),
    trees: () => treeEncroachments(site, derived, all.excavations),
    clearances: () => clearances(site, derived, { outlines: withKnownEdge(all.outlines) }),
    land: () => landOf(derived),
    services: () => servicesOf(site, derived, all.outlines, today),
    drains: () => drainChecks(site, derived),
    whiteLines: () => whiteLines(site, derived, all.outlines),
    findings: () =>
      mostPressingFirst([
        ...all.services.findings,
        ...all.excavations.flatMap((e) => e.findings),
        ...all.trees.findings,
        ...clearanceFindings(site, derived, all.clearances),
        ...all.land.findings,
        ...all.drains.findings,
      ]),
  };
  const all = lazily(parts);
  return all;
}

function holesOf(fit: RunsFit | null) {
  return new Map([...(fit?.marks ?? [])].map(([reading, { zone }]) => [reading, zone.hole]));
}
