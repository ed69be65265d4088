import type { SetOutBend, Units } from '@footmark/site';
import { angleText, lengthText } from '../measureText';
import { type BendRemark, bendRemarks, bendTurnText } from '../setOutFacts';
import type { Words } from '../words';

export const setOutName: Words['setOutName'] = ({ is, bend }) => {
  if (bend !== null) return bendName(bend);
  switch (is) {
    case 'start':
      return 'Start';
    case 'end':
      return 'End';
    default:
      return 'Straight on';
  }
};

/** `1/8 bend, 45° right`; without a fitting that turns so far, `Bend, 31° right`. */
function bendName({ turn, known, fitting }: SetOutBend): string {
  const side = turn < 0 ? 'left' : 'right';
  return fitting === null
    ? `Bend, ${angleText(known ?? turn)} ${side}`
    : `${fitting.name} bend, ${bendTurnText(fitting.turn)} ${side}`;
}

const remarks: Record<BendRemark, (bend: SetOutBend, units: Units) => string> = {
  'corner-painted': ({ tangent }, units) =>
    `The corner is painted: the bend begins ${lengthText(tangent, units)} before it and ends as far after.`,
  'nobody-said': ({ turn }) => `Drawn as ${angleText(turn)}; nobody has said which fitting is laid.`,
  'drawn-otherwise': ({ turn }) =>
    `It is drawn as ${angleText(turn)}: move the line, or choose another fitting.`,
  'no-standard-bend': () => 'No standard bend makes this turn: make it up of two, or move the line.',
};

export const setOutBendTexts: Words['setOutBendTexts'] = (bend, units) =>
  bendRemarks(bend).map((remark) => remarks[remark](bend, units));
