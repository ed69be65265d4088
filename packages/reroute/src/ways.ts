import { treeZones } from '@footmark/dig';
import { pathInCircle } from '@footmark/geometry';
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
  /** Of a new pipe. */
  readonly route: RatedRoute | null;
  readonly path: Path;
  readonly digs: readonly Dig[];
  /** Stretches that are bored (plan metres along the pipe). */
  readonly bored: readonly { readonly from: number; readonly to: number }[];
  readonly facts: WayFacts;
};

/** Pieces of trench shorter than this (m) are part of a pit. */
const SHORTEST_M = 0.5;

/** All ways beside each other: the routes that were found, with their bored variants, then those of the pipe that is there or planned. `today`: an ISO day. */
export function waysOf(
  site: Site,
  derived: Derived,
  ask: RerouteAsk,
  { request }: Rerouting,
  routes: readonly RatedRoute[],
  today: string,
): readonly Way[] {
  const ways: Way[] = [];
  const add = (
    way: Omit<Way, 'facts'>,
    on: { site: Site; derived: Derived; isNew: boolean; piece: Piece },
  ) => {
    const tried = { path: way.path, isNew: on.isNew, piece: on.piece, digs: way.digs };
    const facts = wayFacts(on.site, on.derived, tried, today);
    if (facts !== null) ways.push({ ...way, facts });
  };
  for (const [i, route] of routes.entries()) {
    const path = routePath(site, derived, { ask, request, route, id: `way-${i + 1}`, name: '' });
    const withPath = { ...site, paths: [...site.paths, path] };
    const tried = derive(withPath);
    const line = tried.paths.get(path.id);
    if (line === undefined) continue;
    const { length } = line;
    const on = { site: withPath, derived: tried, isNew: true, piece: { from: 0, to: length } };
    const common = { route, path };
    add({ ...common, id: `new-${i + 1}`, is: 'new', digs: [trench(path.id, 0, length, 1)], bored: [] }, on);
    const bored = boredStretches(withPath, tried, line);
    if (bored.length === 0) continue;
    add(
      { ...common, id: `bored-${i + 1}`, is: 'bored', digs: around(site, path.id, length, bored), bored },
      on,
    );
  }
  const old = derived.paths.get(ask.path);
  if (old === undefined) return ways;
  const piece = stationsOf(ask, old.length);
  const { from, to } = piece;
  const common = { route: null, path: old.path };
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

function trench(path: string, from: number, to: number, number: number): Dig {
  return { id: `${path}-dig-${number}`, name: '', note: '', is: 'trench', path, from, to };
}

/** Pits at both ends of a stretch, within it. */
function pits(site: Site, path: string, from: number, to: number): readonly Dig[] {
  const length = Math.min(ruleValue(site, 'routePit'), (to - from) / 2);
  return [trench(path, from, from + length, 1), trench(path, to - length, to, 2)];
}

/** Trenches before, between and past what is bored, each at least as long as a pit. */
function around(site: Site, path: string, length: number, bored: Way['bored']): readonly Dig[] {
  const pit = ruleValue(site, 'routePit');
  const edges = [0, ...bored.flatMap(({ from, to }) => [from, to]), length];
  const digs: Dig[] = [];
  for (let i = 0; i + 1 < edges.length; i += 2) {
    const [from, to] = [edges[i] ?? 0, edges[i + 1] ?? length];
    const short = Math.max(0, Math.min(pit, length) - (to - from));
    // a pit reaches into what would be bored where there is no room for it beside that
    const [a, b] = [
      Math.max(0, from - (from === 0 ? 0 : short / 2)),
      Math.min(length, to + (to === length ? 0 : short / 2)),
    ];
    if (b - a > SHORTEST_M) digs.push(trench(path, a, b, digs.length + 1));
  }
  return digs;
}

/** Where a new pipe runs through a root zone on one straight leg: a bore has no bends. */
function boredStretches(site: Site, derived: Derived, { line, length }: DerivedPath): Way['bored'] {
  const bends = [...line.vertexStations].slice(1, -1);
  const inside = treeZones(site, derived)
    .trees.flatMap(({ at, chosen }) => pathInCircle(line, at, chosen.radius))
    .sort((a, b) => a.from - b.from);
  const joined: { from: number; to: number }[] = [];
  for (const { from, to } of inside) {
    const last = joined.at(-1);
    if (last !== undefined && from <= last.to + SHORTEST_M) last.to = Math.max(last.to, to);
    else joined.push({ from, to });
  }
  const straight = ({ from, to }: { from: number; to: number }) => !bends.some((b) => b > from && b < to);
  return joined.filter((s) => s.to - s.from > SHORTEST_M && s.to - s.from < length && straight(s));
}
