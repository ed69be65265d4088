import type { TakenFit } from '../document/fit';
import type { Site } from '../document/site';
import { observationName } from '../fit/observationTag';
import { accuracyOf, type CheckPoint, type SiteAccuracy } from './accuracy';
import { agreementsOf, type PairAgreement } from './agreement';
import { obstacleGroups } from './clearances';
import { type SeenStretch, seenByRun } from './coverage';
import { type DerivedFrame, deriveFrame } from './deriveFrame';
import { derivePlaces, type Places } from './derivePlaces';
import type { Finding, Severity } from './finding';
import { sayOfFinds } from './foundFindings';
import { type FoundPlace, foundPlaces, latestFinds } from './foundPlaces';
import { type Locate, locatesOf } from './locates';
import { type LookedStretch, lookedAtPaths } from './lookedAt';
import { type Mark, marksOfRun } from './marks';
import { type PairSuggestion, pairSuggestions } from './pairSuggestions';
import type { PathProfile } from './profileAt';
import { deriveProfiles } from './profiles';
import { sayOfReach } from './reach';
import { type ReferencePoint, referenceIndex } from './references';
import { type RunRoute, runRoute } from './runRoute';
import { correctionsOf, standingFit } from './standingFit';
import { type DerivedUnderlay, deriveUnderlays } from './underlayTransform';
import { type UnseenGap, unseenGaps } from './unseen';

/** Everything that follows from a site: the one source of every screen, sheet and file. */
export type Derived = Places & {
  readonly frame: DerivedFrame;
  /** By id; a picture that cannot be fitted is missing. */
  readonly underlays: ReadonlyMap<string, DerivedUnderlay>;
  readonly references: readonly ReferencePoint[];
  /** By run id; a run without a way through the paths is missing. */
  readonly routes: ReadonlyMap<string, RunRoute>;
  /** In the order of runs and readings. */
  readonly marks: readonly Mark[];
  /** What each run saw. */
  readonly coverage: readonly SeenStretch[];
  /** By path that is in the ground: its whole length by the runs that saw each piece. */
  readonly lookedAt: ReadonlyMap<string, readonly LookedStretch[]>;
  /** The pieces that no run saw, path by path, with the flow. */
  readonly unseen: readonly UnseenGap[];
  /** Every path in elevation, by id. Computed when first asked for. */
  readonly profiles: ReadonlyMap<string, PathProfile>;
  /** Those whose reading has a place, in the order of the site. */
  readonly locates: readonly Locate[];
  /** How good the computation is on this site; null without a locate. */
  readonly accuracy: SiteAccuracy | null;
  /** What crews found, in the order of the site. */
  readonly found: readonly FoundPlace[];
  /** How good the computation is by what was laid bare at marks; null without. */
  readonly foundAccuracy: SiteAccuracy | null;
  /** How runs agree about what two of them saw; pairs that say nothing are left out. */
  readonly pairs: readonly PairAgreement[];
  /** Readings that could be paired, nearest first. Computed when first asked for. */
  readonly pairSuggestions: readonly PairSuggestion[];
  /** Errors first, then warnings, then notes; within each in the order of the site. Put together when first asked for, as those of levels follow from the profiles. */
  readonly findings: readonly Finding[];
};

const RANK: Record<Severity, number> = { error: 0, warning: 1, note: 2 };

/** Computes everything that follows from a site. Pure. */
export function derive(site: Site): Derived {
  const fit = standingFit(site);
  const { points, features, paths, findings: aboutPlaces } = derivePlaces(site, fit);
  const references = referenceIndex(site, features, points);
  const placed = [...features.values()];
  const setting = {
    site,
    paths,
    references,
    obstacles: obstacleGroups(placed),
    blocks: placed.filter((f) => f.spec.blocksTape),
    points,
    corrections: correctionsOf(fit),
  };
  const findings: Finding[] = [...aboutPlaces];
  const frame = deriveFrame(site, points, findings);
  const underlays = deriveUnderlays(site, points, findings);
  const routes = new Map<string, RunRoute>();
  const marks: Mark[] = [];
  const coverage: SeenStretch[] = [];
  for (const run of site.runs) {
    const route = runRoute(run, paths, features, site.entryReach, findings);
    const own = marksOfRun(run, route, setting, findings);
    marks.push(...own);
    if (route === null) continue;
    routes.set(run.id, route);
    coverage.push(...seenByRun(run.id, own, { routes, paths }));
  }
  const lookedAt = lookedAtPaths(paths, coverage);
  const locates = locatesOf(site, { features, paths, routes, marks, fit }, findings);
  const pairs = agreementsOf(site, { marks, paths }, findings);
  const found = foundPlaces(site, { points, paths, marks });
  sayOfFinds(found, findings);
  sayOfReach(site, { points, features, marks }, findings);
  let suggested: readonly PairSuggestion[] | null = null;
  let levels: ReturnType<typeof deriveProfiles> | null = null;
  let told: readonly Finding[] | null = null;
  const levelsOf = () => {
    levels ??= deriveProfiles({ site, features, paths, routes, marks });
    return levels;
  };
  return {
    points,
    features,
    paths,
    frame,
    underlays,
    references: references.all,
    routes,
    marks,
    coverage,
    lookedAt,
    unseen: unseenGaps(lookedAt, coverage),
    get profiles() {
      return levelsOf().profiles;
    },
    locates,
    accuracy: accuracyOf(locates),
    found,
    foundAccuracy: accuracyOf(checksOf(found, fit)),
    pairs,
    get pairSuggestions() {
      suggested ??= pairSuggestions(site, marks);
      return suggested;
    },
    get findings() {
      told ??= [...findings, ...levelsOf().findings].sort((a, b) => RANK[a.severity] - RANK[b.severity]);
      return told;
    },
  };
}

/** Marks that were laid bare, each once: nearer to the truth than any receiver. */
function checksOf(found: readonly FoundPlace[], fit: TakenFit | null): readonly CheckPoint[] {
  const weighed = new Set(fit?.evidence.map((e) => e.observation));
  return latestFinds(found).flatMap(({ record, at, sought }) =>
    record.about.is !== 'mark' || at === null || sought === null
      ? []
      : {
          found: at,
          computed: sought.at,
          // a find that is weighed is a locate of its id
          weighed: weighed.has(observationName({ is: 'locate', feature: record.id, part: 'along' })),
        },
  );
}
