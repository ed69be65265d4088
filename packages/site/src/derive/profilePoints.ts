import { type GroundLine, groundAt } from './profileGround';
import type { Sounding } from './profileSoundings';

/** The invert of a pipe as one measurement has it (m), in the profile's heights. */
export type KnownInvert = {
  readonly sounding: Sounding;
  readonly invert: number;
  readonly sigma: number;
};

/** A place of a pipe whose invert is known (m): by one measurement, or by several weighed together. */
export type ProfilePoint = {
  readonly station: number;
  readonly invert: number;
  readonly sigma: number;
  readonly known: readonly KnownInvert[];
};

/** A vertical step down of the pipe at one of its points (m). Levels measured there are those below it. */
export type ProfileDrop = { readonly station: number; readonly height: number; readonly vertex: string };

/** Measurements nearer to each other than this (m) along the pipe are of the same place. */
const SAME_PLACE_M = 0.3;

/**
 * What measurements make of the invert, by station. A depth says nothing where the ground above is not known, nor a level where
 * heights count from the ground.
 */
export function knownInverts(soundings: readonly Sounding[], ground: GroundLine): readonly KnownInvert[] {
  return soundings
    .flatMap((sounding): readonly KnownInvert[] => {
      const { sigma } = sounding;
      if ('level' in sounding) return ground.even ? [] : [{ sounding, invert: sounding.level, sigma }];
      const above = groundAt(ground, sounding.station);
      if (above === null) return [];
      return [{ sounding, invert: above.level - sounding.depth, sigma: Math.hypot(sigma, above.sigma) }];
    })
    .sort((a, b) => a.sounding.station - b.sounding.station);
}

/** Levels, or depths, that differ by less than this (m) at one point are one measurement that was written down twice. */
const WRITTEN_TWICE_M = 0.001;

function isWrittenTwice(a: KnownInvert, b: KnownInvert): boolean {
  const alike = 'level' in a.sounding === 'level' in b.sounding && a.sounding.station === b.sounding.station;
  return alike && Math.abs(a.invert - b.invert) < WRITTEN_TWICE_M;
}

/** Known inverts (by station) of the same place weighed together, at the station of the surest. A drop between keeps two places apart. */
export function profilePoints(
  known: readonly KnownInvert[],
  drops: readonly ProfileDrop[],
): readonly ProfilePoint[] {
  const places: KnownInvert[][] = [];
  for (const one of known) {
    const place = places.at(-1);
    const from = place?.[0]?.sounding.station;
    const to = one.sounding.station;
    const apart = from === undefined || to - from > SAME_PLACE_M || heightBetween(drops, from, to) > 0;
    if (apart) places.push([one]);
    else place?.push(one);
  }
  return places.map((place) => {
    let [weights, sum] = [0, 0];
    for (const [i, one] of place.entries()) {
      if (place.slice(0, i).some((before) => isWrittenTwice(before, one))) continue;
      const { invert, sigma } = one;
      weights += sigma ** -2;
      sum += invert * sigma ** -2;
    }
    const surest = place.reduce((a, b) => (b.sigma < a.sigma ? b : a));
    return { station: surest.sounding.station, invert: sum / weights, sigma: weights ** -0.5, known: place };
  });
}

/** What the pipe drops past `from` and up to `to`, in total (m). */
export function heightBetween(drops: readonly ProfileDrop[], from: number, to: number): number {
  return drops.reduce((sum, d) => (d.station > from && d.station <= to ? sum + d.height : sum), 0);
}
