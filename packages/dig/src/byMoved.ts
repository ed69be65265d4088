import { type Derived, deriveProfiles, type Places, type Site } from '@footmark/site';
import { clearanceFindings } from './clearances/clearanceFindings';
import { requiredOn } from './clearances/clearanceRule';
import { clearancesFrom, worstFirst } from './clearances/clearances';
import { type DigOutline, withKnownEdge } from './clearances/digOutline';
import { clearanceTo, type EdgeClearance } from './clearances/edgeClearance';
import { featureIndex } from './clearances/featureIndex';
import { pathSubject, subjectsOf } from './clearances/subject';
import { mostPressingFirst } from './digFinding';
import { digsOver } from './excavation/digsOver';
import type { Excavation } from './excavation/excavation';
import { servicesIn } from './services/handDig';
import { servicesOf } from './services/servicesOf';
import type { AnyDigFinding } from './standsInTheWay';
import { treeEncroachments } from './trees/treeEncroachments';
import type { TreeZones } from './trees/treeZones';

/** What concerns things that are being moved. */
export type ByMoved = {
  /** To each of them from every pipe and dig that stays, however far, and marks near by; from each pipe among them to all that is near, moved or not. The worst first. */
  readonly clearances: readonly EdgeClearance[];
  /** Of the trees among them. */
  readonly trees: readonly TreeZones[];
  /** The most pressing first. */
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
 * Begins to tell what concerns some features and paths while a hand moves them, from places as they come. It is told for these things alone,
 * so that it keeps up with the hand; digs and all else stay as they were when it began.
 */
export function whileMoved(
  site: Site,
  derived: Derived,
  ids: ReadonlySet<string>,
  digs: { readonly outlines: readonly DigOutline[]; readonly excavations: readonly Excavation[] },
): (places: Places) => ByMoved {
  const required = requiredOn(site);
  const staying = subjectsOf(derived, withKnownEdge(digs.outlines)).filter(
    ({ of }) => of.is !== 'path' || !ids.has(of.id),
  );
  const index = featureIndex(only(derived.features, ids, false).values());
  return (places) => {
    const { profiles } = deriveProfiles({ ...derived, ...places, site });
    const now = { ...derived, ...places, profiles };
    const features = only(places.features, ids);
    const paths = only(places.paths, ids);
    // each pair is told once: all paths beside moved things, moved paths beside those that stay
    const toMoved = { ...now, features };
    const ofPaths = { ...now, paths, features: only(places.features, ids, false) };
    const subjects = [...paths.values()].map(pathSubject);
    const toThings = [...features.values()].flatMap((feature) => [
      ...staying.flatMap((subject) => {
        const reach = subject.of.is === 'mark' ? undefined : Infinity;
        return clearanceTo(subject, feature, required, reach) ?? [];
      }),
      ...subjects.flatMap((subject) => clearanceTo(subject, feature, required) ?? []),
    ]);
    const fromPipes = subjects.flatMap((subject) => clearancesFrom(subject, index, required));
    const trees = treeEncroachments(site, toMoved, digs.excavations);
    const roots = paths.size === 0 ? [] : treeEncroachments(site, ofPaths, []).findings;
    return {
      clearances: worstFirst([...toThings, ...fromPipes]),
      trees: trees.trees,
      findings: mostPressingFirst([
        ...digsOver(site, features, places.features, digs.excavations),
        ...ofServices(site, toMoved, digs.outlines),
        ...trees.findings,
        ...roots.filter((f) => f.code === 'pipe-in-root-zone'),
        ...clearanceFindings(site, toMoved, worstFirst(toThings)),
        ...clearanceFindings(site, ofPaths, worstFirst(fromPipes)),
      ]),
    };
  };
}

/** What is said of services among what is moved; the ticket is no matter of theirs. */
function ofServices(site: Site, moved: Derived, outlines: readonly DigOutline[]): readonly AnyDigFinding[] {
  if (servicesIn(moved).length === 0) return [];
  return servicesOf(site, moved, outlines, '').findings.filter(({ at }) => at.kind !== 'site');
}
