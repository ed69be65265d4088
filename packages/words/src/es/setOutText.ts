import type { SetOutBend, Units } from '@footmark/site';
import { angleText, lengthText } from '../measureText';
import { type BendRemark, bendRemarks, bendTurnText } from '../setOutFacts';
import type { Words } from '../words';

export const setOutName: Words['setOutName'] = ({ is, bend }) => {
  if (bend !== null) return bendName(bend);
  switch (is) {
    case 'start':
      return 'Inicio';
    case 'end':
      return 'Final';
    default:
      return 'Recto';
  }
};

/** `Codo 1/8, 45° a la derecha`; without a fitting that turns so far, `Codo, 31° a la derecha`. */
function bendName({ turn, known, fitting }: SetOutBend): string {
  const side = turn < 0 ? 'a la izquierda' : 'a la derecha';
  return fitting === null
    ? `Codo, ${angleText(known ?? turn)} ${side}`
    : `Codo ${fitting.name}, ${bendTurnText(fitting.turn)} ${side}`;
}

const remarks: Record<BendRemark, (bend: SetOutBend, units: Units) => string> = {
  'corner-painted': ({ tangent }, units) =>
    `Se pinta la esquina: el codo empieza ${lengthText(tangent, units)} antes y termina lo mismo después.`,
  'nobody-said': ({ turn }) => `Dibujado como ${angleText(turn)}; nadie ha dicho qué accesorio se pone.`,
  'drawn-otherwise': ({ turn }) =>
    `Está dibujado como ${angleText(turn)}: mueva la línea, o elija otro accesorio.`,
  'no-standard-bend': () => 'Ningún codo estándar gira tanto: fórmelo con dos, o mueva la línea.',
};

export const setOutBendTexts: Words['setOutBendTexts'] = (bend, units) =>
  bendRemarks(bend).map((remark) => remarks[remark](bend, units));
