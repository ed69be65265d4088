import type { Locate, Site } from '@footmark/site';
import { type FoundWay, foundWays, type Winds, windOf } from '../locateFacts';
import { lengthText } from '../measureText';
import { inSentence } from '../named';
import { choiceNames } from './fieldNames';
import { sureText } from './sureText';

const WINDS: Winds = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
];

/** The nearest of the eight winds to a true azimuth (rad). */
export function windText(azimuth: number): string {
  return windOf(azimuth, WINDS);
}

const sides: Record<FoundWay['to'], string> = {
  downstream: 'downstream',
  upstream: 'upstream',
  right: 'to the right, looking with the flow',
  left: 'to the left, looking with the flow',
};

/** How far from the computed place a receiver found the sonde, and how it was found. */
export function foundText(locate: Locate, { units }: Site): string {
  const { distance, method, depth } = locate;
  const ways = foundWays(locate).map(({ metres, to }) => `${sureText(metres, units)} ${sides[to]}`);
  const off =
    ways.length === 0
      ? 'Where it was computed.'
      : `${sureText(distance, units)} from where it was computed: ${ways.join(' and ')}.`;
  const how = [
    ...(method == null ? [] : [choiceNames[method]]),
    ...(depth === null ? [] : [`${lengthText(depth, units)} deep`]),
  ];
  return how.length === 0
    ? off
    : `${off} ${how.map((part, i) => (i === 0 ? part : inSentence(part))).join(', ')}.`;
}
