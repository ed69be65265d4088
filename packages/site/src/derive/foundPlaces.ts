import { distance, dot, locate, type Point, subtract } from '@footmark/geometry';
import { type AsFound, aboutKey, type FoundAbout, type GivenPaint } from '../document/asFound';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { Ref } from '../document/spot';
import type { DerivedPath } from './derivePaths';
import type { Mark } from './marks';
import { placeOfTapes } from './placeOfTapes';
import { setOutPlaces } from './setOutPlaces';

/** Where what was looked for is by the computation. */
export type SoughtPlace = {
  readonly at: Point;
  /** Azimuth (rad) of flow in the pipe there. */
  readonly flow: number;
  readonly path: string;
  /** Plan metres from the path's start. */
  readonly station: number;
};

/** What a crew found, beside where the computation has it. Lengths in metres. */
export type FoundPlace = {
  readonly record: AsFound;
  /** What is painted there: as it was given to the crew, else as it is now; empty for a place of its own. */
  readonly label: string;
  /** Where the paint stood: by the tapes that were given, from where their references are now. Null where nothing was given. */
  readonly paint: Point | null;
  /** Where it was found; null where nobody measured it, or the measure leads nowhere. */
  readonly at: Point | null;
  /** Null for a place of its own, and where what was looked for is gone or has no place. */
  readonly sought: SoughtPlace | null;
  /** From where it was looked for to where it was found, with the flow and to the right of it. */
  readonly off: { readonly along: number; readonly across: number; readonly distance: number } | null;
  /** From where the paint was to stand to where it would be given now; null where there are not both. */
  readonly moved: number | null;
};

type Known = {
  readonly points: ReadonlyMap<string, { readonly at: Point }>;
  readonly paths: ReadonlyMap<string, DerivedPath>;
  readonly marks: readonly Mark[];
};

/** Every record of the site with its place, in their order. */
export function foundPlaces(site: Site, known: Known): readonly FoundPlace[] {
  if (site.asFound.length === 0) return [];
  const sought = soughtPlaces(site, known);
  const placeOf = (ref: Ref) => known.points.get(refKey(ref))?.at;
  return site.asFound.map((record) => {
    const now = sought(record.about);
    const { given } = record;
    const paint = given === undefined ? null : paintPlace(site, given, placeOf);
    const at = placeFound(site, record, paint, placeOf);
    const painted = now?.painted ?? null;
    return {
      record,
      label: given?.label ?? now?.label ?? '',
      paint,
      at,
      sought: now?.place ?? null,
      off: at === null || !now?.place ? null : offFrom(now.place, at),
      moved: paint === null || painted === null ? null : distance(paint, painted),
    };
  });
}

type Sought = { readonly label: string; readonly place: SoughtPlace | null; readonly painted: Point | null };

/** Tells where something that was looked for is now, and where its paint stands; null where it is gone. */
function soughtPlaces(site: Site, { paths, marks }: Known): (about: FoundAbout) => Sought | null {
  const all = new Map<string, Sought>();
  for (const { run, reading, label, place } of marks) {
    const at =
      place === null ? null : { at: place.at, flow: place.flow, path: place.path, station: place.station };
    const painted = place === null ? null : (place.paint?.at ?? place.at);
    all.set(aboutKey({ is: 'mark', run: run.id, reading: reading.id }) ?? '', { label, place: at, painted });
  }
  for (const on of paths.values()) {
    if (!site.asFound.some(({ about }) => about.is === 'set-out' && about.path === on.path.id)) continue;
    for (const { path, number, label, station, at } of setOutPlaces(site, on)) {
      const place = { at, flow: locate(on.line, station).azimuth, path, station };
      all.set(aboutKey({ is: 'set-out', path, number }) ?? '', { label, place, painted: at });
    }
  }
  return (about) => all.get(aboutKey(about) ?? '') ?? null;
}

/** The paint follows the references that it was taped from; without two of them it stands where it was to stand. */
function paintPlace(site: Site, given: GivenPaint, placeOf: (ref: Ref) => Point | undefined): Point {
  const tapes = given.ties.slice(0, 2);
  const taped = tapes.length < 2 ? null : placeOfTapes(site, { tapes, side: given.side }, placeOf);
  return taped ?? { x: given.at.x, y: given.at.y };
}

function placeFound(
  site: Site,
  { where, given }: AsFound,
  paint: Point | null,
  placeOf: (ref: Ref) => Point | undefined,
): Point | null {
  switch (where?.by) {
    case undefined:
      return null;
    case 'paint': {
      if (paint === null || given === undefined) return null;
      const flow = { x: Math.sin(given.flow), y: Math.cos(given.flow) };
      return {
        x: paint.x + where.along * flow.x + where.right * flow.y,
        y: paint.y + where.along * flow.y - where.right * flow.x,
      };
    }
    case 'tapes':
      return placeOfTapes(site, where, placeOf);
    case 'coordinates':
    case 'finger':
      return { x: where.x, y: where.y };
  }
}

function offFrom({ at, flow }: SoughtPlace, found: Point): NonNullable<FoundPlace['off']> {
  const off = subtract(found, at);
  const toward = { x: Math.sin(flow), y: Math.cos(flow) };
  return {
    along: dot(off, toward),
    across: dot(off, { x: toward.y, y: -toward.x }),
    distance: distance(at, found),
  };
}

/** The latest find with a place of each mark and set-out point, and every one of a place of its own. */
export function latestFinds(found: readonly FoundPlace[]): readonly FoundPlace[] {
  const latest = new Map<string, FoundPlace>();
  const alone: FoundPlace[] = [];
  for (const one of found) {
    if (one.record.state !== 'found' || one.at === null) continue;
    const key = aboutKey(one.record.about);
    const before = key === null ? undefined : latest.get(key);
    if (key === null) alone.push(one);
    else if (before === undefined || Date.parse(before.record.at) <= Date.parse(one.record.at))
      latest.set(key, one);
  }
  return found.filter((one) => alone.includes(one) || [...latest.values()].includes(one));
}
