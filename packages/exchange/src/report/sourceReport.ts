import { type RuleName, ruleOf } from '@footmark/site';
import type { ReportSetting } from './reportSetting';
import { roundedAngle } from './rounding';

/** Where a rule's model value comes from, and who has changed it on this site from what to what. */
export function sourceReport(rule: RuleName, { site, words }: ReportSetting) {
  const { row, changed } = ruleOf(site, rule);
  return {
    source: words.basisText(row),
    changed:
      changed === null
        ? null
        : {
            from: roundedAngle(row.value),
            to: roundedAngle(changed.value),
            who: changed.who,
            why: changed.why,
            display: words.ruleChangeText(changed, row, site.units),
          },
  };
}
