import type { DrainFindingValues } from '@footmark/dig';
import { WITHIN_95 } from '@footmark/site';
import type { DigSpeech } from '../digSpeech';
import type { Said } from '../said';
import { of } from './article';

type FallCode =
  | 'fall-too-little'
  | 'fall-against-flow'
  | 'fall-not-sure'
  | 'fall-said-too-little'
  | 'fall-less-than-elsewhere'
  | 'fall-not-known'
  | 'end-below-tap';

type Sentences = {
  readonly [Code in FallCode]: (values: DrainFindingValues[Code], speech: DigSpeech) => Said;
};

/** What is said of how a drain falls, and of where it comes out. */
export const fallSentences: Sentences = {
  'fall-too-little': (v, speech) => ({
    text: `${speech.path(v.path)} cae ${speech.slope(v.slope)}${between(v, speech)}, ${giveOrTake(v, speech)}; el mínimo para su diámetro es ${speech.slope(v.least)}.`,
    cure: slopeCure(v, speech),
  }),
  'fall-against-flow': (v, speech) => ({
    text: `${speech.path(v.path)} sube con el flujo${between(v, speech)}, ${speech.slope(-v.slope)}, ${giveOrTake(v, speech)}: el agua se estanca. La pendiente mínima para su diámetro es ${speech.slope(v.least)}.`,
    cure: slopeCure(v, speech),
  }),
  'fall-not-sure': (v, speech) => ({
    text: `${speech.path(v.path)} cae ${speech.slope(v.slope)}${between(v, speech)}, ${giveOrTake(v, speech)}, así que no se puede decir si tiene el mínimo para su diámetro, ${speech.slope(v.least)}${
      v.others === 0 ? '' : ', ni en otros tramos suyos'
    }.`,
    cure: 'Nivele mejor los dos extremos, o más separados, antes de construir nada sobre eso.',
  }),
  'fall-said-too-little': (v, speech) => ({
    text: `${speech.path(v.path)} se planeó con ${speech.slope(v.slope)} de pendiente${between(v, speech)}; el mínimo para su diámetro es ${speech.slope(v.least)}.`,
    cure: `Prevea ahí ${speech.size(v.short)} más de caída, ${orAsk}`,
  }),
  'fall-less-than-elsewhere': (v, speech) => ({
    text: `${speech.path(v.path)} cae ${speech.slope(v.slope)}${between(v, speech)}, suficiente aquí; algunos códigos exigen ${speech.slope(v.elsewhere)}.`,
    cure: 'Dele más donde haya espacio, o pregunte al inspector de códigos qué rige aquí.',
  }),
  'fall-not-known': (v, speech) => ({
    text: `No se sabe si ${speech.path(v.path)} puede caer lo exigido: se conocen menos de dos de sus niveles. Sus ${speech.size(v.length)} piden ${speech.size(v.required)} de caída.`,
    cure: 'Dé el nivel o la profundidad en su extremo superior y donde va a terminar.',
  }),
  'end-below-tap': (v, speech) => ({
    text: `${speech.path(v.path)} llega ${speech.size(v.by)} por debajo ${of(speech.feature(v.tap))}, de fondo a fondo, con un margen de ${speech.size(WITHIN_95 * v.sigma)}${
      v.sure ? ': no puede desaguar ahí' : ', así que quizá no desagüe ahí'
    }.`,
    cure:
      v.state === 'proposed'
        ? 'Suba su extremo, y compruebe la caída de más arriba; si no, conecte más abajo en la tubería principal, o prevea una bomba.'
        : 'Compruebe los dos niveles: uno está mal, o la tubería no se une ahí.',
  }),
};

const orAsk = 'o pregunte al inspector de códigos si aquí se permite menos.';

function slopeCure(
  { state, from, to, short }: DrainFindingValues['fall-too-little'],
  speech: DigSpeech,
): string {
  return state === 'proposed'
    ? `Bájela ${speech.size(short)} a los ${speech.size(to)} o súbala lo mismo a los ${speech.size(from)}, ${orAsk}`
    : `Ya está ahí: compruebe los dos niveles. Al tenderla de nuevo, va ${speech.size(short)} más baja a los ${speech.size(to)} o más alta a los ${speech.size(from)}.`;
}

function between({ from, to }: { readonly from: number; readonly to: number }, speech: DigSpeech): string {
  return ` entre ${speech.size(from)} y ${speech.size(to)}`;
}

function giveOrTake({ sigma }: { readonly sigma: number }, speech: DigSpeech): string {
  return `con un margen de ${speech.slope(WITHIN_95 * sigma)}`;
}
