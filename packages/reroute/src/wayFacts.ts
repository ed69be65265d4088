import {
  type AnyDigFinding,
  type EdgeClearance,
  findingSubject,
  type InTheWay,
  standsInTheWay,
} from '@footmark/dig';
import { degrees, developedAt, radians } from '@footmark/geometry';
import { type Derived, type Dig, type Path, type Side, type Site, standardBendOf } from '@footmark/site';
import { coverOn, fallOn, isWithin, lengthWithin, nearestTo, type Piece } from './pieceOfPipe';

/** Bends of one kind: what they turn by (rad), as a standard bend's name where it is one, and how many. */
export type BendCount = { readonly name: string | null; readonly turn: number; readonly count: number };

/** What is dug for a way, all digs together. Metres, m², m³; null where a depth is not known. */
export type Dug = {
  readonly length: number;
  readonly deepest: number | null;
  readonly volume: number | null;
  readonly paved: number | null;
  readonly lawn: number | null;
  readonly beyond: number | null;
};

/** What of a tree's root zone, by the rule that the site has chosen, a way takes. */
export type TreeShare = {
  readonly tree: string;
  /** Metres of pipe in it, and the share of its area that is dug or lies under spoil. */
  readonly length: number;
  readonly share: number;
  /** Of the pipe, seen with its flow, on which the tree stands. */
  readonly side: Side | null;
};

/** What a way takes, read off the site on which it was tried. */
export type WayFacts = {
  /** Of the pipe that is laid or mended (m): in plan, and along it. */
  readonly length: number;
  readonly developed: number;
  readonly bends: readonly BendCount[];
  readonly fall: { readonly required: number; readonly available: number | null };
  /** Least cover (m) where that is known. */
  readonly cover: number | null;
  /** Of the whole pipe: how many are asked for, and at which stations (plan m) they are missing. */
  readonly cleanouts: { readonly asked: number; readonly missing: readonly number[] };
  /** The nearest things, those that a rule asks for more of first. */
  readonly nearest: readonly EdgeClearance[];
  readonly trees: readonly TreeShare[];
  readonly dug: Dug;
  readonly services: readonly string[];
  /** Metres of pipe on land that is not the house's own. */
  readonly shared: number;
  readonly others: number;
  readonly public: number;
  readonly unknownLand: number;
  /** Of what is dug for it, and of its pipe where that is not there yet, worst first. */
  readonly findings: readonly AnyDigFinding[];
};

/** Standard bends are drawn as true as this (rad). */
const SAME_BEND_RAD = radians(0.5);

/** A way as it is tried: its pipe on the site, new or there already, the piece of it that is laid or mended, and what is dug for it. */
export type Tried = {
  readonly path: Path;
  readonly isNew: boolean;
  readonly piece: Piece;
  readonly digs: readonly Dig[];
};

/**
 * Tries a way on a site that holds its pipe, with no other digs, and reads off what it takes: of its pipe what the piece takes, but of the
 * cleanouts all. `today`: an ISO day. Null where its pipe has no line.
 */
export function wayFacts(
  site: Site,
  derived: Derived,
  { path, isNew, piece, digs }: Tried,
  today: string,
): WayFacts | null {
  const on = derived.paths.get(path.id);
  const profile = derived.profiles.get(path.id);
  if (on === undefined || profile === undefined) return null;
  const tried: Site = { ...site, digging: { ...site.digging, digs: [...digs] } };
  const all = standsInTheWay(tried, derived, null, today);
  const drain = all.drains.paths.find((d) => d.path === path.id);
  if (drain === undefined) return null;
  const land = (...whose: readonly string[]) =>
    lengthWithin(
      all.land.stretches.filter((s) => s.path === path.id && whose.includes(s.whose)),
      piece,
    );
  const crossings = all.services.crossings.filter(
    (c) => c.path === path.id && !c.joins && isWithin(c.station, piece),
  );
  return {
    length: piece.to - piece.from,
    developed: developedAt(on.profile, piece.to, 'after') - developedAt(on.profile, piece.from),
    bends: bendsOf(drain.turns.filter((t) => isWithin(t.station, piece)).map((t) => t.turn)),
    fall: fallOn(drain, piece),
    cover: coverOn(drain, profile, piece),
    cleanouts: {
      asked: drain.cleanouts.length,
      missing: drain.cleanouts.flatMap((c) => (c.by === null ? [c.station] : [])),
    },
    nearest: nearestTo(site, derived, on, piece),
    trees: treesOf(all, path.id, piece),
    dug: dugOf(all),
    services: [...new Set(crossings.map((c) => c.feature))],
    shared: land('shared'),
    others: land('neighbour', 'outside'),
    public: land('public'),
    unknownLand: land('unknown'),
    findings: all.findings.filter((f) => isAbout(f, path.id, digs, isNew || path.state === 'proposed')),
  };
}

function bendsOf(turns: readonly number[]): readonly BendCount[] {
  const counts = new Map<string, BendCount>();
  for (const turn of turns) {
    const name = standardBendOf(turn, SAME_BEND_RAD)?.name ?? null;
    const key = name ?? String(Math.round(degrees(turn)));
    counts.set(key, { name, turn, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => a.turn - b.turn);
}

function treesOf({ trees }: InTheWay, path: string, piece: Piece): readonly TreeShare[] {
  return trees.trees.flatMap(({ tree }) => {
    const pipe = trees.pipes.find((p) => p.tree === tree && p.path === path);
    const taken = trees.totals.find((t) => t.tree === tree);
    const [length, share] = [
      lengthWithin(pipe?.zones[0]?.stretches ?? [], piece),
      taken?.zones[0]?.share ?? 0,
    ];
    return length > 0 || share > 0 ? [{ tree, length, share, side: pipe?.side ?? null }] : [];
  });
}

function dugOf({ excavations }: InTheWay): Dug {
  const sum = (of: (e: (typeof excavations)[number]) => number | null) =>
    excavations.reduce<number | null>((total, e) => {
      const one = of(e);
      return total === null || one === null ? null : total + one;
    }, 0);
  const deepest = excavations.reduce<number | null>(
    (most, { depth }) => (most === null || depth === null ? null : Math.max(most, depth.most)),
    0,
  );
  return {
    length: sum((e) => e.bottom?.length ?? 0) ?? 0,
    deepest: excavations.length === 0 ? null : deepest,
    volume: sum((e) => e.volume),
    paved: sum((e) => e.restore?.paved ?? null),
    lawn: sum((e) => e.restore?.lawn ?? null),
    beyond: sum((e) => e.restore?.beyond ?? null),
  };
}

/** Of an old pipe that is mended only what is dug for it: what it lies in, it lies in already. */
function isAbout(finding: AnyDigFinding, path: string, digs: readonly Dig[], isPlanned: boolean): boolean {
  // of all digs together: there are no others on the site
  if (finding.code === 'minor-encroachment' || finding.code === 'major-encroachment') return true;
  const { kind, id } = { id: '', ...findingSubject(finding) };
  if (kind === 'dig') return digs.some((d) => d.id === id);
  return isPlanned && kind === 'path' && id === path;
}
