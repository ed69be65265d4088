import { locate, type Point } from '@footmark/geometry';
import { type Derived, type Dig, type PathProfile, profileAt, ruleValue, type Site } from '@footmark/site';
import type { CutPoint } from './cut';
import { type DigPlace, markOfPit } from './digPlace';
import type { DigDepth } from './excavation';
import type { Say } from './excavationFinding';

/** The line of a dig with its depth, which changes evenly between points. */
export type DeepLine = { readonly points: readonly CutPoint[]; readonly depth: DigDepth };

/** How deep a dig is along its line, as far as that is known. */
export type Sounding = {
  /** Null where any of it is not known or not below the ground. */
  readonly whole: DeepLine | null;
  /** Its pieces of which the depth is known: of a whole line the one. */
  readonly pieces: readonly (readonly CutPoint[])[];
};

/** A place of the line, and which side of a drop that is there. */
type Stop = { readonly at: Point; readonly station: number; readonly side: 'before' | 'after' };

type Unknown = 'no-pipe-level' | 'no-ground' | 'indoors';

type Sounded =
  | { readonly known: true; readonly depth: number; readonly sigma: number; readonly carriedOn: boolean }
  | { readonly known: false; readonly because: Unknown };

/**
 * The depth that the dig says, else that of the pipe: from the ground to the invert, and the bedding below it. A finding says where that
 * is not known or not below the ground.
 */
export function soundDig(site: Site, derived: Derived, dig: Dig, place: DigPlace, say: Say): Sounding {
  if (dig.depth !== undefined) return wholeOr(saidDepth(dig.depth, place, say), []);
  const profile = derived.profiles.get(place.path);
  const bedding = ruleValue(site, 'beddingDepth');
  const mark = dig.is === 'pit' ? markOfPit(derived, dig) : null;
  const stops =
    mark === null
      ? stopsOf(derived, place, profile)
      : [{ at: mark.at, station: mark.station, side: 'after' as const }];

  const pieces: CutPoint[][] = [[]];
  let missing: { readonly because: Unknown; readonly station: number; readonly at: Point } | null = null;
  let [sigma, carriedOn] = [0, false];
  for (const [i, { at, station, side }] of stops.entries()) {
    const next = stops[i + 1]?.station ?? station;
    // what is not known between two stops shows in their middle
    for (const asked of next > station ? [station, (station + next) / 2] : [station]) {
      const found = soundAt(profile, asked, side, bedding);
      if (!found.known) {
        missing ??= { because: found.because, station: asked, at };
        pieces.push([]);
        continue;
      }
      sigma = Math.max(sigma, found.sigma);
      carriedOn ||= found.carriedOn;
      if (asked === station) pieces.at(-1)?.push({ at, station, depth: found.depth });
    }
  }
  const points = pieces.flat();
  if (missing !== null) {
    const { because, station, at } = missing;
    say('depth-not-known', 'must', { because, station }, { place: at });
    return wholeOr(null, pieces.flatMap(belowGround));
  }
  const shallow = points.find(({ depth }) => !(depth > 0));
  if (shallow !== undefined) {
    const { depth, station, at } = shallow;
    say('depth-not-positive', 'must', { depth, station }, { place: at });
    return wholeOr(null, belowGround(points));
  }
  if (carriedOn) say('depth-carried-on', 'should', { sigma });
  const depths = points.map((p) => p.depth);
  const depth = { least: Math.min(...depths), most: Math.max(...depths), sigma, from: 'pipe' } as const;
  // a pit is level at the bottom, as deep as the pipe is at its mark
  return wholeOr(
    mark === null
      ? { points, depth }
      : { points: place.line.map((p) => ({ ...p, depth: depth.most })), depth },
    [],
  );
}

function wholeOr(whole: DeepLine | null, pieces: Sounding['pieces']): Sounding {
  return { whole, pieces: whole === null ? pieces : [whole.points] };
}

/** The pieces of a line, two points or more, that lie below the ground. */
function belowGround(points: readonly CutPoint[]): readonly (readonly CutPoint[])[] {
  const pieces: CutPoint[][] = [[]];
  for (const point of points) {
    if (point.depth > 0) pieces.at(-1)?.push(point);
    else pieces.push([]);
  }
  return pieces.filter((piece) => piece.length > 1);
}

function saidDepth(depth: number, { line }: DigPlace, say: Say): DeepLine | null {
  const [first] = line;
  if (!(depth > 0)) {
    say('depth-not-positive', 'must', { depth, station: first?.station ?? 0 });
    return null;
  }
  return {
    points: line.map((p) => ({ ...p, depth })),
    depth: { least: depth, most: depth, sigma: 0, from: 'said' },
  };
}

/** Wherever the line turns, or the ground, the pipe or what is known of them may. */
function stopsOf(
  derived: Derived,
  { path, line }: DigPlace,
  profile: PathProfile | undefined,
): readonly Stop[] {
  const on = derived.paths.get(path);
  const [from, to] = [line[0]?.station ?? 0, line.at(-1)?.station ?? 0];
  if (on === undefined || profile === undefined) return line.map((p) => ({ ...p, side: 'after' }));
  const drops = new Set(profile.drops.map((d) => d.station));
  const stations = new Set(line.map((p) => p.station));
  const turns = [
    ...profile.line.grades.map((p) => p.station),
    ...profile.ground.marks.map((m) => m.station),
    ...profile.ground.indoors.flatMap((i) => [i.from, i.to]),
    ...profile.line.stretches.map((s) => s.from),
    ...drops,
  ];
  for (const station of turns) if (station > from && station < to) stations.add(station);
  return [...stations]
    .sort((a, b) => a - b)
    .flatMap((station): readonly Stop[] => {
      const stop = { at: locate(on.line, station).point, station };
      const after = { ...stop, side: 'after' } as const;
      if (!drops.has(station) || station === from) return [after];
      const before = { ...stop, side: 'before' } as const;
      return station === to ? [before] : [before, after];
    });
}

function soundAt(
  profile: PathProfile | undefined,
  station: number,
  side: 'before' | 'after',
  bedding: number,
): Sounded {
  if (profile === undefined) return { known: false, because: 'no-pipe-level' };
  const { pipe, depth } = profileAt(profile, station, side);
  if (pipe === null) return { known: false, because: 'no-pipe-level' };
  if (depth === null) {
    const indoors = profile.ground.indoors.some((i) => station > i.from && station < i.to);
    return { known: false, because: indoors ? 'indoors' : 'no-ground' };
  }
  return {
    known: true,
    depth: depth.depth + bedding,
    sigma: depth.sigma,
    carriedOn: pipe.by === 'beyond',
  };
}
