import { chordStations, locate, type Point } from '@footmark/geometry';
import { type DerivedPath, pipeSizeAt } from '@footmark/site';

/** The centre line of a pipe as chords: points with their stations (plan metres), and of each leg between them half the outside diameter (m). */
export type PathLegs = {
  readonly points: readonly Point[];
  readonly stations: readonly number[];
  readonly radii: readonly number[];
};

/** A chord lies at most this far (m) from its bend. */
const BEND_SAGITTA_M = 0.002;

/** Cuts a path where its stretches begin, too, so that each leg has one size. */
export function pathLegs({ line, length, path }: DerivedPath): PathLegs {
  const changes = path.stretches.map((s) => s.from).filter((s) => s > 0 && s < length);
  const stations = [...new Set([...chordStations(line, 0, length, BEND_SAGITTA_M), ...changes])];
  stations.sort((a, b) => a - b);
  return {
    points: stations.map((station) => locate(line, station).point),
    stations,
    radii: stations.slice(1).map((to, i) => {
      const { diameter, wall } = pipeSizeAt(path.stretches, ((stations[i] ?? to) + to) / 2);
      return diameter / 2 + wall;
    }),
  };
}
