import type { Derived, Places, Site } from '@footmark/site';
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
  /** To each of them from every pipe and dig that stays, however far, and marks near by; from each pipe among them to all that is near. The worst first. */
  readonly clearances: readonly EdgeClearance[];
  /** Of the trees among them. */
  readonly trees: readonly TreeZones[];
  /** The most pressing first. */
  readonly findings: readonly AnyDigFinding[];
};

/** Of these only those that are moved. */
function only<Value>(all: ReadonlyMap<string, Value>, ids: ReadonlySet<string>): ReadonlyMap<string, Value> {
  return new Map([...all].filter(([id]) => ids.has(id)));
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
  const index = featureIndex([...derived.features.values()].filter(({ feature }) => !ids.has(feature.id)));
  return (places) => {
    const now = { ...derived, ...places };
    const features = only(places.features, ids);
    const paths = only(places.paths, ids);
    const toThings = [...features.values()].flatMap((feature) =>
      staying.flatMap((subject) => {
        const reach = subject.of.is === 'mark' ? undefined : Infinity;
        return clearanceTo(subject, feature, required, reach) ?? [];
      }),
    );
    const fromPipes = [...paths.values()].flatMap((on) => clearancesFrom(pathSubject(on), index, required));
    const trees = treeEncroachments(site, { ...now, features }, digs.excavations);
    const roots = paths.size === 0 ? [] : treeEncroachments(site, { ...now, paths }, []).findings;
    return {
      clearances: worstFirst([...toThings, ...fromPipes]),
      trees: trees.trees,
      findings: mostPressingFirst([
        ...digsOver(site, features, places.features, digs.excavations),
        ...ofServices(site, { ...now, features }, digs.outlines),
        ...trees.findings,
        ...roots.filter((f) => f.code === 'pipe-in-root-zone'),
        ...clearanceFindings(site, { ...now, features }, worstFirst(toThings)),
        ...clearanceFindings(site, { ...now, paths }, worstFirst(fromPipes)),
      ]),
    };
  };
}

/** What is said of services among what is moved; the ticket is no matter of theirs. */
function ofServices(site: Site, moved: Derived, outlines: readonly DigOutline[]): readonly AnyDigFinding[] {
  if (servicesIn(moved).length === 0) return [];
  return servicesOf(site, moved, outlines, '').findings.filter(({ at }) => at.kind !== 'site');
}
