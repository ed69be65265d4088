import type { PairAgreement, PairExplanation, PairSuggestion } from '@footmark/site';
import { lengthText } from '@footmark/words';
import type { ReportSetting } from './reportSetting';
import { roundedLength } from './rounding';

/** How two runs agree about one thing, and what would alone make them agree. */
export function pairReport(agreement: PairAgreement, setting: ReportSetting) {
  const { site } = setting;
  const { pair, a, b, path, stationA, stationB, closure, sigma, explanations } = agreement;
  return {
    id: pair.id,
    a: a.label,
    b: b.label,
    path,
    stationA: roundedLength(stationA),
    stationB: roundedLength(stationB),
    closure: roundedLength(closure),
    sigma: roundedLength(sigma),
    display: { closure: lengthText(closure, site.units), sigma: lengthText(sigma, site.units) },
    explanations: explanations.map((e) => explanationReport(e, setting)),
  };
}

/** A scale is a plain number, all else metres. */
function explanationReport(explanation: PairExplanation, { site }: ReportSetting) {
  const { is, wouldBe, by } = explanation;
  return {
    is,
    run: explanation.is === 'pipe' ? null : explanation.run,
    wouldBe: roundedLength(wouldBe),
    by: roundedLength(by),
    display:
      is === 'scale' ? null : { wouldBe: lengthText(wouldBe, site.units), by: lengthText(by, site.units) },
  };
}

/** Two readings that could be one thing. */
export function suggestionReport({ a, b, closure, sigma }: PairSuggestion, { site }: ReportSetting) {
  return {
    a: a.label,
    b: b.label,
    closure: roundedLength(closure),
    sigma: roundedLength(sigma),
    display: { closure: lengthText(closure, site.units) },
  };
}
