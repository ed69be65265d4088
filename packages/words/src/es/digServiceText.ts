import type { ServiceFindingValues } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import { angleText } from '../measureText';
import type { Said } from '../said';
import { of } from './article';
import { leastText } from './digMeasure';
import { oneCallSentences } from './digOneCallText';

type Sentences = {
  readonly [Code in keyof ServiceFindingValues]: (
    values: ServiceFindingValues[Code],
    speech: DigSpeech,
  ) => Said;
};

const byHand =
  'Excave ahí a mano, o con succión o agua, hasta que se vea; las líneas privadas por lo general no están marcadas.';

/** What is said of other services: where they cross, where to dig by hand, and how it stands with the one-call ticket. */
export const serviceSentences: Sentences = {
  'service-crossed': (v, speech) => ({
    text: `${speech.path(v.path)} cruza ${speech.feature(v.feature)} a los ${speech.size(v.station)}, a ${angleText(v.angle)}${height(v, speech)}.`,
    cure: v.missing.length > 0 ? `${byHand} Aquí no se sabe su profundidad.` : byHand,
  }),
  'dig-in-tolerance-zone': (v, speech) => ({
    text: `${speech.dig(v.dig)} pasa ${
      v.distance <= 0
        ? `sobre ${speech.feature(v.feature)}`
        : `a ${speech.size(v.distance)} ${of(speech.feature(v.feature))}`
    }, y a cada lado se excavan a mano ${speech.length(v.zone)}${byHandText(v, speech)}.${belowText(v, speech)}`,
    cure: byHand,
  }),
  'tolerance-under-floor': (v, speech) => ({
    text: `La zona de tolerancia en este sitio es ${speech.length(v.value)}, menos que el mínimo, ${speech.length(v.floor)}; se usa el mínimo.`,
    cure: 'Ponga lo que dice la ley del estado.',
  }),
  'service-without-diameter': ({ feature }, speech) => ({
    text: `Falta el diámetro ${of(speech.feature(feature))}: las distancias cuentan desde su centro.`,
    cure: 'Dé su diámetro, o quédese un poco más lejos.',
  }),
  ...oneCallSentences,
};

function byHandText(
  { handDig, length, atLeast }: ServiceFindingValues['dig-in-tolerance-zone'],
  speech: DigSpeech,
): string {
  if (handDig === null || length === null) return '';
  return `: ${leastText(atLeast)}${speech.size(handDig)} de los ${speech.size(length)} que mide la zanja en la superficie`;
}

function belowText({ below }: ServiceFindingValues['dig-in-tolerance-zone'], speech: DigSpeech): string {
  if (below === null) return '';
  return ` Según la profundidad que se dio, su lomo está ${speech.size(Math.abs(below))} por ${below < 0 ? 'encima' : 'debajo'} del fondo de la excavación.`;
}

function height({ gap, over }: ServiceFindingValues['service-crossed'], speech: DigSpeech): string {
  if (gap === null || over === null) return '';
  return over === 'service' ? `, ${speech.size(gap)} por debajo` : `, ${speech.size(gap)} por encima`;
}
