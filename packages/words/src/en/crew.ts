import { type FoundState, type Units, WITHIN_95 } from '@footmark/site';
import type { CrewWords, PositionProblem } from '../crewWords';
import { foundLineIn } from '../foundLine';
import { lengthText } from '../measureText';
import { holeSizeText } from '../sureText';
import { answerProblemText } from './answerProblemText';
import { crewLabels } from './crewLabels';
import { dangerText } from './dangerText';
import { materialNames, observationNames } from './drainNames';
import { belowGroundText } from './heightText';
import { windText } from './locateText';
import { giveOrTakeText, sureText } from './sureText';
import { referenceInText } from './thingName';

const states: Readonly<Record<FoundState, string>> = {
  painted: 'Painted',
  dug: 'Dug',
  found: 'Found',
  'not-found': 'Not found',
};

const ways = { downstream: 'With the flow', upstream: 'Against the flow', right: 'Right', left: 'Left' };

const positionProblems: Readonly<Record<PositionProblem, string>> = {
  none: 'This device tells no position.',
  refused: 'This page may not know the position. Allow it in the browser’s settings.',
  unavailable: 'The device finds no position here. Step out from under roofs and trees.',
  'too-slow': 'The device found no position within a minute. Step into the open and try again.',
};

/** What the crew view says in English. */
export const crew: CrewWords = {
  languageName: 'English',
  label: (label) => crewLabels[label],
  stateName: (state) => states[state],
  placeText: (index, count) => `${index + 1} of ${count}`,
  tapeFromText: (reference, site) => `from ${referenceInText(reference, site)}`,
  depthText: (depth, units) =>
    depth === null
      ? 'Not known'
      : `${belowGroundText(depth.depth, units)} ${giveOrTakeText(WITHIN_95 * depth.sigma, units)}`,
  holeText: (hole, units) => (hole === null ? 'Not known' : holeSizeText(hole, units)),
  paintText: (distance, azimuth, units) =>
    `The paint stands beside it: ${lengthText(distance, units)} to the ${windText(azimuth)}. The tapes are to the paint.`,
  dangerText,
  alongText,
  acrossText,
  wayText: (way) => ways[way],
  foundText: foundLineIn({
    states,
    byTapes: 'by tapes',
    atPaint: 'at the paint',
    alongText,
    acrossText,
    depthText: (length, to) => `${length} to the ${to}`,
    observations: observationNames,
    materials: materialNames,
  }),
  whereAmIText: ({ distance, azimuth, accuracy }, label, units) =>
    `${label} is ${sureText(distance, units)} to the ${windText(azimuth)} of you, ${giveOrTakeText(accuracy, units)}.`,
  positionProblemText: (why) => positionProblems[why],
  cameText: ({ marks, things }) => `${count(marks, 'mark')} to find, ${count(things, 'thing')} in the yard`,
  codeText: (index, of) => `Code ${index} of ${of}`,
  answerText: ({ done, found, photos }) =>
    [count(done, 'mark'), count(found, 'record'), count(photos, 'photo')].join(', '),
  answerProblemText,
};

function count(n: number, one: string): string {
  return `${n} ${one}${n === 1 ? '' : 's'}`;
}

function alongText(metres: number, units: Units): string {
  if (metres === 0) return 'At the paint';
  return `${lengthText(Math.abs(metres), units)} ${metres > 0 ? 'with' : 'against'} the flow`;
}

function acrossText(metres: number, units: Units): string {
  if (metres === 0) return 'On the line';
  return `${lengthText(Math.abs(metres), units)} to the ${metres > 0 ? 'right' : 'left'}`;
}
