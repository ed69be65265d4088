import type { LandCrossing, LandFindingValues, LandStretch, Whose, WhoseAt } from '@footmark/dig';
import type { Site, Units } from '@footmark/site';
import type { DigSpeech } from '../digSpeech';
import { holderOf, landLengths } from '../landFacts';
import { atStart } from '../named';
import type { Said } from '../said';
import { of } from './article';
import { sureText } from './sureText';
import { targetTitle } from './thingName';

type Sentences = {
  readonly [Code in keyof LandFindingValues]: (values: LandFindingValues[Code], speech: DigSpeech) => Said;
};

export const whoseNames: Record<Whose, string> = {
  private: 'En el lote',
  shared: 'En una servidumbre',
  neighbour: 'De un vecino',
  public: 'Público',
  outside: 'Fuera del lote',
  unknown: 'No se sabe',
};

/** On what land that is not the owner's own. */
export const owners = {
  shared: 'en una servidumbre',
  neighbour: 'en terreno de un vecino',
  public: 'en terreno público',
  outside: 'fuera del lote',
} as const;

/** What is said of whose land it is: it decides who pays and who must be asked. */
export const landSentences: Sentences = {
  'no-boundary': () => ({
    text: 'No se sabe de quién es el terreno: no hay ningún lindero dibujado.',
    cure: 'Dibuje el lindero según el plano del lote o sus mojoneras; si hay duda, pregunte a un topógrafo.',
  }),
  'boundary-crosses-itself': ({ feature }, speech) => ({
    text: `El contorno ${of(speech.feature(feature))} se cruza a sí mismo, así que no se juzga nada con él.`,
    cure: 'Ponga sus puntos en el orden en que se camina alrededor del lote.',
  }),
  'boundary-not-closed': ({ feature, gap }, speech) => ({
    text: `${speech.feature(feature)} no cierra por ${speech.size(gap)}, así que no sirve para juzgar nada.`,
    cure: 'Añada el lado que falta, o una sus extremos.',
  }),
  'lot-not-told': ({ lots }) => ({
    text: `Hay ${lots} linderos cerrados dibujados, y ninguno contiene el edificio.`,
    cure: 'Dibuje el edificio, o quite los otros lotes.',
  }),
  'right-of-way-without-house': ({ feature }, speech) => ({
    text: `No se puede decir de qué lado ${of(speech.feature(feature))} está el terreno público.`,
    cure: 'Dibuje la casa o el lote.',
  }),
  'path-on-neighbour': (v, speech) => ({
    text: `${onPath(v, speech)} está en terreno de un vecino.`,
    cure: 'No excave ahí sin permiso escrito del dueño; si la línea está en disputa, pregunte a un topógrafo.',
  }),
  'path-on-public': (v, speech) => ({
    text: `${onPath(v, speech)} está en terreno público.`,
    cure: 'Pregunte a la ciudad o a la autoridad de la vía: lo usual es un permiso, y quizá ella pague esa parte.',
  }),
  'path-in-easement': (v, speech) => ({
    text: `${onPath(v, speech)} está en ${speech.features(v.features)}.`,
    cure: 'Pregunte a su titular antes de excavar, y qué se puede poner ahí.',
  }),
  'path-outside': (v, speech) => ({
    text: `${onPath(v, speech)} está fuera del lote, y nada dice de quién es ese terreno.`,
    cure: 'Dibuje la calle, el lindero del vecino o el derecho de vía, o pregunte.',
  }),
  'path-along-boundary': (v, speech) => ({
    text: `${onPath(v, speech)} corre a lo largo ${of(speech.features(v.features))}.`,
    cure: 'Una zanja ahí toca los dos lados: avise al vecino, y sepa dónde está la línea.',
  }),
  'path-crosses-open-boundary': ({ path, station, feature }, speech) => ({
    text: `${speech.path(path)} cruza ${speech.feature(feature)} a los ${speech.size(station)}; nada más dice de quién es el terreno a cada lado.`,
    cure: 'Dibuje el lote entero, cerrado; hasta entonces pregunte a quien pueda ser dueño del otro lado de la línea.',
  }),
  'mark-not-private': (v, speech) => ({
    text: `${speech.mark(v.run, v.reading)} está ${owners[v.whose]}.`,
    cure: 'Pregunte de quién es el terreno antes de pintar o excavar ahí.',
  }),
};

function onPath(
  { path, from, to }: { readonly path: string; readonly from: number; readonly to: number },
  speech: DigSpeech,
): string {
  return `${speech.path(path)} desde ${speech.size(from)} hasta ${speech.size(to)}`;
}

/** On how much of a site's pipes somebody else is to be asked, the longest first. */
export function landText(stretches: readonly LandStretch[], units: Units): string {
  const longest = landLengths(stretches);
  if (longest.length === 0) return 'todo en el lote';
  return longest.map(([whose, m]) => `${sureText(m, units)} ${landNames[whose]}`).join(', ');
}

const landNames: Record<Whose, string> = {
  ...owners,
  private: 'en el lote',
  unknown: 'no se sabe de quién',
};

/** What tells of the land by its name, and who holds it. */
export function landName(id: string, site: Site): string {
  const holder = holderOf(id, site);
  const name = targetTitle({ kind: 'feature', id }, site);
  return holder === undefined ? name : `${name}, titular: ${holder}`;
}

/** Beside the plan's tick where a pipe crosses from one land to another. */
export function landCrossingText({ feature, station }: LandCrossing, site: Site): string {
  return `${targetTitle({ kind: 'feature', id: feature }, site)} a los ${sureText(station, site.units)}`;
}

/** On whose land a place is, by what tells of it; empty on the lot and where nothing tells. */
export function whoseAtText({ whose, features }: WhoseAt, said: 'full' | 'brief', site: Site): string {
  if (whose === 'private' || whose === 'unknown') return '';
  const names = said === 'full' ? features.map((id) => landName(id, site)).join(', ') : '';
  return names === '' ? atStart(owners[whose]) : `${atStart(owners[whose])}: ${names}`;
}
