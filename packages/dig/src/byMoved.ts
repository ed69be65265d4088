import { type Derived, deriveProfiles, type Places, type Site } from '@footmark/site';
import { clearanceFindings } from './clearances/clearanceFindings';
import { requiredOn } from './clearances/clearanceRule';
import { clearancesFrom, worstFirst } from './clearances/clearances';
import { withKnownEdge } from './clearances/digOutline';
import { clearanceTo, type EdgeClearance } from './clearances/edgeClearance';
import { featureIndex } from './clearances/featureIndex';
import { pathSubject, subjectsOf } from './clearances/subject';
import { featuresOf } from './concerns';
import { mostPressingFirst } from './digFinding';
import { drainChecks } from './drain/drainChecks';
import { digsOver } from './excavation/digsOver';
import { landOf } from './land/landOf';
import { servicesOf } from './services/servicesOf';
import type { AnyDigFinding, InTheWay } from './standsInTheWay';
import { treeEncroachments } from './trees/treeEncroachments';
import type { TreeZones } from './trees/treeZones';

/** What stands in the way while things are being moved. */
export type ByMoved = {
  /** To each of them from every pipe and dig that stays, however far, and marks near by; from each pipe among them to all that is near, moved or not. The worst first. */
  readonly clearances: readonly EdgeClearance[];
  /** Of the trees among them. */
  readonly trees: readonly TreeZones[];
  /** What concerns them told anew, and all else as it was before; the most pressing first. */
  readonly findings: readonly AnyDigFinding[];
};

/** Of these only those that are moved, or only those that stay. */
function only<Value>(
  all: ReadonlyMap<string, Value>,
  ids: ReadonlySet<string>,
  moved = true,
): ReadonlyMap<string, Value> {
  return new Map([...all].filter(([id]) => ids.has(id) === moved));
}

/**
 * Begins to tell what concerns some features and paths while a hand moves them, from places as they come. It keeps up with the hand as
 * digs, and what is said of all else, stay as they were when it began: `before`.
 */
export function whileMoved(
  site: Site,
  derived: Derived,
  ids: ReadonlySet<string>,
  before: Pick<InTheWay, 'excavations' | 'outlines' | 'findings'>,
): (places: Places) => ByMoved {
  const required = requiredOn(site);
  const staying = subjectsOf(derived, withKnownEdge(before.outlines)).filter(
    ({ of }) => of.is !== 'path' || !ids.has(of.id),
  );
  const index = featureIndex(only(derived.features, ids, false).values());
  return (places) => {
    const { profiles } = deriveProfiles({ ...derived, ...places, site });
    const now = { ...derived, ...places, profiles };
    const features = only(places.features, ids);
    const paths = only(places.paths, ids);
    const subjects = [...paths.values()].map(pathSubject);
    const toThings = [...features.values()].flatMap((feature) => [
      ...staying.flatMap((subject) => {
        const reach = subject.of.is === 'mark' ? undefined : Infinity;
        return clearanceTo(subject, feature, required, reach) ?? [];
      }),
      ...subjects.flatMap((subject) => clearanceTo(subject, feature, required) ?? []),
    ]);
    const fromPipes = subjects.flatMap((subject) => clearancesFrom(subject, index, required));
    const clearances = worstFirst([...toThings, ...fromPipes]);
    // each pair is told once: moved things beside all paths, those that stay beside moved paths
    const ofThings = { ...now, features };
    const ofPaths = { ...now, paths, features: only(places.features, ids, false) };
    const trees = treeEncroachments(site, ofThings, before.excavations);
    const anew: readonly AnyDigFinding[] = [
      ...servicesOf(site, ofThings, before.outlines, '').findings,
      ...servicesOf(site, ofPaths, [], '').findings,
      ...digsOver(site, features, places.features, before.excavations),
      ...trees.findings,
      ...treeEncroachments(site, ofPaths, []).findings,
      ...clearanceFindings(site, now, clearances),
      ...landOf(now).findings,
      ...drainChecks(site, now).findings,
    ];
    return {
      clearances,
      trees: trees.trees,
      findings: mostPressingFirst([
        ...anew.filter((f) => isOf(f, ids)),
        ...before.findings.filter((f) => !isOf(f, ids)),
      ]),
    };
  };
}

/** Whether a finding is told anew for things under a hand: of a dig, which stays as it was, only what it does to them. */
function isOf(finding: AnyDigFinding, ids: ReadonlySet<string>): boolean {
  const { values } = finding;
  if ('dig' in values)
    return ('feature' in values && ids.has(values.feature)) || ('tree' in values && ids.has(values.tree));
  return featuresOf(finding).some((id) => ids.has(id)) || ('path' in values && ids.has(values.path));
}
