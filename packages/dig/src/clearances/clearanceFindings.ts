import { COINCIDENT_M, ringCrossesItself } from '@footmark/geometry';
import { type Derived, type Path, type RuleName, ruleOf, ruleValue, type Site } from '@footmark/site';
import type { DigSeverity } from '../digFinding';
import { alongWalls } from './alongWalls';
import type { ClearanceFinding } from './clearanceFinding';
import type { EdgeClearance } from './edgeClearance';

/**
 * What clearances miss of their rules, as they are ranked, and where pipes run along walls. What depths decide and what is crossed is said
 * with services, water and land; what digs reach is said of the digs.
 */
export function clearanceFindings(
  site: Site,
  derived: Derived,
  found: readonly EdgeClearance[],
): readonly ClearanceFinding[] {
  const missed = found.filter(({ verdict }) => verdict === 'misses');
  return [
    ...missed.flatMap((one) => ofPath(site, derived, one) ?? ofMark(one) ?? []),
    ...found.flatMap((one) => nearerThanElsewhere(site, one) ?? []),
    ...walls(site, derived),
    ...doubtful(derived, found),
  ];
}

/** A pipe that is there is a fact, one that was just laid can still be asked about; a custom of the trade is not a code. */
function severityOf(site: Site, rule: RuleName, state: Path['state']): DigSeverity {
  if (state === 'existing') return 'note';
  return state === 'as-built' || ruleOf(site, rule).row.basis === 'practice' ? 'should' : 'must';
}

function ofPath(site: Site, { paths }: Derived, one: EdgeClearance): ClearanceFinding | null {
  const { of, rule, required, feature, kind, distance, at, station, toCentre } = one;
  if (of.is !== 'path' || rule === null || required === null) return null;
  const { id: path, state } = of;
  return {
    code: 'pipe-too-near',
    severity: severityOf(site, rule, paths.get(path)?.path.state ?? state),
    at: { kind: 'path', id: path },
    place: at,
    rule,
    values: { path, state, feature, kind, distance, required, station: station ?? 0, toCentre },
  };
}

/** Of a planned pipe beside a service, water apart. */
function nearerThanElsewhere(site: Site, one: EdgeClearance): ClearanceFinding | null {
  const { of, rule, required, verdict, feature, kind, distance, at, station } = one;
  if (of.is !== 'path' || of.state !== 'proposed' || required === null) return null;
  const elsewhere = ruleValue(site, 'serviceLocal');
  if (rule !== 'otherService' || verdict !== 'meets' || distance >= elsewhere - COINCIDENT_M) return null;
  const values = { path: of.id, state: of.state, feature, kind, distance, required, station: station ?? 0 };
  return {
    code: 'service-nearer-than-elsewhere',
    severity: 'note',
    at: { kind: 'path', id: of.id },
    place: at,
    rule: 'serviceLocal',
    values: { ...values, elsewhere },
  };
}

function ofMark({ of, rule, required, feature, kind, distance, at }: EdgeClearance): ClearanceFinding | null {
  if (of.is !== 'mark' || required === null) return null;
  return {
    code: 'mark-in-tolerance-zone',
    severity: 'must',
    at: { kind: 'reading', run: of.run, id: of.reading },
    place: at,
    rule,
    values: { run: of.run, reading: of.reading, feature, kind, distance, required },
  };
}

function walls(site: Site, derived: Derived): readonly ClearanceFinding[] {
  const required = ruleValue(site, 'bearingWall');
  return alongWalls(site, derived).map(({ path, feature, from, to, distance, at }) => {
    const state = derived.paths.get(path)?.path.state ?? 'existing';
    return {
      code: 'pipe-along-wall',
      severity: severityOf(site, 'bearingWallTurn', state),
      at: { kind: 'path', id: path },
      place: at,
      rule: 'bearingWall',
      values: { path, state, feature, kind: 'building', distance, required, from, to },
    } as const;
  });
}

/** Outlines among those that are near which cross themselves. */
function doubtful({ features }: Derived, found: readonly EdgeClearance[]): readonly ClearanceFinding[] {
  const near = new Set(found.flatMap(({ rule, feature }) => (rule === null ? [] : [feature])));
  return [...near].flatMap((id) => {
    const thing = features.get(id);
    if (thing === undefined || thing.spec.shape !== 'area' || !ringCrossesItself(thing.outline)) return [];
    // of boundaries it is said with the land
    if (thing.feature.kind === 'boundary') return [];
    return [
      {
        code: 'outline-doubtful',
        severity: 'should',
        at: { kind: 'feature', id },
        place: thing.outline[0] ?? null,
        rule: null,
        values: { feature: id, kind: thing.feature.kind },
      } as const,
    ];
  });
}
