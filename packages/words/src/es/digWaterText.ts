import type { DrainFindingValues, WaterUnknown } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import type { Said } from '../said';
import { of } from './article';
import { andList } from './listText';

type WaterCode = Extract<keyof DrainFindingValues, `water-${string}`>;

type Sentences = {
  readonly [Code in WaterCode]: (values: DrainFindingValues[Code], speech: DigSpeech) => Said;
};

const missingNames: Record<WaterUnknown, string> = {
  'service-depth': 'qué tan profunda está la tubería de agua',
  'service-diameter': 'qué diámetro tiene la tubería de agua',
  'pipe-level': 'qué tan profunda está la alcantarilla',
  'pipe-material': 'de qué es la alcantarilla: de plástico o de hierro fundido puede ir más cerca',
  ground: 'el nivel del terreno',
};

/** What is said of water pipes beside a sewer. */
export const waterSentences: Sentences = {
  'water-too-near': (v, speech) => ({
    text: `${apart(v, speech)}; el fondo de la tubería de agua está ${height(v.above, speech)} del lomo de la alcantarilla, y lo exigido es ${over(v, speech)}.`,
    cure: `${
      v.crosses
        ? `Suba o baje una de las dos${v.sleeve === null ? '' : `, o ponga camisa a la tubería de agua por ${speech.length(v.sleeve)} a cada lado`}`
        : 'Aleje o suba una de las dos'
    }${v.passBelow === null ? '' : `; algunos códigos la dejan pasar ${speech.length(v.passBelow)} por debajo o más`}${v.main ? '' : ', o tienda la alcantarilla de un material que pueda ir debajo de un edificio'}. Pregunte al inspector de códigos qué rige aquí.`,
  }),
  'water-depth-not-known': (v, speech) => ({
    text: `${apart(v, speech)}. Más cerca que eso debe ir ${speech.length(v.aboveAsked)} o más por encima ${v.main && v.crosses ? 'o por debajo ' : ''}de la alcantarilla, y no se puede decir si cumple.`,
    cure: `Averigüe ${andList(v.missing.map((m) => missingNames[m]))}.`,
  }),
  'water-allowed': (v, speech) => ({
    text:
      v.by === 'height'
        ? `${apart(v, speech)}; se permite, porque su fondo está ${height(v.above ?? 0, speech)} del lomo de la alcantarilla, donde lo exigido es ${speech.length(v.aboveAsked)} ${v.main && v.crosses ? 'entre las dos' : 'por encima'}${v.sure ? '' : ', aunque los niveles lo dejan en duda'}.`
        : `${lies(v, speech)}; se permite por el material de la alcantarilla${v.asked > 0 ? `: lo exigido es ${speech.length(v.asked)}` : ''}.`,
    cure: v.main
      ? 'Pregunte a quien opera la tubería principal.'
      : `Cúmplalo cuando se reemplace una de las dos; algunos códigos exigen ${speech.length(v.elsewhere)} hasta cualquier tubería de agua.`,
  }),
  'water-nearer-than-elsewhere': (v, speech) => ({
    text: `${lies(v, speech)}, lo que se exige aquí; algunos códigos exigen ${speech.length(v.elsewhere)} hasta cualquier tubería de agua.`,
    cure: 'Pregunte al inspector de códigos qué rige aquí.',
  }),
};

function height(above: number, speech: DigSpeech): string {
  return `${speech.size(Math.abs(above))} por ${above < 0 ? 'debajo' : 'encima'}`;
}

function over(
  { aboveAsked, shelf, main, crosses }: DrainFindingValues['water-too-near'],
  speech: DigSpeech,
): string {
  // a main may cross below as well
  if (main && crosses) return `${speech.length(aboveAsked)} entre las dos`;
  return `${speech.length(aboveAsked)} por encima${shelf ? ', sobre un escalón firme a un lado de la zanja' : ''}`;
}

type Apart = Pick<
  DrainFindingValues['water-too-near'],
  'path' | 'service' | 'distance' | 'asked' | 'crosses' | 'main'
>;

function apart(values: Apart, speech: DigSpeech): string {
  return `${lies(values, speech)}, donde la distancia exigida es ${speech.length(values.asked)}`;
}

function lies({ path, service, distance, crosses, main }: Apart, speech: DigSpeech): string {
  const water = `${speech.feature(service)}${main ? ', principal por su diámetro,' : ''}`;
  if (crosses) return `${water} cruza ${speech.path(path)}`;
  return `${water} está a ${speech.size(distance)} ${of(speech.path(path))}`;
}
