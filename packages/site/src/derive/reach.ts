import { distance, type PipeReach, pipeReach, type Reach, reachOf } from '@footmark/geometry';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { pointSigmas } from '../fit/pointSigma';
import { type Finding, finding } from './finding';
import type { Mark } from './marks';
import { type KnownSetting, knownOf, type ReachKnown, reachKnowns } from './reachKnowns';
import { sameThings } from './sameThings';

/**
 * Cables that cannot all lead to one place, even with their slack: two that without it are `gap` metres shorter than the line between
 * their points, or three each of which lacks `gap` metres more to a place in common. A reading, a zero, a point or a pair is wrong.
 */
export type ReachContradiction = { readonly knowns: readonly ReachKnown[]; readonly gap: number };

/** Where what a reading saw can be at all, by the lengths of cable alone: whatever way the pipe takes. */
export type MarkReach = {
  /** The reading's own first, then those of readings that saw the same thing. */
  readonly knowns: readonly ReachKnown[];
  /** What the discs about the known points, each with its cable and slack as radius, have in common; null when they contradict. */
  readonly region: Reach | null;
  /** Where the pipe between two known points can run, when it was pushed from both ends. */
  readonly pipes: readonly {
    readonly from: ReachKnown;
    readonly to: ReachKnown;
    readonly reach: PipeReach;
  }[];
  readonly contradiction: ReachContradiction | null;
};

type Placed = Omit<KnownSetting, 'site' | 'marks'> & { readonly marks: readonly Mark[] };

/** The reach of a mark; null when no point is known from which its cable leads. */
export function reachOfMark(site: Site, { points, features, marks }: Placed, mark: Mark): MarkReach | null {
  const own = mark.reading.id;
  const others = sameThings(site.pairs).of(own);
  const readings = [own, ...others.map((r) => r.reading).filter((reading) => reading !== own)];
  const byReading = new Map(marks.map((m) => [m.reading.id, m]));
  const setting = { site, points, features, marks: byReading };
  const knowns = reachKnowns(setting, readings, pointSigmas(site, points));
  if (knowns.length === 0) return null;
  const found = reachOf(knowns.map(({ at, cable, slack }) => ({ at, cable: cable + slack })));
  return {
    knowns,
    region: found.ok ? found.value : null,
    pipes: pipesBetween(knowns),
    contradiction: found.ok ? null : contradictionOf(knowns, found.values ?? {}),
  };
}

function pipesBetween(knowns: readonly ReachKnown[]): MarkReach['pipes'] {
  return knowns.flatMap((from, i) =>
    knowns.slice(i + 1).flatMap((to) => {
      if (from.mark.run.direction === to.mark.run.direction) return [];
      const reach = pipeReach(from.at, to.at, from.cable + from.slack + to.cable + to.slack);
      return reach.ok ? [{ from, to, reach: reach.value }] : [];
    }),
  );
}

function contradictionOf(
  knowns: readonly ReachKnown[],
  { first, second, third, each = 0 }: Readonly<Record<string, number>>,
): ReachContradiction {
  const named = [first, second, third].flatMap((i) => (i === undefined ? [] : (knowns[i] ?? [])));
  const [a, b, c] = named;
  const gap = a === undefined || b === undefined || c !== undefined ? each : lackOf(a, b);
  return { knowns: named, gap };
}

type Stretched = Pick<ReachKnown, 'at' | 'cable'>;

/** Metres that two cables together are shorter than the line between their points. */
function lackOf(a: Stretched, b: Stretched): number {
  return distance(a.at, b.at) - a.cable - b.cable;
}

/** Says of each pair of two runs whose cables cannot lead to one place. */
export function sayOfReach(site: Site, { points, features, marks }: Placed, findings: Finding[]): void {
  if (site.pairs.length === 0) return;
  const setting = { site, points, features, marks: new Map(marks.map((m) => [m.reading.id, m])) };
  let sigmaOfPoint: ReturnType<typeof pointSigmas> | null = null;
  for (const { a, b } of site.pairs) {
    const [p, q] = [knownOf(setting, a.reading), knownOf(setting, b.reading)];
    if (p === null || q === null || p.mark.run === q.mark.run) continue;
    // most cables are long enough without their slack, which takes longer to know
    const gap = lackOf(p, q);
    if (gap <= 0) continue;
    sigmaOfPoint ??= pointSigmas(site, points);
    const slacks = reachKnowns(setting, [a.reading, b.reading], sigmaOfPoint).map((known) => known.slack);
    if (gap <= slacks.reduce((sum, slack) => sum + slack, 0)) continue;
    const at = { kind: 'reading', run: p.mark.run.id, id: p.mark.reading.id } as const;
    const named = { a: p.mark.label, b: q.mark.label, pointA: refKey(p.point), pointB: refKey(q.point) };
    findings.push(finding('cables-too-short', 'warning', at, { ...named, gap }));
  }
}
