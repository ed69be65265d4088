import type { Locate, Site } from '@footmark/site';
import { type FoundWay, foundWays, type Winds, windOf } from '../locateFacts';
import { lengthText } from '../measureText';
import { inSentence } from '../named';
import { choiceNames } from './fieldNames';
import { sureText } from './sureText';

const WINDS: Winds = ['norte', 'noreste', 'este', 'sureste', 'sur', 'suroeste', 'oeste', 'noroeste'];

/** The nearest of the eight winds to a true azimuth (rad). */
export function windText(azimuth: number): string {
  return windOf(azimuth, WINDS);
}

const sides: Record<FoundWay['to'], string> = {
  downstream: 'aguas abajo',
  upstream: 'aguas arriba',
  right: 'a la derecha, mirando con el flujo',
  left: 'a la izquierda, mirando con el flujo',
};

/** How far from the computed place a receiver found the sonde, and how it was found. */
export function foundText(locate: Locate, { units }: Site): string {
  const { distance, method, depth } = locate;
  const ways = foundWays(locate).map(({ metres, to }) => `${sureText(metres, units)} ${sides[to]}`);
  const off =
    ways.length === 0
      ? 'Donde se calculó.'
      : `A ${sureText(distance, units)} de donde se calculó: ${ways.join(' y ')}.`;
  const how = [
    ...(method == null ? [] : [choiceNames[method]]),
    ...(depth === null ? [] : [`A ${lengthText(depth, units)} de profundidad`]),
  ];
  return how.length === 0
    ? off
    : `${off} ${how.map((part, i) => (i === 0 ? part : inSentence(part))).join(', ')}.`;
}
