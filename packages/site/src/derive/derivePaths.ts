import {
  type DevelopedProfile,
  developedProfile,
  distance,
  type PathLine,
  type Point,
  pathLength,
  pathLine,
  stationOf,
  stationOfVertex,
} from '@footmark/geometry';
import type { TakenFit } from '../document/fit';
import type { Path } from '../document/path';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { type Finding, finding } from './finding';
import type { ResolvedPoints } from './resolvePoints';

/** Where a branch comes into another path: at one of its vertices, `station` metres from its start. */
export type Join = { readonly path: string; readonly vertex: string; readonly station: number };

/** A path with its curve. Stations are plan metres along it from its first vertex. */
export type DerivedPath = {
  readonly path: Path;
  /** The vertices' places, in order. */
  readonly points: readonly Point[];
  readonly measured: readonly boolean[];
  readonly line: PathLine;
  readonly length: number;
  /** Plan station against cable length, with slopes and drops. */
  readonly profile: DevelopedProfile;
  readonly joins: Join | null;
  /** By vertex: the feature or path that it was drawn at, null without. */
  readonly tiedTo: readonly (string | null)[];
};

/** Below this (m) a branch's end and the vertex that it is said to join are the same place. */
const JOIN_TOLERANCE_M = 0.01;

/** Computes every path that has a curve. One that has none is left out, and a finding says why. `fit`: the one that stands. */
export function derivePaths(
  site: Site,
  resolved: ResolvedPoints,
  fit: TakenFit | null,
): { readonly paths: ReadonlyMap<string, DerivedPath>; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const drawnBefore = new Map(fit?.paths.map((p) => [p.id, p.drawn]));
  const curves = new Map<string, DerivedPath>();
  for (const path of site.paths) {
    const drawn = new Map(drawnBefore.get(path.id)?.map((v) => [v.id, v.spot]));
    const curve = deriveCurve(path, drawn, resolved, findings);
    if (curve !== null) curves.set(path.id, curve);
  }
  const paths = new Map<string, DerivedPath>();
  for (const [id, curve] of curves) paths.set(id, { ...curve, joins: joinOf(curve, curves, findings) });
  return { paths, findings };
}

function tieOf(spot: Spot): string | null {
  return spot.by === 'at' ? spot.point.of : null;
}

/** `drawn`: the spots of its vertices before a fit that stands, by vertex. */
function deriveCurve(
  path: Path,
  drawn: ReadonlyMap<string, Spot>,
  resolved: ResolvedPoints,
  findings: Finding[],
): DerivedPath | null {
  const at = { kind: 'path', id: path.id } as const;
  const curved = path.vertices.find((v) => v.spot.by === 'arc');
  if (curved !== undefined)
    findings.push(finding('path-arc-taken-straight', 'warning', { ...at, vertex: curved.id }, {}));
  const places = path.vertices.flatMap((v) => resolved.points.get(refKey({ of: path.id, at: v.id })) ?? []);
  if (places.length < path.vertices.length) {
    findings.push(finding('path-too-few-points', 'error', at, {}));
    return null;
  }
  const built = pathLine(
    places.map((place, i) => ({
      point: place.at,
      bendRadius: path.vertices[i]?.bendRadius ?? path.bendRadius,
    })),
  );
  if (!built.ok) {
    findings.push(
      built.code === 'zero-length-leg'
        ? finding('path-leg-has-no-length', 'error', at, { leg: (built.values?.leg ?? 0) + 1 })
        : finding('path-too-few-points', 'error', at, {}),
    );
    return null;
  }
  const line = built.value;
  if (line.reducedBends.length > 0) {
    findings.push(finding('bend-does-not-fit', 'note', at, { vertices: line.reducedBends.length }));
  }
  const length = pathLength(line);
  const drops = path.vertices.flatMap((v, i) =>
    v.drop === undefined || v.drop === 0 ? [] : [{ station: stationOfVertex(line, i), height: v.drop }],
  );
  return {
    path,
    points: places.map((p) => p.at),
    measured: places.map((p) => p.measured),
    line,
    length,
    profile: developedProfile(length, path.stretches, drops),
    joins: null,
    tiedTo: path.vertices.map((v) => tieOf(drawn.get(v.id) ?? v.spot)),
  };
}

function joinOf(
  curve: DerivedPath,
  curves: ReadonlyMap<string, DerivedPath>,
  findings: Finding[],
): Join | null {
  const last = curve.path.vertices.at(-1)?.spot;
  if (last?.by !== 'at') return null;
  const main = curves.get(last.point.of);
  const index = main?.path.vertices.findIndex((v) => v.id === last.point.at) ?? -1;
  const corner = main?.points[index];
  const end = curve.points.at(-1);
  if (main === undefined || corner === undefined || end === undefined) return null;
  const apart = distance(corner, end);
  if (apart > JOIN_TOLERANCE_M) {
    findings.push(
      finding('branch-apart-from-path', 'warning', { kind: 'path', id: curve.path.id }, { distance: apart }),
    );
  }
  // a wye stands on a straight pipe: at a bend the arc passes beside the corner, so the nearest station is taken
  return { path: main.path.id, vertex: last.point.at, station: stationOf(main.line, corner).station };
}
