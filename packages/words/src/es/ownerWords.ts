import type { Site } from '@footmark/site';
import type { OwnerGap, OwnerPlace, SheetWords } from '../sheetWords';
import { andList } from './listText';
import { ownerActionNames, ownerSeenNames } from './sheetNames';
import { sureText } from './sureText';
import { dateText } from './visitText';

type OwnerWords = Pick<SheetWords, Extract<keyof SheetWords, `owner${string}`>>;

/** What is said to an owner: no term of the trade without its meaning. */
export const ownerWords: OwnerWords = {
  ownerIntro: (site, things) => [introText(site), thingsText(things)],
  ownerSeenName: (kind) => ownerSeenNames[kind],
  ownerPlaceText: (place, units) =>
    [
      `A ${sureText(place.along, units)} de tubería desde donde entró la cámara${entryText(place)}`,
      depthText(place, units),
      nearText(place, units),
    ]
      .filter((t) => t !== '')
      .join(', ')
      .concat('.'),
  ownerNote: (note) => `Se anotó: ${note}`,
  ownerActionName: (action) => `${ownerActionNames[action]}.`,
  ownerAdvice: (action, labels) => `${ownerActionNames[action]}: ${andList(labels)}.`,
  ownerNoAdvice: () => 'No se anotó nada. Pregunte a quien pasó la cámara qué recomienda.',
  ownerNothingSeen: () => 'No se vio nada malo por donde pasó la cámara.',
  ownerGapText: ({ pipe, length, whole, why }: OwnerGap, units) =>
    [
      whole
        ? `${pipe}: ninguna cámara pasó por ahí (${sureText(length, units)}).`
        : `${pipe}: un tramo de ${sureText(length, units)} no se vio.`,
      ...why,
    ].join(' '),
  ownerAllSeen: () => 'La cámara pasó por toda la tubería que está dibujada aquí.',
  ownerZoneText: (half, units) =>
    `Los lugares se calculan con un contador y un croquis. 95 de cada 100 veces lo que se vio está a ${sureText(half, units)} de su marca o más cerca, y en la mayoría de las marcas, todavía más cerca.`,
  ownerDepthText: (known) =>
    known
      ? 'Las profundidades son estimadas hasta que se excave la tubería.'
      : 'No en todas partes se sabe a qué profundidad está la tubería. Las profundidades son estimadas hasta que se excave.',
  ownerAlways: () => [
    'Una cámara ve el interior de la tubería en un solo día. Lo que está detrás de su pared, bajo el agua o más allá de algo que la tapa, no lo ve.',
    'Puede haber otras líneas en el terreno donde este plano no muestra ninguna. Quien excave llama primero al centro de llamada única (811 en los Estados Unidos) y espera sus marcas.',
  ],
};

function introText({ visits, runs }: Site): string {
  const days = visits.flatMap((v) => (v.date === undefined ? [] : [dateText(v.date)]));
  const on = days.length === 0 ? '' : `, el ${andList(days)}`;
  const times = runs.length === 1 ? 'una vez' : runs.length === 2 ? 'dos veces' : `${runs.length} veces`;
  return runs.length === 0
    ? 'Todavía no ha pasado ninguna cámara por el drenaje.'
    : `Se pasó una cámara por el drenaje ${times}${on}.`;
}

function thingsText(things: number): string {
  if (things === 0) return 'No encontró nada malo por donde pasó.';
  const count = things === 1 ? 'una cosa' : `${things} cosas`;
  return `Encontró ${count} que conviene saber. Las letras y los números son los del plano.`;
}

/** An entry's name is a label, with the article of its kind or with none: it stands alone. */
function entryText({ entry }: OwnerPlace): string {
  return entry === null ? '' : ` (${entry})`;
}

function depthText({ depth }: OwnerPlace, units: Parameters<typeof sureText>[1]): string {
  return depth === null || depth <= 0 ? '' : `a unos ${sureText(depth, units)} de profundidad`;
}

function nearText({ near }: OwnerPlace, units: Parameters<typeof sureText>[1]): string {
  if (near === null) return '';
  return near.distance <= 0
    ? `junto a ${near.thing}`
    : `a ${sureText(near.distance, units)} de ${near.thing}`;
}
