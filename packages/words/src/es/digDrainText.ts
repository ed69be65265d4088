import type { DrainFindingValues } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import { angleText } from '../measureText';
import type { Said } from '../said';
import { of } from './article';
import { fallSentences } from './digFallText';
import { waterSentences } from './digWaterText';

type Sentences = {
  readonly [Code in keyof DrainFindingValues]: (values: DrainFindingValues[Code], speech: DigSpeech) => Said;
};

const coverMissing = {
  'no-pipe-level': 'no se conoce ningún nivel de la tubería',
  'no-ground': 'no se conoce ningún nivel del terreno',
} as const;

const localCode = 'Pregunte al inspector de códigos qué rige aquí.';

/** What is said of the drain itself: its fall, cover, cleanouts, fittings, and the water beside it. */
export const drainSentences: Sentences = {
  ...fallSentences,
  'cover-too-thin': (v, speech) => ({
    text: `${covered(v, speech)}, menos de lo exigido, ${speech.length(v.asked)}${unsure(v)}.`,
    cure:
      v.state === 'proposed'
        ? 'Tiéndala más profunda, o de un material que pueda ir a tan poca profundidad.'
        : `No deje pasar ruedas por encima, y tiéndala más profunda cuando se reemplace. ${localCode}`,
  }),
  'cover-above-frost': (v, speech) => ({
    text: `${covered(v, speech)}, y la helada llega a ${speech.length(v.asked)} de profundidad${unsure(v)}.`,
    cure:
      v.state === 'proposed'
        ? 'Tiéndala más profunda, o aíslela.'
        : `Busque ahí hielo y levantamientos del suelo. ${localCode}`,
  }),
  'cover-not-known': (v, speech) => ({
    text: `No se sabe cuánta tierra hay sobre ${speech.path(v.path)}${
      v.whole ? '' : ` en ${speech.size(v.length)} de su longitud`
    }: ${v.whole ? '' : 'ahí '}${coverMissing[v.because]}.`,
    cure: 'Dé una profundidad de la tubería, de una localización o de un registro, o niveles de la tubería y del terreno.',
  }),
  'cleanout-at-head': (v, speech) => ({
    text: `${speech.path(v.path)} no tiene registro en su extremo superior, ni una bajante cerca.`,
    cure: 'Prevea ahí un registro, o dibuje el que hay.',
  }),
  'cleanout-at-junction': (v, speech) => ({
    text: `${speech.path(v.path)} sale del edificio a los ${speech.size(v.station)} y no tiene registro a menos de ${speech.length(v.limit)} de ahí, ni una bajante que sirva.`,
    cure: 'Prevea un registro justo afuera del muro, de dos sentidos si se puede, o dibuje el que hay.',
  }),
  'manhole-along': (v, speech) => ({
    text: `${speech.path(v.path)} es una alcantarilla grande y pasa de los ${speech.size(v.station)} sin pozo de visita; los siguientes van a lo más a ${speech.length(v.spacing)} entre sí.`,
    cure: 'Prevea un pozo de visita ahí o antes, o dibuje el que hay.',
  }),
  'cleanout-too-small': (v, speech) => ({
    text: `${speech.feature(v.feature)}, a los ${speech.size(v.station)} ${of(speech.path(v.path))}, tiene ${speech.diameter(v.diameter)} de diámetro; lo exigido es ${speech.diameter(v.asked)}.`,
    cure: 'Ponga uno tan ancho como la tubería, o corrija su tamaño.',
  }),
  'cleanout-at-turn': (v, speech) => ({
    text: `${speech.path(v.path)} gira ${angleText(v.turn)} a los ${speech.size(v.station)}, más de ${angleText(v.limit)}, y ahí no tiene registro.`,
    cure: 'Prevea un registro en el giro, o dibuje el que hay.',
  }),
  'cleanout-after-turns': (v, speech) => ({
    text: `${speech.path(v.path)} ha girado ${angleText(v.turn)} en total a los ${speech.size(v.station)}, más de ${angleText(v.limit)} desde el último registro.`,
    cure: 'Prevea ahí un registro, o dibuje el que hay.',
  }),
  'cleanout-along': (v, speech) => ({
    text: `${speech.path(v.path)} pasa de los ${speech.size(v.station)} sin un registro en los ${speech.length(v.spacing)} anteriores.`,
    cure: 'Prevea un registro ahí o antes, o dibuje el que hay.',
  }),
  'turn-needs-sweep': (v, speech) => ({
    text: `${speech.path(v.path)} gira ${angleText(v.turn)} a los ${speech.size(v.station)}, más que los ${angleText(v.limit)} de un solo codo.`,
    cure: 'Use un codo de radio largo, o dos codos más suaves con tubería entre ellos.',
  }),
  ...waterSentences,
};

function covered({ path, cover, station }: DrainFindingValues['cover-too-thin'], speech: DigSpeech): string {
  const has =
    cover < 0
      ? `sobresale ${speech.size(-cover)} del terreno`
      : `tiene ${speech.size(cover)} de recubrimiento`;
  return `${speech.path(path)} ${has} a los ${speech.size(station)}`;
}

function unsure({ sure }: { sure: boolean }): string {
  return sure ? '' : ', aunque los niveles lo dejan en duda';
}
