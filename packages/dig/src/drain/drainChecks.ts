import type { Derived, DerivedPath, PathProfile, Site } from '@footmark/site';
import { pathSubject } from '../clearances/subject';
import { cleanoutsAsked, narrowCleanouts } from './cleanouts';
import { coverCheck } from './coverCheck';
import type { DrainCheck } from './drainCheck';
import type { DrainFinding } from './drainFinding';
import { fallCheck } from './fallCheck';
import { sharpTurns } from './fittings';
import { flowCheck } from './flowCheck';
import { sayOfDrain } from './sayOfDrain';
import { tapDepth } from './tapDepth';
import { turnsOf } from './turns';
import { waterSeparations } from './waterSeparation';

export type DrainChecks = {
  readonly paths: readonly DrainCheck[];
  readonly findings: readonly DrainFinding[];
};

/** What the codes ask of every drain of a site: fall, cover, cleanouts, fittings, and how far it keeps from water. */
export function drainChecks(site: Site, derived: Derived): DrainChecks {
  const paths = [...derived.paths.values()].flatMap((on) => {
    const profile = derived.profiles.get(on.path.id);
    return profile === undefined ? [] : [{ on, check: drainCheck(site, derived, on, profile) }];
  });
  return {
    paths: paths.map(({ check }) => check),
    findings: paths.flatMap(({ on, check }) => sayOfDrain(site, on, check)),
  };
}

function drainCheck(site: Site, derived: Derived, on: DerivedPath, profile: PathProfile): DrainCheck {
  const turns = turnsOf(on);
  return {
    path: on.path.id,
    state: on.path.state,
    length: on.length,
    developed: on.profile.total,
    fall: fallCheck(site, on, profile),
    flow: flowCheck(site, on, profile),
    cover: coverCheck(site, on, profile),
    tap: tapDepth(site, derived, on, profile),
    cleanouts: cleanoutsAsked(site, derived, on, profile, turns),
    narrowCleanouts: narrowCleanouts(site, derived, on),
    turns,
    sharpTurns: sharpTurns(site, on, turns),
    water: waterSeparations(site, derived, on, pathSubject(on), profile),
  };
}
