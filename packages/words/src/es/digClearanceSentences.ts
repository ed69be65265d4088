import type { ClearanceFindingValues } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import type { Said } from '../said';
import { of } from './article';

type Sentences = {
  readonly [Code in keyof ClearanceFindingValues]: (
    values: ClearanceFindingValues[Code],
    speech: DigSpeech,
  ) => Said;
};

/** What is said of pipes and marks that come too near to something. */
export const clearanceSentences: Sentences = {
  'pipe-too-near': (v, speech) => ({
    text: `${speech.path(v.path)} ${apartText(v, 'pasa', speech)} a los ${speech.size(v.station)}${
      v.toCentre ? ', contando hasta su centro' : ''
    }; lo exigido es ${speech.length(v.required)}.`,
    cure:
      v.state !== 'proposed'
        ? 'Ya está ahí: cumpla lo exigido cuando se reemplace, y pregunte al inspector de códigos.'
        : 'Aleje la tubería, o pregunte al inspector de códigos qué rige aquí.',
  }),
  'service-nearer-than-elsewhere': (v, speech) => ({
    text: `${speech.path(v.path)} ${apartText(v, 'pasa', speech)} a los ${speech.size(v.station)}, lo que se exige aquí; algunos códigos exigen ${speech.length(v.elsewhere)}.`,
    cure: 'Pregunte al inspector de códigos y al dueño de la línea qué rige aquí.',
  }),
  'mark-in-tolerance-zone': (v, speech) => ({
    text: `${speech.mark(v.run, v.reading)} ${apartText(v, 'está', speech)}, dentro de la franja de ${speech.length(v.required)} que se excava a mano.`,
    cure: 'Excave ahí a mano, o con succión o agua, hasta que se vea; las líneas privadas por lo general no están marcadas.',
  }),
  'pipe-along-wall': (v, speech) => ({
    text: `${speech.path(v.path)} corre a lo largo ${of(speech.feature(v.feature))} desde ${speech.size(v.from)} hasta ${speech.size(v.to)}, a una distancia de ${speech.size(v.distance)}; junto a un muro de carga lo exigido es ${speech.length(v.required)}.`,
    cure: 'Una zanja ahí puede debilitar el muro: aléjela, o pregunte a un ingeniero.',
  }),
  'outline-doubtful': ({ feature }, speech) => ({
    text: `El contorno ${of(speech.feature(feature))} se cruza a sí mismo, así que lo que queda adentro puede no ser lo que se quiso.`,
    cure: 'Ponga sus puntos en el orden en que se camina alrededor.',
  }),
};

function apartText(
  { feature, distance }: { readonly feature: string; readonly distance: number },
  lies: 'pasa' | 'está',
  speech: DigSpeech,
): string {
  const name = speech.feature(feature);
  return distance < 0
    ? `${lies} ${speech.size(-distance)} dentro ${of(name)}`
    : `${lies} a ${speech.size(distance)} ${of(name)}`;
}
