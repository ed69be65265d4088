import { developedAt, distance } from '@footmark/geometry';
import type { Site } from '../document/site';
import type { Derived } from './derive';
import type { DerivedPath } from './derivePaths';
import { tiesAt } from './markTies';
import { type DepthAt, type PathProfile, profileAt } from './profileAt';
import type { InvertAt } from './profileLine';
import { type SetOutPlace, setOutPlaces } from './setOutPlaces';
import { type TapedFrom, tieSurroundings } from './tieChooser';
import type { Ties } from './ties';

/** A place that is painted to set a pipe out, with what it is found by and how deep the pipe is to lie there. */
export type SetOutPoint = SetOutPlace & {
  /** Length of pipe from its start (m), slopes and drops in it, a drop here not yet. */
  readonly developed: number;
  /** Straight from the place before (m), null at the start. */
  readonly fromBefore: number | null;
  /** Level of the invert (m), below a drop that is here; null where no level of the pipe is known. */
  readonly invert: InvertAt | null;
  /** From the ground down to it (m); null where one of the two is not known, and under a building. */
  readonly depth: DepthAt | null;
  /** Null under a building, and where no two references cut. */
  readonly ties: Ties | null;
  /** Id of the building that it is under. */
  readonly under: string | null;
};

/** A pipe as it is set out on the ground. */
export type SetOut = {
  readonly path: string;
  /** No level is known: depths count from a ground that is taken as even. */
  readonly evenGround: boolean;
  readonly points: readonly SetOutPoint[];
};

/** The points that a crew paints to set a path out, with its flow. Null for a path without a curve; a finding says why. */
export function setOutOf(site: Site, derived: Derived, path: string, from: TapedFrom = 'all'): SetOut | null {
  const on = derived.paths.get(path);
  if (on === undefined) return null;
  const around = tieSurroundings(site, derived, from);
  const profile = derived.profiles.get(path);
  const places = setOutPlaces(site, on);
  return {
    path,
    evenGround: profile?.heights === 'below-ground',
    points: places.map((place, i) => {
      const before = places[i - 1];
      const { ties, under } = tiesAt(place.at, around);
      return {
        ...place,
        developed: developedAt(on.profile, place.station),
        fromBefore: before === undefined ? null : distance(before.at, place.at),
        ...levelsAt(profile, place.station),
        ties,
        under: under?.feature.id ?? null,
      };
    }),
  };
}

/** Every proposed path as it is set out, in the order of the site. */
export function setOutsOf(site: Site, derived: Derived): readonly SetOut[] {
  return proposedPaths(derived).flatMap(({ path }) => setOutOf(site, derived, path.id) ?? []);
}

/** Paths that are to be laid, and so to be set out. */
export function proposedPaths({ paths }: Pick<Derived, 'paths'>): readonly DerivedPath[] {
  return [...paths.values()].filter(({ path }) => path.state === 'proposed');
}

function levelsAt(profile: PathProfile | undefined, station: number): Pick<SetOutPoint, 'invert' | 'depth'> {
  if (profile === undefined) return { invert: null, depth: null };
  const { pipe, depth } = profileAt(profile, station);
  return { invert: profile.heights === 'levels' ? pipe : null, depth };
}
