import { distance, type Point } from '@footmark/geometry';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { faceRadiusOf } from './faceRadius';
import type { FoundPlace } from './foundPlaces';

/** A tape as a crew was given it, and what it would be given as now; null where its reference or the mark is gone. Metres. */
export type GivenTie = {
  readonly from: { readonly of: string; readonly at: string };
  readonly given: number;
  readonly now: number | null;
};

/** The tapes that a crew set its paint out by, against where the paint would stand now. */
export function givenTies(
  site: Site,
  points: ReadonlyMap<string, { readonly at: Point }>,
  painted: Point | null,
  { record }: FoundPlace,
): readonly GivenTie[] {
  return (record.given?.ties ?? []).map(({ from, distance: given }) => {
    const reference = points.get(refKey(from))?.at;
    const feature = site.features.find((f) => f.id === from.of);
    const face = feature === undefined ? 0 : faceRadiusOf(feature);
    const now = reference === undefined || painted === null ? null : distance(reference, painted) - face;
    return { from, given, now };
  });
}
