import {
  type AnyDigFinding,
  type EdgeClearance,
  findingSubject,
  type InTheWay,
  standsInTheWay,
} from '@footmark/dig';
import { degrees } from '@footmark/geometry';
import { type Dig, derive, type Path, type Side, type Site, standardBendOf } from '@footmark/site';

/** Bends of one kind: what they turn by (rad), as a standard bend's name where it is one, and how many. */
export type BendCount = { readonly name: string | null; readonly turn: number; readonly count: number };

/** What is dug for a way, all digs together. Metres, m², m³; null where a depth is not known. */
export type Dug = {
  readonly length: number;
  readonly deepest: number | null;
  readonly volume: number | null;
  readonly paved: number;
  readonly lawn: number;
  readonly beyond: number;
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
  /** Of the pipe (m): in plan, and along it. */
  readonly length: number;
  readonly developed: number;
  readonly bends: readonly BendCount[];
  readonly fall: { readonly required: number; readonly available: number | null };
  /** Least cover (m) where that is known. */
  readonly cover: number | null;
  readonly cleanouts: { readonly asked: number; readonly missing: number };
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
const SAME_BEND_RAD = 0.5 / degrees(1);

/** A way as it is tried: its pipe on the site, new or there already, and what is dug for it. */
export type Tried = { readonly path: Path; readonly isNew: boolean; readonly digs: readonly Dig[] };

/** Tries a way on a site that has no other digs, and reads off what it takes. `today`: an ISO day. Null where its pipe has no line. */
export function wayFacts(site: Site, { path, isNew, digs }: Tried, today: string): WayFacts | null {
  const tried: Site = {
    ...site,
    paths: isNew ? [...site.paths, path] : site.paths,
    digging: { ...site.digging, digs: [...digs] },
  };
  const derived = derive(tried);
  const on = derived.paths.get(path.id);
  if (on === undefined) return null;
  const all = standsInTheWay(tried, derived, null, today);
  const drain = all.drains.paths.find((d) => d.path === path.id);
  const land = (...whose: readonly string[]) =>
    all.land.stretches
      .filter((s) => s.path === path.id && whose.includes(s.whose))
      .reduce((sum, s) => sum + s.to - s.from, 0);
  const cover = drain?.cover.least?.cover ?? null;
  return {
    length: on.length,
    developed: on.profile.total,
    bends: bendsOf(path, drain?.turns.map((t) => t.turn) ?? []),
    fall: { required: drain?.fall.required ?? 0, available: drain?.fall.available?.available ?? null },
    cover,
    cleanouts: {
      asked: drain?.cleanouts.length ?? 0,
      missing: drain?.cleanouts.filter((c) => c.by === null).length ?? 0,
    },
    nearest: all.clearances.filter(({ of }) => of.is === 'path' && of.id === path.id),
    trees: treesOf(all, path.id),
    dug: dugOf(all),
    services: [
      ...new Set(all.services.crossings.filter((c) => c.path === path.id && !c.joins).map((c) => c.feature)),
    ],
    shared: land('shared'),
    others: land('neighbour', 'outside'),
    public: land('public'),
    unknownLand: land('unknown'),
    findings: all.findings.filter((f) => isAbout(f, path.id, digs, isNew || path.state === 'proposed')),
  };
}

function bendsOf(path: Path, drawn: readonly number[]): readonly BendCount[] {
  const known = path.vertices.flatMap(({ bend }) => (bend === undefined ? [] : [bend]));
  const counts = new Map<string, BendCount>();
  for (const turn of known.length > 0 ? known : drawn) {
    const name = standardBendOf(turn, SAME_BEND_RAD)?.name ?? null;
    const key = name ?? String(Math.round(degrees(turn)));
    counts.set(key, { name, turn, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => a.turn - b.turn);
}

function treesOf({ trees }: InTheWay, path: string): readonly TreeShare[] {
  return trees.trees.flatMap(({ tree }) => {
    const pipe = trees.pipes.find((p) => p.tree === tree && p.path === path);
    const taken = trees.totals.find((t) => t.tree === tree);
    const [length, share] = [pipe?.zones[0]?.length ?? 0, taken?.zones[0]?.share ?? 0];
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
    paved: sum((e) => e.restore?.paved ?? 0) ?? 0,
    lawn: sum((e) => e.restore?.lawn ?? 0) ?? 0,
    beyond: sum((e) => e.restore?.beyond ?? 0) ?? 0,
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
