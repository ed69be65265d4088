import type { FindingCode } from '@footmark/site';
import type { Sentences } from '../findingSpeech';
import { DUG_STRAIGHT_M, type FoundWay, foundWays } from '../locateFacts';

type FoundCode = Extract<FindingCode, `as-found-${string}`>;

/** Where crews contradict the site or each other. */
export const foundSentences: Sentences<FoundCode> = {
  'as-found-mark-gone': ({ label, by }) => ({
    text: `${crewName(by)} reports on ${label}, which this site has no more, or which has no place any more.`,
    cure: 'Look at what was found there, and say what it belongs to.',
  }),
  'as-found-mark-moved': ({ label, by, moved }, { length }) => ({
    text: `${crewName(by)} painted ${label} from other figures: it stands ${length(moved)} from where it would be painted now.`,
    cure: 'What was found counts from the paint as it stands. Where nothing is dug yet, give the crew the new figures.',
  }),
  'as-found-no-place': ({ label, by }) => ({
    text: `Where ${crewName(by, 'middle')} found ${nameOfFind(label)} cannot be computed: a point that it was taped from is gone, or the tapes do not meet.`,
    cure: 'Ask for the tapes again, and from which points they were pulled.',
  }),
  'as-found-outside': ({ label, by, along, across }, { length }) => ({
    text: `${crewName(by)} found ${label} outside of the hole that was to hold it: ${offInText(along, across, length)}.`,
    cure: 'One mark in twenty may be so far off. If there are more, check the zero and scale of the run, and the line.',
  }),
  'as-found-disagree': ({ label, a, b, apart }, { length }) => ({
    text: `${label} was found in two places that are ${length(apart)} apart: by ${crewName(a, 'middle')} and by ${crewName(b, 'middle')}.`,
    cure: 'Ask which of them measured from the paint, and take out the record that is wrong.',
  }),
  'as-found-depths-disagree': ({ label, a, b, apart }, { length }) => ({
    text: `${label} was found at two depths that are ${length(apart)} apart: by ${crewName(a, 'middle')} and by ${crewName(b, 'middle')}.`,
    cure: 'Ask from which ground they measured, and take out the record that is wrong.',
  }),
  'as-found-and-not-found': ({ label, a, b }) => ({
    text: `${crewName(a)} found ${label}, and ${crewName(b, 'middle')} did not.`,
    cure: 'Ask whether they dug in the same place.',
  }),
};

const sides: Record<FoundWay['to'], string> = {
  downstream: 'with the flow',
  upstream: 'against the flow',
  right: 'to the right',
  left: 'to the left',
};

/** `3 ft against the flow and 0.5 ft to the right`. */
function offInText(along: number, across: number, length: (metres: number) => string): string {
  return foundWays({ along, across }, DUG_STRAIGHT_M)
    .map(({ metres, to }) => `${length(metres)} ${sides[to]}`)
    .join(' and ');
}

/** Who reports, as a sentence begins or in its middle. */
function crewName(by: string, where: 'start' | 'middle' = 'start'): string {
  if (by !== '') return by;
  return where === 'start' ? 'A crew' : 'a crew';
}

function nameOfFind(label: string): string {
  return label === '' ? 'something' : label;
}
