import { DRAWN_TURN_RAD, type SetOutBend } from '@footmark/site';
import { angleText, lengthText } from '../measureText';
import type { Words } from '../words';

/** Turns of standard bends have up to two decimals: 22.5°, 11.25°. */
const BEND_DECIMALS = 2;

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
    : `${fitting.name} bend, ${degreesText(fitting.turn)} ${side}`;
}

export const setOutBendTexts: Words['setOutBendTexts'] = ({ turn, known, fitting, tangent }, units) => [
  ...(tangent === 0
    ? []
    : [
        `The corner is painted: the bend begins ${lengthText(tangent, units)} before it and ends as far after.`,
      ]),
  ...(known === null
    ? [`Drawn as ${angleText(turn)}; nobody has said which fitting is laid.`]
    : Math.abs(Math.abs(turn) - known) > DRAWN_TURN_RAD
      ? [`It is drawn as ${angleText(turn)}: move the line, or choose another fitting.`]
      : []),
  ...(fitting === null ? ['No standard bend turns so far: make it up of two, or move the line.'] : []),
];

function degreesText(rad: number): string {
  return `${Number(((rad * 180) / Math.PI).toFixed(BEND_DECIMALS))}°`;
}
