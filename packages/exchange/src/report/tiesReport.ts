import type { Tie, Ties } from '@footmark/site';
import { angleText, lengthText } from '@footmark/words';
import type { ReportSetting } from './reportSetting';
import { roundedAngle, roundedLength } from './rounding';

/** What a place is taped from. */
export function tiesReport(ties: Ties, setting: ReportSetting) {
  const { site, words } = setting;
  return {
    pair: ties.pair.map((tie) => tieReport(tie, setting)),
    check: ties.check === null ? null : tieReport(ties.check, setting),
    side: ties.side,
    cutAngle: roundedAngle(ties.cutAngle),
    worstAxis: roundedLength(ties.worstAxis),
    display: {
      side: words.sideText(ties, site),
      cutAngle: angleText(ties.cutAngle),
      worstAxis: lengthText(ties.worstAxis, site.units),
    },
  };
}

function tieReport(tie: Tie, { site, words }: ReportSetting) {
  return {
    from: tie.from.ref,
    name: words.referenceName(tie.from, site),
    measured: tie.from.measured,
    distance: roundedLength(tie.distance),
    display: words.tieText(tie, site),
  };
}
