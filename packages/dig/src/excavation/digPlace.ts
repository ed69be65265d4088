import { COINCIDENT_M, chordStations, locate, type Point, pointAtAzimuth } from '@footmark/geometry';
import { type Derived, type Dig, ruleValue, type Site } from '@footmark/site';
import type { Say } from './excavationFinding';

/** Where a dig lies: the middle line of its bottom with the flow, by stations of the pipe (m). */
export type DigPlace = {
  readonly path: string;
  readonly line: readonly { readonly at: Point; readonly station: number }[];
  readonly width: number;
};

/** By reading: the hole that holds a mark, its length along the pipe and its width (m). */
export type Holes = ReadonlyMap<string, { readonly length: number; readonly width: number }>;

/** A trench follows a pipe's bends as chords this far (m) from them. */
const TRENCH_SAGITTA_M = 0.01;

/** Where the mark of a pit is; null where its reading has no place. */
export function markOfPit(derived: Derived, { at }: Extract<Dig, { is: 'pit' }>) {
  const mark = derived.marks.find(({ run, reading }) => run.id === at.run && reading.id === at.reading);
  return mark?.place ?? null;
}

/** Null where the dig has no place or no size; a finding says which. */
export function placeDig(site: Site, derived: Derived, holes: Holes, dig: Dig, say: Say): DigPlace | null {
  return dig.is === 'pit' ? placePit(site, derived, holes, dig, say) : placeTrench(site, derived, dig, say);
}

/** A pit as large as it says; else as the hole of its mark, with room to work on all sides. */
function placePit(
  site: Site,
  derived: Derived,
  holes: Holes,
  dig: Extract<Dig, { is: 'pit' }>,
  say: Say,
): DigPlace | null {
  const mark = markOfPit(derived, dig);
  if (mark === null) {
    say('dig-without-place', 'must', {});
    return null;
  }
  const hole = holes.get(dig.at.reading);
  const room = 2 * ruleValue(site, 'workSpace');
  const length = dig.length ?? (hole === undefined ? undefined : hole.length + room);
  const width = dig.bottomWidth ?? (hole === undefined ? undefined : hole.width + room);
  if (length === undefined || width === undefined) {
    say('pit-without-size', 'must', {});
    return null;
  }
  const end = (along: number) => ({
    at: pointAtAzimuth(mark.at, mark.flow, along),
    station: mark.station + along,
  });
  return { path: mark.path, line: [end(-length / 2), end(length / 2)], width };
}

function placeTrench(
  site: Site,
  derived: Derived,
  dig: Extract<Dig, { is: 'trench' }>,
  say: Say,
): DigPlace | null {
  const on = derived.paths.get(dig.path);
  if (on === undefined) {
    say('dig-without-place', 'must', {});
    return null;
  }
  const { length } = on;
  const [low, high] = [Math.min(dig.from, dig.to), Math.max(dig.from, dig.to)];
  if (high > length + COINCIDENT_M) say('trench-past-end', 'should', { beyond: high - length, length });
  const [from, to] = [Math.min(low, length), Math.min(high, length)];
  if (to - from <= COINCIDENT_M) {
    say('trench-without-length', 'must', { from: low, to: high });
    return null;
  }
  const line = chordStations(on.line, from, to, TRENCH_SAGITTA_M).map((station) => ({
    at: locate(on.line, station).point,
    station,
  }));
  return { path: dig.path, line, width: dig.bottomWidth ?? ruleValue(site, 'bottomWidth') };
}
