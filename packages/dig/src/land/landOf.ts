import { COINCIDENT_M, locate, pointInRing } from '@footmark/geometry';
import type { Derived, DerivedPath, FeatureKind } from '@footmark/site';
import { type PathLegs, pathLegs } from '../clearances/pathLegs';
import type { Land, LandCrossing, LandMark, LandStretch } from './land';
import type { LandFinding } from './landFinding';
import { type LandMap, landMap } from './landMap';
import { lineCrossings } from './lineCrossings';
import { sayOfCrossing, sayOfMark, sayOfStretch } from './sayOfLand';
import { withoutSlivers } from './slivers';
import { isSameLand } from './whose';

const CROSSED: readonly FeatureKind[] = ['boundary', 'boundary-line', 'easement', 'right-of-way'];

/** Pieces shorter than this (m) are corners of outlines that do not quite meet. */
const SHORTEST_M = 0.001;

/** Whose land each stretch of each path and each mark is on, and where paths cross from one to the other. */
export function landOf(derived: Derived): Land {
  const findings: LandFinding[] = [];
  const map = landMap(derived, findings);
  const stretches: LandStretch[] = [];
  const crossings: LandCrossing[] = [];
  for (const on of derived.paths.values()) {
    const legs = pathLegs(on);
    const own = stretchesOf(on, legs, map);
    stretches.push(...own);
    const crossed = crossingsOf(on, legs, own, derived);
    crossings.push(...crossed);
    for (const crossing of crossed) sayOfCrossing(on, crossing, findings);
    for (const stretch of own) sayOfStretch(on, stretch, isAlong(on, stretch, map), findings);
  }
  const marks = derived.marks.flatMap(({ run, reading, place }) => {
    if (place === null) return [];
    const mark: LandMark = { run: run.id, reading: reading.id, ...map.whoseAt(place.at) };
    sayOfMark(mark, place.at, findings);
    return [mark];
  });
  return { stretches, crossings, marks, findings };
}

function stretchesOf(on: DerivedPath, legs: PathLegs, { lines, whoseAt }: LandMap): readonly LandStretch[] {
  const cuts = [0, on.length];
  for (const line of lines) for (const { station } of lineCrossings(legs, line)) cuts.push(station);
  cuts.sort((a, b) => a - b);
  const found: LandStretch[] = [];
  let from = 0;
  for (const to of cuts) {
    if (to - from <= SHORTEST_M) continue;
    const land = whoseAt(locate(on.line, (from + to) / 2).point);
    const before = found.at(-1);
    if (before !== undefined && isSameLand(before, land)) found[found.length - 1] = { ...before, to };
    else found.push({ path: on.path.id, from, to, ...land });
    from = to;
  }
  const last = found.at(-1);
  if (last !== undefined) found[found.length - 1] = { ...last, to: on.length };
  return withoutSlivers(found);
}

function crossingsOf(
  on: DerivedPath,
  legs: PathLegs,
  stretches: readonly LandStretch[],
  { features }: Derived,
): readonly LandCrossing[] {
  const found: LandCrossing[] = [];
  for (const { feature, spec, outline } of features.values()) {
    if (!CROSSED.includes(feature.kind)) continue;
    const line = spec.shape === 'area' ? [...outline, ...outline.slice(0, 1)] : outline;
    for (const { station, at } of lineCrossings(legs, line)) {
      // a pipe that begins or ends on the line does not cross it
      if (station <= SHORTEST_M || station >= on.length - SHORTEST_M) continue;
      const whoseIs = (s: number) => stretches.find(({ to }) => s < to)?.whose ?? 'unknown';
      const [from, to] = [whoseIs(station - SHORTEST_M), whoseIs(station + SHORTEST_M)];
      found.push({ path: on.path.id, station, at, feature: feature.id, kind: feature.kind, from, to });
    }
  }
  return found.sort((a, b) => a.station - b.station);
}

/** The stretch runs on the very line of the lot. */
function isAlong({ line }: DerivedPath, { from, to }: LandStretch, { own }: LandMap): boolean {
  if (own === null || to - from <= COINCIDENT_M) return false;
  return pointInRing(locate(line, (from + to) / 2).point, own.ring) === 'edge';
}
