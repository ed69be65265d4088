import type { RunEnd } from '../kinds/readingWords';
import { type SeenStretch, SHORTEST_STRETCH_M } from './coverage';
import type { LookedStretch } from './lookedAt';
import type { Mark } from './marks';

/**
 * What a run did where a gap begins: it stopped there, for the reason that was given (null: none), at its furthest reading; or it came
 * in there or went over from or into another pipe, and so saw nothing on this side.
 */
export type GapEnd =
  | { readonly run: string; readonly is: 'stopped'; readonly ended: RunEnd | null; readonly last: Mark }
  | { readonly run: string; readonly is: 'began' | 'turned' };

/** A piece of a path (stations, m, ascending) that no camera has seen. An end is null where it is just the end of the pipe. */
export type UnseenGap = {
  readonly path: string;
  readonly from: number;
  readonly to: number;
  readonly upstream: GapEnd | null;
  readonly downstream: GapEnd | null;
};

/** The gaps in what was looked at, path by path, with the flow. */
export function unseenGaps(
  lookedAt: ReadonlyMap<string, readonly LookedStretch[]>,
  coverage: readonly SeenStretch[],
): readonly UnseenGap[] {
  const gaps: UnseenGap[] = [];
  for (const [path, stretches] of lookedAt) {
    const seen = coverage.filter((s) => s.path === path);
    for (const { from, to, runs } of stretches) {
      if (runs.length > 0) continue;
      const upstream = endAt(from, seen, 'to', 'atTo');
      const downstream = endAt(to, seen, 'from', 'atFrom');
      gaps.push({ path, from, to, upstream, downstream });
    }
  }
  return gaps;
}

/** A run that stopped tells more than one that only came by. */
const TELLING = ['stopped', 'turned', 'began'] as const;

function endAt(
  station: number,
  seen: readonly SeenStretch[],
  side: 'from' | 'to',
  what: 'atFrom' | 'atTo',
): GapEnd | null {
  const here = seen.filter((s) => Math.abs(s[side] - station) < SHORTEST_STRETCH_M);
  for (const is of TELLING) {
    const stretch = here.find((s) => s[what] === is);
    if (stretch === undefined) continue;
    const { run, last } = stretch;
    return is === 'stopped' ? { run, is, ended: last.run.ended ?? null, last } : { run, is };
  }
  return null;
}
