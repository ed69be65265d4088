import { treeZones } from '@footmark/dig';
import { pathInCircle, stationOf } from '@footmark/geometry';
import type { RatedRoute } from '@footmark/route';
import {
  type Derived,
  type DerivedPath,
  type Dig,
  derive,
  type Path,
  ruleValue,
  type Site,
} from '@footmark/site';
import { type RerouteAsk, stationsOf } from './ask';
import type { Piece } from './pieceOfPipe';
import type { Rerouting } from './requestOf';
import { routePath } from './routePath';
import { type WayFacts, wayFacts } from './wayFacts';

/**
 * How the drain could be made good: a `new` pipe in a trench; the same `bored` under root zones; the old one dug up and laid anew (`repair`), or
 * burst or lined from pits at its ends (`in-place`). Of a pipe that is only planned, in a trench as it is `drawn`.
 */
export type WayIs = 'new' | 'bored' | 'repair' | 'in-place' | 'drawn';

export type Way = {
  readonly id: string;
  readonly is: WayIs;
  /** Of a new pipe, and the pipe that it is brought to; null at a thing to which none leads, and of an old pipe. */
  readonly route: RatedRoute | null;
  readonly onto: string | null;
  readonly path: Path;
  readonly digs: readonly Dig[];
  /** Stretches that are bored (plan metres along the pipe). */
  readonly bored: readonly Piece[];
  /** Pipes that join the piece that a new one takes the place of: somebody has to bring them over. */
  readonly branches: readonly string[];
  readonly facts: WayFacts;
};

/** Pieces of trench shorter than this (m) are part of a pit. */
const SHORTEST_M = 0.5;

/** All ways beside each other: the routes that were found, with their bored variants, then those of the pipe that is there or planned. `today`: an ISO day. */
export function waysOf(
  site: Site,
  derived: Derived,
  ask: RerouteAsk,
  rerouting: Rerouting,
  routes: readonly RatedRoute[],
  today: string,
): readonly Way[] {
  const ways: Way[] = [];
  const old = derived.paths.get(ask.path);
  const add = (
    way: Omit<Way, 'facts' | 'branches'>,
    on: { site: Site; derived: Derived; isNew: boolean; piece: Piece },
  ) => {
    const tried = { path: way.path, isNew: on.isNew, piece: on.piece, digs: way.digs };
    const facts = wayFacts(on.site, on.derived, tried, today);
    if (facts === null) return;
    const given = old === undefined ? null : givenUp(old, ask, way);
    ways.push({ ...way, branches: given === null ? [] : branchesOn(derived, ask.path, given), facts });
  };
  for (const [i, route] of routes.entries()) {
    const path = routePath(derived, { ask, rerouting, route, id: `way-${i + 1}`, name: '' });
    const withPath = { ...site, paths: [...site.paths, path] };
    const tried = derive(withPath);
    const line = tried.paths.get(path.id);
    if (line === undefined) continue;
    const { length } = line;
    const on = { site: withPath, derived: tried, isNew: true, piece: { from: 0, to: length } };
    const common = { route, path, onto: rerouting.onto.get(route.end) ?? null };
    add({ ...common, id: `new-${i + 1}`, is: 'new', digs: [trench(path.id, 0, length, 1)], bored: [] }, on);
    const trenches = trenchesAround(site, length, boredStretches(withPath, tried, line));
    const bored = between(trenches, length).filter((s) => s.to > s.from);
    if (bored.length === 0) continue;
    const digs = trenches.map((t, n) => trench(path.id, t.from, t.to, n + 1));
    add({ ...common, id: `bored-${i + 1}`, is: 'bored', digs, bored }, on);
  }
  if (old === undefined) return ways;
  const piece = stationsOf(ask, old.length);
  const { from, to } = piece;
  const common = { route: null, onto: null, path: old.path };
  const on = { site, derived, isNew: false, piece };
  const open = { ...common, digs: [trench(ask.path, from, to, 1)], bored: [] };
  if (old.path.state === 'proposed') {
    add({ ...open, id: 'drawn', is: 'drawn' }, on);
    return ways;
  }
  add({ ...open, id: 'repair', is: 'repair' }, on);
  add(
    { ...common, id: 'in-place', is: 'in-place', digs: pits(site, ask.path, from, to), bored: [piece] },
    on,
  );
  return ways;
}

/** The piece of the old pipe that a new one takes the place of; null for a way that keeps it. */
function givenUp(
  old: DerivedPath,
  ask: RerouteAsk,
  { route, onto }: Pick<Way, 'route' | 'onto'>,
): Piece | null {
  const end = route?.points.at(-1);
  if (end === undefined) return null;
  const { from, to } = stationsOf(ask, old.length);
  return { from, to: onto === ask.path ? stationOf(old.line, end).station : to };
}

function branchesOn({ paths }: Derived, on: string, { from, to }: Piece): readonly string[] {
  return [...paths.values()].flatMap(({ path, joins }) =>
    path.state === 'existing' && joins?.path === on && joins.station > from && joins.station < to
      ? [path.id]
      : [],
  );
}

function trench(path: string, from: number, to: number, number: number): Dig {
  return { id: `${path}-dig-${number}`, name: '', note: '', is: 'trench', path, from, to };
}

/** Pits at both ends of a stretch, within it. */
function pits(site: Site, path: string, from: number, to: number): readonly Dig[] {
  const length = Math.min(ruleValue(site, 'routePit'), (to - from) / 2);
  return [trench(path, from, from + length, 1), trench(path, to - length, to, 2)];
}

/** Trenches before, between and past what is bored, each at least as long as a pit; those that meet are one. */
function trenchesAround(site: Site, length: number, bored: readonly Piece[]): readonly Piece[] {
  const pit = Math.min(ruleValue(site, 'routePit'), length);
  const trenches = between(bored, length).map(({ from, to }): Piece => {
    const short = Math.max(0, pit - (to - from));
    // a pit reaches into what would be bored where there is no room for it beside that; at an end of the pipe to its inner side alone
    if (from === 0) return { from, to: to + short };
    if (to === length) return { from: from - short, to };
    return { from: Math.max(0, from - short / 2), to: Math.min(length, to + short / 2) };
  });
  return joined(trenches).filter(({ from, to }) => to - from > SHORTEST_M);
}

/** Before, between and past pieces of a pipe, with those at its ends that have no length. */
function between(pieces: readonly Piece[], length: number): readonly Piece[] {
  return [...pieces, null].map((next, i) => ({ from: pieces[i - 1]?.to ?? 0, to: next?.from ?? length }));
}

/** Pieces in order, those that hardly stand apart as one. */
function joined(pieces: readonly Piece[]): readonly Piece[] {
  const all: { from: number; to: number }[] = [];
  for (const { from, to } of pieces) {
    const last = all.at(-1);
    if (last !== undefined && from <= last.to + SHORTEST_M) last.to = Math.max(last.to, to);
    else all.push({ from, to });
  }
  return all;
}

/** Where a new pipe runs through a root zone on one straight leg: a bore has no bends. */
function boredStretches(site: Site, derived: Derived, { line, length }: DerivedPath): Way['bored'] {
  const bends = [...line.vertexStations].slice(1, -1);
  const inside = treeZones(site, derived)
    .trees.flatMap(({ at, chosen }) => pathInCircle(line, at, chosen.radius))
    .sort((a, b) => a.from - b.from);
  const straight = ({ from, to }: { from: number; to: number }) => !bends.some((b) => b > from && b < to);
  return joined(inside).filter((s) => s.to - s.from > SHORTEST_M && s.to - s.from < length && straight(s));
}
