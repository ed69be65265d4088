import type { Locate, SiteAccuracy } from '@footmark/site';
import { lengthText } from '@footmark/words';
import type { ReportSetting } from './reportSetting';
import { roundedAngle, roundedLength } from './rounding';

/** A locate beside where the computation has the sonde. */
export function locateReport(locate: Locate, { site, words }: ReportSetting) {
  const { feature, mark, method, depth, found, computed, distance, along, across, weighed } = locate;
  return {
    feature,
    name: words.targetName({ kind: 'feature', id: feature }, site),
    mark: mark.label,
    method: method ?? null,
    methodName: method == null ? null : words.choiceName(method),
    depth: depth === null ? null : roundedLength(depth),
    found: { x: roundedLength(found.x), y: roundedLength(found.y) },
    computed: { x: roundedLength(computed.x), y: roundedLength(computed.y) },
    distance: roundedLength(distance),
    along: roundedLength(along),
    across: roundedLength(across),
    weighed,
    display: {
      depth: depth === null ? null : lengthText(depth, site.units),
      distance: lengthText(distance, site.units),
      along: lengthText(along, site.units),
      across: lengthText(across, site.units),
    },
  };
}

/** How good the computation is on this site, by all its locates. */
export function accuracyReport(
  { rmseX, rmseY, rmse, accuracy, ratio, ...rest }: SiteAccuracy,
  { site }: ReportSetting,
) {
  return {
    ...rest,
    rmseX: roundedLength(rmseX),
    rmseY: roundedLength(rmseY),
    rmse: roundedLength(rmse),
    accuracy: roundedLength(accuracy),
    ratio: roundedAngle(ratio),
    display: { rmse: lengthText(rmse, site.units), accuracy: lengthText(accuracy, site.units) },
  };
}
