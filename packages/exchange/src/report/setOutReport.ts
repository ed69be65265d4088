import type { SetOut, SetOutBend, SetOutPoint } from '@footmark/site';
import { lengthText } from '@footmark/words';
import type { ReportSetting } from './reportSetting';
import { roundedAngle, roundedLength } from './rounding';
import { tiesReport } from './tiesReport';

/** A proposed path as it is set out on the ground. */
export function setOutReport({ path, evenGround, points }: SetOut, setting: ReportSetting) {
  const { site, words } = setting;
  return {
    path,
    pathName: words.targetName({ kind: 'path', id: path }, site),
    evenGround,
    points: points.map((point) => pointReport(point, setting)),
  };
}

function pointReport(point: SetOutPoint, setting: ReportSetting) {
  const { site, words } = setting;
  const { fromBefore, bend, invert, depth, ties } = point;
  const said = (metres: number | undefined | null) =>
    metres == null ? null : lengthText(metres, site.units);
  return {
    number: point.number,
    label: point.label,
    is: point.is,
    name: words.setOutName(point),
    station: roundedLength(point.station),
    developed: roundedLength(point.developed),
    fromBefore: fromBefore === null ? null : roundedLength(fromBefore),
    x: roundedLength(point.at.x),
    y: roundedLength(point.at.y),
    bend: bend === null ? null : bendReport(bend, setting),
    drop: roundedLength(point.drop),
    invert: invert === null ? null : { ...surely(invert.invert, invert.sigma), by: invert.by },
    depthToInvert: depth === null ? null : surely(depth.depth, depth.sigma),
    ties: ties === null ? null : tiesReport(ties, setting),
    under: point.under,
    display: {
      station: said(point.station),
      developed: said(point.developed),
      fromBefore: said(fromBefore),
      x: said(point.at.x),
      y: said(point.at.y),
      invert: said(invert?.invert),
      depthToInvert: said(depth?.depth),
    },
  };
}

function bendReport(bend: SetOutBend, { site, words }: ReportSetting) {
  const { turn, known, fitting, radius, tangent } = bend;
  return {
    turn: roundedAngle(turn),
    known: known === null ? null : roundedAngle(known),
    fitting: fitting?.name ?? null,
    radius: roundedLength(radius),
    tangent: roundedLength(tangent),
    texts: words.setOutBendTexts(bend, site.units),
  };
}

function surely(value: number, sigma: number) {
  return { value: roundedLength(value), sigma: roundedLength(sigma) };
}
