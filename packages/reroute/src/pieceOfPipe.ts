import {
  clearancesFrom,
  type DrainCheck,
  type EdgeClearance,
  featureIndex,
  pathSubject,
  requiredOn,
  worstFirst,
} from '@footmark/dig';
import { chordStations, locate, pathLength, pathLine } from '@footmark/geometry';
import {
  type Derived,
  type DerivedPath,
  type PathProfile,
  profileAt,
  profileRules,
  type Site,
} from '@footmark/site';

/** From one station of a pipe to another (plan m). */
export type Piece = { readonly from: number; readonly to: number };

/** What of pieces lies within another, all together (m). */
export function lengthWithin(pieces: readonly Piece[], { from, to }: Piece): number {
  return pieces.reduce((sum, p) => sum + Math.max(0, Math.min(p.to, to) - Math.max(p.from, from)), 0);
}

export function isWithin(station: number, { from, to }: Piece): boolean {
  return station >= from && station <= to;
}

/** What a piece of a drain has to fall, and has between the places whose level is known; null where it holds nothing of that (m). */
export function fallOn({ fall: { asked, slopes } }: DrainCheck, piece: Piece) {
  const known = slopes.filter((s) => lengthWithin([s], piece) > 0);
  return {
    required: asked.reduce((sum, a) => sum + a.least.value * lengthWithin([a], piece), 0),
    available:
      known.length === 0 ? null : known.reduce((sum, s) => sum + s.slope * lengthWithin([s], piece), 0),
  };
}

/** Inside of a turning place by this much (m), where what holds on that side of it is looked up. */
const INSIDE_M = 1e-7;

/** Least cover (m) of a piece, where it is known. */
export function coverOn({ cover: { least } }: DrainCheck, profile: PathProfile, piece: Piece): number | null {
  if (least === null || isWithin(least.station, piece)) return least?.cover ?? null;
  const stations = [piece.from, ...turningStations(profile).filter((s) => isWithin(s, piece)), piece.to];
  const covers = stations
    .flatMap((s) => [s - INSIDE_M, s + INSIDE_M])
    .flatMap((s) => (isWithin(s, piece) ? (profileAt(profile, s).cover?.depth ?? []) : []));
  return covers.length === 0 ? null : Math.min(...covers);
}

/** Between these the cover changes evenly. */
function turningStations({ ground: { marks, indoors }, line, drops }: PathProfile): readonly number[] {
  const reach = profileRules.groundReach.value;
  return [
    ...marks.flatMap((m) => [m.station - reach, m.station, m.station + reach]),
    ...marks.slice(1).map((m, i) => (m.station + (marks[i]?.station ?? m.station)) / 2),
    ...indoors.flatMap((i) => [i.from, i.to]),
    ...[...line.grades, ...drops].map((p) => p.station),
    ...line.stretches.map((s) => s.from),
  ];
}

/** A chord lies at most this far (m) from its bend. */
const BEND_SAGITTA_M = 0.002;

/** From a piece of a pipe to everything that is worth listing, the worst first; stations along the whole pipe. */
export function nearestTo(
  site: Site,
  { features }: Derived,
  on: DerivedPath,
  piece: Piece,
): readonly EdgeClearance[] {
  const cut = pieceOf(on, piece);
  if (cut === null) return [];
  const found = clearancesFrom(pathSubject(cut), featureIndex(features.values()), requiredOn(site));
  return worstFirst(found).map((c) => ({
    ...c,
    station: c.station === null ? null : c.station + piece.from,
  }));
}

/** A piece as a pipe of its own; null where it has no length. */
function pieceOf(on: DerivedPath, { from, to }: Piece): DerivedPath | null {
  const points = chordStations(on.line, from, to, BEND_SAGITTA_M).map((s) => locate(on.line, s).point);
  const line = pathLine(points.map((point) => ({ point, bendRadius: 0 })));
  if (!line.ok) return null;
  const stretches = on.path.stretches.map((s) => ({ ...s, from: s.from - from }));
  return {
    ...on,
    path: { ...on.path, stretches },
    points,
    line: line.value,
    length: pathLength(line.value),
  };
}
