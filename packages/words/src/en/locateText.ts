import type { Locate, Site } from '@footmark/site';
import { lengthText } from '../measureText';
import { inSentence } from '../named';
import { choiceNames } from './fieldNames';
import { sureText } from './sureText';

/** Less than this (m) to one side is straight along, or straight across. */
const STRAIGHT_M = 0.03;

const WINDS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;

/** The nearest of the eight winds to a true azimuth (rad). */
export function windText(azimuth: number): string {
  const eighths = Math.round((4 * azimuth) / Math.PI);
  return WINDS[((eighths % 8) + 8) % 8] ?? 'north';
}

/** How far from the computed place a receiver found the sonde, and how it was found. */
export function foundText({ distance, along, across, method, depth }: Locate, { units }: Site): string {
  const ways = [
    Math.abs(along) < STRAIGHT_M ? '' : `${sureText(along, units)} ${along > 0 ? 'downstream' : 'upstream'}`,
    Math.abs(across) < STRAIGHT_M
      ? ''
      : `${sureText(across, units)} to the ${across > 0 ? 'right' : 'left'}, looking with the flow`,
  ].filter((way) => way !== '');
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
