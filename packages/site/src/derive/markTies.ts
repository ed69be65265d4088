import { type Point, pointAtAzimuth, pointInRing } from '@footmark/geometry';
import type { Reading } from '../document/run';
import type { TapeMeasure } from '../document/site';
import { settings } from '../rules/settings';
import type { DerivedFeature } from './deriveFeatures';
import { type Finding, finding, type Target } from './finding';
import type { ReferenceIndex } from './references';
import { chooseTies, type Ties } from './ties';

/** Where paint stands that cannot stand on its mark, and what it is taped from there. */
export type OffsetPaint = { readonly at: Point; readonly ties: Ties | null };

/** What can be taped from, and what stands in a tape's way. */
export type Surroundings = {
  readonly references: ReferenceIndex;
  readonly blocks: readonly DerivedFeature[];
  readonly tape: TapeMeasure;
};

/**
 * The ties of a mark, and of its paint where that stands beside it. Findings are of the place that is painted: nobody tapes to a mark
 * under a house that has its paint outside.
 */
export function tiesOfMark(
  mark: Point,
  { offset }: Reading,
  around: Surroundings,
  target: Target,
  findings: Finding[],
): { readonly ties: Ties | null; readonly paint: OffsetPaint | null } {
  const own = tiesAt(mark, around);
  if (offset === undefined) {
    if (own.under === null) sayOfTies(own.ties, around.tape, target, findings);
    else findings.push(finding('mark-under-building', 'warning', target, { building: nameOf(own.under) }));
    return { ties: own.ties, paint: null };
  }
  const at = pointAtAzimuth(mark, offset.azimuth, offset.distance);
  const { ties, under } = tiesAt(at, around);
  if (under === null) sayOfTies(ties, around.tape, target, findings);
  else findings.push(finding('paint-under-building', 'warning', target, { building: nameOf(under) }));
  return { ties: own.ties, paint: { at, ties } };
}

/** The ties of a place, and the building that it is under. */
export function tiesAt(
  at: Point,
  { references, blocks, tape }: Surroundings,
): { readonly ties: Ties | null; readonly under: DerivedFeature | null } {
  const under = blocks.find((block) => pointInRing(at, block.outline) === 'inside') ?? null;
  return { ties: under === null ? chooseTies(at, references, blocks, tape) : null, under };
}

function nameOf({ feature }: DerivedFeature): string {
  return feature.name || feature.id;
}

function sayOfTies(ties: Ties | null, tape: TapeMeasure, target: Target, findings: Finding[]): void {
  if (ties === null) {
    findings.push(finding('no-ties', 'warning', target, { within: tape.length }));
    return;
  }
  if (ties.cutAngle < settings.weakCutBelow.value || ties.cutAngle > settings.weakCutAbove.value) {
    findings.push(finding('ties-weak', 'warning', target, { cut: ties.cutAngle }));
  }
  if (ties.check === null) findings.push(finding('no-check-tie', 'note', target, {}));
  const assumed = ties.pair.find((tie) => !tie.from.measured);
  if (assumed !== undefined) {
    findings.push(finding('tie-from-assumed', 'note', target, { from: assumed.from.key }));
  }
}
