import type { CrewHole } from '@footmark/dig';
import type { Point } from '@footmark/geometry';
import { locate } from '@footmark/geometry';
import {
  aboutKey,
  type Derived,
  type FoundAbout,
  type GivenPaint,
  type Mark,
  type MarkPlace,
  profileAt,
  proposedPaths,
  type RunsFit,
  type SearchZone,
  type SetOutPoint,
  type Site,
  setOutOf,
  type Target,
  type Ties,
} from '@footmark/site';

/** What a crew goes to: a mark, or a point that sets a new pipe out. Lengths in metres. */
export type Stop = {
  readonly key: string;
  readonly about: FoundAbout;
  readonly target: Target;
  /** What is painted. */
  readonly label: string;
  readonly is:
    | { readonly what: 'mark'; readonly mark: Mark; readonly place: MarkPlace }
    | { readonly what: 'set-out'; readonly point: SetOutPoint };
  /** Where the pipe is, and the azimuth (rad) of flow in it. */
  readonly at: Point;
  readonly flow: number;
  /** Where the paint stands: there, or beside it. */
  readonly paint: Point;
  readonly ties: Ties | null;
  /** From the ground to the invert; null where one of the two is not known. */
  readonly depth: { readonly depth: number; readonly sigma: number } | null;
};

/** A hole of which nobody knows how large it has to be is taken as such a square. */
const UNKNOWN_HOLE_M = 1;

/** Every mark with a place in the order of the runs, then the points of new pipes with their flow. */
export function stopsOf(site: Site, derived: Derived): readonly Stop[] {
  const marks = derived.marks.flatMap((mark) =>
    mark.place === null ? [] : markStop(mark, mark.place, derived),
  );
  const setOut = proposedPaths(derived).flatMap((on) =>
    (setOutOf(site, derived, on.path.id)?.points ?? []).map((point): Stop => {
      const { path, number, label, at, ties, depth, station } = point;
      const about = { is: 'set-out', path, number } as const;
      const { azimuth } = locate(on.line, station);
      return {
        key: aboutKey(about) ?? '',
        about,
        target: { kind: 'set-out', path, number },
        label,
        is: { what: 'set-out', point },
        at,
        flow: azimuth,
        paint: at,
        ties,
        depth,
      };
    }),
  );
  return [...marks, ...setOut];
}

function markStop(mark: Mark, place: MarkPlace, derived: Derived): Stop {
  const { run, reading, label } = mark;
  const about = { is: 'mark', run: run.id, reading: reading.id } as const;
  const profile = derived.profiles.get(place.path);
  const { ground = null, pipe = null } = profile === undefined ? {} : profileAt(profile, place.station);
  return {
    key: aboutKey(about) ?? '',
    about,
    target: { kind: 'reading', run: run.id, id: reading.id },
    label,
    is: { what: 'mark', mark, place },
    at: place.at,
    flow: place.flow,
    paint: place.paint?.at ?? place.at,
    ties: place.paint === null ? place.ties : place.paint.ties,
    depth:
      ground === null || pipe === null
        ? null
        : { depth: ground.level - pipe.invert, sigma: Math.hypot(ground.sigma, pipe.sigma) },
  };
}

/** Which stop a crew is at: by its key, as others may add and remove marks meanwhile; its index is where to go on when it is gone. */
export type StopPlace = { readonly key: string | null; readonly index: number };

export function placeOf(stops: readonly Stop[], index: number): StopPlace {
  return { key: stops[index]?.key ?? null, index };
}

/** Where a stop is among the stops as they are now; of one that is gone, the one that took its place. */
export function indexOf(stops: readonly Stop[], { key, index }: StopPlace): number {
  const found = stops.findIndex((stop) => stop.key === key);
  return found >= 0 ? found : Math.max(0, Math.min(stops.length - 1, index));
}

/** What the crew is given to set the paint out by, as it goes along with what it finds. */
export function givenAt({ label, paint, flow, ties }: Stop): GivenPaint {
  const tapes = ties === null ? [] : [...ties.pair, ...(ties.check === null ? [] : [ties.check])];
  return {
    label,
    at: { x: paint.x, y: paint.y },
    flow,
    ties: tapes.map(({ from, distance }) => ({ from: from.ref, distance })),
    side: ties?.side ?? 'left',
  };
}

/** The hole that is sure to find a mark; null for what sets a pipe out, and where no fit tells. */
export function holeAt({ is }: Stop, fit: RunsFit | null): SearchZone['hole'] | null {
  return is.what === 'mark' ? (fit?.marks.get(is.mark.reading.id)?.zone.hole ?? null) : null;
}

/** The ground that the crew opens there. */
export function crewHole({ at, flow }: Stop, hole: SearchZone['hole'] | null): CrewHole {
  return { at, along: flow, length: hole?.length ?? UNKNOWN_HOLE_M, width: hole?.width ?? UNKNOWN_HOLE_M };
}
