import type { GapEnd, LookedStretch, UnseenGap } from '@footmark/site';
import { lengthText } from '@footmark/words';
import type { ReportSetting } from './reportSetting';
import { roundedLength } from './rounding';

/** What the cameras have seen of a path, run by run and piece by piece, and what none of them has, with what stopped each. */
export function coverageReport(path: string, stretches: readonly LookedStretch[], setting: ReportSetting) {
  const { coverage, unseen } = setting.derived;
  return {
    path,
    seen: coverage
      .filter((stretch) => stretch.path === path)
      .map((stretch) => ({ run: stretch.run, ...rangeReport(stretch, setting) })),
    lookedAt: stretches.map((stretch) => ({ runs: stretch.runs, ...rangeReport(stretch, setting) })),
    unseen: unseen.filter((gap) => gap.path === path).map((gap) => gapReport(gap, setting)),
  };
}

function gapReport(gap: UnseenGap, setting: ReportSetting) {
  return {
    ...rangeReport(gap, setting),
    upstream: endReport(gap.upstream, setting),
    downstream: endReport(gap.downstream, setting),
  };
}

function endReport(end: GapEnd | null, { words }: ReportSetting) {
  if (end === null) return null;
  const stopped = end.is === 'stopped' ? end : null;
  return {
    run: end.run,
    is: end.is,
    last: stopped?.last.label ?? null,
    ended: stopped?.ended ?? null,
    endedName: stopped === null || stopped.ended === null ? null : words.runEndName(stopped.ended),
  };
}

function rangeReport({ from, to }: { readonly from: number; readonly to: number }, { site }: ReportSetting) {
  return {
    from: roundedLength(from),
    to: roundedLength(to),
    display: { from: lengthText(from, site.units), to: lengthText(to, site.units) },
  };
}
