import { type Point, stationOfVertex } from '@footmark/geometry';
import type { PipeLevel } from '../document/path';
import type { Site } from '../document/site';
import type { Derived } from './derive';
import { tiesAt } from './markTies';
import { tieSurroundings } from './tieChooser';
import type { Ties } from './ties';

/** A point of a pipe that lies in the ground, tied to what will still stand when it is looked for again. */
export type AsBuiltTie = {
  readonly vertex: string;
  /** Plan metres from the start. */
  readonly station: number;
  readonly at: Point;
  /** It was laid bare and measured; else it is taken to lie there. */
  readonly measured: boolean;
  readonly level: PipeLevel | null;
  /** Null under a building, and where no two lasting references cut. */
  readonly ties: Ties | null;
};

/** Every point of a path with its ties to lasting references alone, with the flow. Empty for a path without a curve. */
export function asBuiltTies(site: Site, derived: Derived, path: string): readonly AsBuiltTie[] {
  const on = derived.paths.get(path);
  if (on === undefined) return [];
  const around = tieSurroundings(site, derived, 'lasting');
  return on.points.map((at, i) => ({
    vertex: on.path.vertices[i]?.id ?? '',
    station: stationOfVertex(on.line, i),
    at,
    measured: on.measured[i] ?? false,
    level: on.path.vertices[i]?.level ?? null,
    ties: tiesAt(at, around).ties,
  }));
}
