import {
  distance,
  flattenPath,
  type Point,
  pointInRing,
  stationOf,
  stretchesInRing,
} from '@footmark/geometry';
import { profileRules } from '../rules/profileRules';
import { segmentMeetsBounds } from './bounds';
import type { DerivedFeature } from './deriveFeatures';
import type { DerivedPath } from './derivePaths';

/** A point of the ground, or of something set in it, whose level is known (m). */
export type LevelledPoint = { readonly feature: string; readonly at: Point; readonly level: number };

/** The ground's level beside a pipe, at a station of it (m). */
export type GroundMark = {
  readonly station: number;
  readonly level: number;
  readonly sigma: number;
  readonly features: readonly string[];
};

/** Stations (m) between which a pipe lies under a building, where there is no ground above it. */
export type Indoors = { readonly from: number; readonly to: number; readonly building: string };

/** What is known of the ground along a pipe. `even`: no level of it is, and heights count from it. */
export type GroundLine = {
  readonly even: boolean;
  /** By station. */
  readonly marks: readonly GroundMark[];
  readonly indoors: readonly Indoors[];
};

/** `between`: at a levelled point, or interpolated along the pipe between two; else held level from one nearby. */
export type GroundAt = { readonly level: number; readonly sigma: number; readonly between: boolean };

/** Levelled points nearer than this (m) along the pipe count as one: two sides of the same place. */
const SAME_PLACE_M = 0.5;

/** A pipe's bends as chords this far (m) from them serve to tell where it enters a building. */
const WALL_SAGITTA_M = 0.01;

/** All points of the site that the ground's level is told by: spot levels, benchmarks and the rims of manholes, out of doors. */
export function levelledPoints(features: ReadonlyMap<string, DerivedFeature>): readonly LevelledPoint[] {
  const found: LevelledPoint[] = [];
  for (const { feature, points } of features.values()) {
    const level = levelOf(feature);
    const [at] = points;
    if (level !== undefined && at !== undefined) found.push({ feature: feature.id, at, level });
  }
  if (found.length === 0) return found;
  const houses = buildingsOf(features);
  return found.filter(({ at }) => houses.every((house) => pointInRing(at, house.outline) !== 'inside'));
}

function levelOf(feature: DerivedFeature['feature']): number | undefined {
  switch (feature.kind) {
    case 'spot-level':
    case 'benchmark':
      return feature.fields.level;
    case 'manhole':
      return feature.fields.rimLevel;
    default:
      return undefined;
  }
}

export function buildingsOf(features: ReadonlyMap<string, DerivedFeature>): readonly DerivedFeature[] {
  const found: DerivedFeature[] = [];
  for (const derived of features.values()) if (derived.feature.kind === 'building') found.push(derived);
  return found;
}

/** The ground along a path from the levelled points near it; `sigma` (m) is that of one level. */
export function groundLine(
  on: DerivedPath,
  levelled: readonly LevelledPoint[],
  buildings: readonly DerivedFeature[],
  sigma: number,
): GroundLine {
  const near: GroundMark[] = [];
  for (const { feature, at, level } of levelled) {
    const { station, distance: away } = stationOf(on.line, at);
    if (away > profileRules.groundReach.value) continue;
    const aside = profileRules.groundFall.value * away;
    near.push({ station, level, sigma: Math.hypot(sigma, aside), features: [feature] });
  }
  near.sort((a, b) => a.station - b.station);
  return { even: false, marks: merged(near), indoors: indoorsOf(on, buildings) };
}

/** The same pipe with its heights counted from the ground, which is taken as even. */
export function evenGround({ indoors }: GroundLine): GroundLine {
  return { even: true, marks: [], indoors };
}

function merged(marks: readonly GroundMark[]): readonly GroundMark[] {
  const out: GroundMark[] = [];
  for (const mark of marks) {
    const last = out.at(-1);
    if (last === undefined || mark.station - last.station > SAME_PLACE_M) {
      out.push(mark);
      continue;
    }
    const [a, b] = [last.sigma ** -2, mark.sigma ** -2];
    const mean = (key: 'station' | 'level') => (a * last[key] + b * mark[key]) / (a + b);
    out[out.length - 1] = {
      station: mean('station'),
      level: mean('level'),
      sigma: (a + b) ** -0.5,
      features: [...last.features, ...mark.features],
    };
  }
  return out;
}

function indoorsOf(on: DerivedPath, buildings: readonly DerivedFeature[]): readonly Indoors[] {
  if (buildings.length === 0) return [];
  const line = flattenPath(on.line, WALL_SAGITTA_M);
  const found: Indoors[] = [];
  for (const { feature, outline, bounds } of buildings) {
    let start = 0;
    for (const [i, a] of line.entries()) {
      const b = line[i + 1];
      if (b === undefined) break;
      const length = distance(a, b);
      if (segmentMeetsBounds(a, b, bounds)) {
        for (const { from, to } of stretchesInRing(a, b, outline)) {
          const piece = { from: start + from * length, to: start + to * length, building: feature.id };
          const before = found.at(-1);
          const goesOn = before?.building === feature.id && piece.from - before.to < WALL_SAGITTA_M;
          if (goesOn) found[found.length - 1] = { ...before, to: piece.to };
          else found.push(piece);
        }
      }
      start += length;
    }
  }
  return found;
}

/** The ground at a station; null under a building and where no levelled point tells of it. */
export function groundAt(ground: GroundLine, station: number): GroundAt | null {
  if (ground.indoors.some(({ from, to }) => station > from && station < to)) return null;
  if (ground.even) return { level: 0, sigma: 0, between: true };
  const { groundGap, groundFall, groundReach } = profileRules;
  const next = ground.marks.findIndex((m) => m.station >= station);
  const b = ground.marks[next];
  const a = next === -1 ? ground.marks.at(-1) : ground.marks[next - 1];
  if (b?.station === station) return { level: b.level, sigma: b.sigma, between: true };
  if (a !== undefined && b !== undefined && b.station - a.station <= groundGap.value) {
    const gap = b.station - a.station;
    const t = (station - a.station) / gap;
    // the ground between strays from the straight line: as much as its fall allows near either end, half of that in the middle
    const stray = groundFall.value * gap * t * (1 - t);
    return {
      level: a.level + t * (b.level - a.level),
      sigma: Math.hypot((1 - t) * a.sigma, t * b.sigma, stray),
      between: true,
    };
  }
  const held = [a, b]
    .flatMap((m) => (m === undefined ? [] : [{ ...m, away: Math.abs(m.station - station) }]))
    .sort((m, n) => m.away - n.away)[0];
  if (held === undefined || held.away > groundReach.value) return null;
  return { level: held.level, sigma: Math.hypot(held.sigma, groundFall.value * held.away), between: false };
}
