import { type Point, stationOf, stationOfVertex } from '@footmark/geometry';
import type { PathVertex, PipeLevel, PipeMaterial, Stretch } from '../document/path';
import type { Site } from '../document/site';
import { observationName } from '../fit/observationTag';
import { profileRules, wallShares } from '../rules/profileRules';
import { sigmaOf } from '../rules/sigmaOf';
import type { DerivedFeature } from './deriveFeatures';
import type { DerivedPath } from './derivePaths';
import type { Mark } from './marks';
import { sondePlace, type Ways } from './sondePlace';

/** What told of a pipe's invert: its own point, a field of a thing that the point is at, a locate's depth, the pipe that it joins. */
export type LevelSource =
  | { readonly is: 'point'; readonly vertex: string; readonly measured: PipeLevel['is'] }
  | { readonly is: 'feature'; readonly feature: string; readonly field: 'invert' | 'depth' | 'riserDepth' }
  | { readonly is: 'locate'; readonly feature: string }
  | { readonly is: 'join'; readonly path: string };

/** One measurement of how deep a pipe is, at a station of it: its invert's level, or its invert's depth below the ground (m). */
export type Sounding = {
  readonly station: number;
  readonly source: LevelSource;
  readonly sigma: number;
} & ({ readonly level: number } | { readonly depth: number });

/** The pipe at a station: its inside diameter and wall (m), and what it is made of. */
export type PipeSize = {
  readonly diameter: number;
  readonly wall: number;
  readonly material: PipeMaterial;
};

export function pipeSizeAt(stretches: readonly Stretch[], station: number): PipeSize {
  const stretch = stretches.findLast((s) => s.from <= station) ?? stretches[0];
  const { diameter = 0, material = 'unknown' } = stretch ?? {};
  return { diameter, wall: diameter * wallShares[material].value, material };
}

/** How a depth was found; a locate in passing tells none. */
type DepthMethod = 'exposed' | 'crossed' | 'peak';

/** A depth that a receiver showed, or a tape where the pipe was dug up; `path`: the pipe that its reading is on, null without. */
export type LocateDepth = {
  readonly feature: string;
  readonly at: Point;
  readonly depth: number;
  readonly method: DepthMethod;
  readonly path: string | null;
};

type Setting = Ways & {
  readonly site: Site;
  readonly features: ReadonlyMap<string, DerivedFeature>;
  readonly marks: readonly Mark[];
};

/** The depths of all locates. What people set aside tells no depth either. */
export function locateDepths(setting: Setting): readonly LocateDepth[] {
  const { site, features, marks } = setting;
  const found: LocateDepth[] = [];
  for (const { feature, points } of features.values()) {
    const [at] = points;
    if (feature.kind !== 'locate' || feature.fields.depth === undefined || at === undefined) continue;
    if (site.setAside.includes(observationName({ is: 'locate', feature: feature.id, part: 'along' })))
      continue;
    const { reading, depth, method = 'peak' } = feature.fields;
    if (method === 'rough') continue;
    const mark = reading === undefined ? undefined : marks.find((m) => m.reading.id === reading.reading);
    const sonde = mark === undefined ? null : sondePlace(setting, mark);
    found.push({ feature: feature.id, at, depth, method, path: sonde?.path ?? null });
  }
  return found;
}

/** All that was measured of a path's depth, in the order of the path's points, then of the site's locates. */
export function soundingsOf(
  on: DerivedPath,
  locates: readonly LocateDepth[],
  { site, features }: Pick<Setting, 'site' | 'features'>,
): readonly Sounding[] {
  const taped = sigmaOf(site, 'tapedLevel');
  const found: Sounding[] = on.path.vertices.flatMap((vertex, i) => {
    const station = stationOfVertex(on.line, i);
    const own = vertex.level === undefined ? [] : [ofPoint(on, vertex, vertex.level, station, taped)];
    const thing = features.get(on.tiedTo[i] ?? '');
    return thing === undefined ? own : [...own, ...ofThing(thing, station, taped)];
  });
  return [...found, ...locates.flatMap((locate) => ofLocate(on, locate, site, taped) ?? [])];
}

function ofPoint(
  on: DerivedPath,
  vertex: PathVertex,
  level: PipeLevel,
  station: number,
  taped: number,
): Sounding {
  const known = {
    station,
    source: { is: 'point', vertex: vertex.id, measured: level.is },
    sigma: level.sigma ?? taped,
  } as const;
  switch (level.is) {
    case 'invert':
      return { ...known, level: level.level };
    case 'depth-to-invert':
      return { ...known, depth: level.depth };
    case 'depth-to-top':
      return { ...known, depth: level.depth + belowTop(on, station) };
  }
}

/** From the top of the pipe, outside, to its invert (m). */
function belowTop(on: DerivedPath, station: number): number {
  const { diameter, wall } = pipeSizeAt(on.path.stretches, station);
  return diameter + wall;
}

/** A riser's rim lies in the ground. */
function ofThing({ feature }: DerivedFeature, station: number, sigma: number): readonly Sounding[] {
  const level = (value: number | undefined): readonly Sounding[] =>
    value === undefined
      ? []
      : [{ station, source: { is: 'feature', feature: feature.id, field: 'invert' }, level: value, sigma }];
  const depth = (field: 'depth' | 'riserDepth', value: number | undefined): readonly Sounding[] =>
    value === undefined
      ? []
      : [{ station, source: { is: 'feature', feature: feature.id, field }, depth: value, sigma }];
  switch (feature.kind) {
    case 'cleanout':
      return [...level(feature.fields.invert), ...depth('riserDepth', feature.fields.riserDepth)];
    case 'tap':
      return [...level(feature.fields.invert), ...depth('depth', feature.fields.depth)];
    case 'manhole':
    case 'stack':
    case 'floor-drain':
      return level(feature.fields.invert);
    default:
      return [];
  }
}

/**
 * The depth of a locate, at the place of the pipe that is nearest to it: of the pipe that its reading is on, else of any within the site's
 * reach of entries. Where the pipe was dug up and seen, the depth is to its top.
 */
function ofLocate(
  on: DerivedPath,
  { feature, at, depth, method, path }: LocateDepth,
  site: Site,
  taped: number,
): Sounding | null {
  if (path !== null && path !== on.path.id) return null;
  const { station, distance: away } = stationOf(on.line, at);
  if (path === null && away > site.entryReach) return null;
  const known = { station, source: { is: 'locate', feature } } as const;
  return method === 'exposed'
    ? { ...known, depth: depth + belowTop(on, station), sigma: taped }
    : {
        ...known,
        depth: depth + profileRules.sondeRide.value,
        sigma: sigmaOf(site, method === 'crossed' ? 'locateDepthShare' : 'locatePeakDepthShare') * depth,
      };
}
