import type { ServiceFindingValues } from '@footmark/dig';
import { angleText } from '../measureText';
import { atStart } from '../named';
import type { Said } from '../words';
import type { DigSpeech } from './digSpeech';

type Sentences = {
  readonly [Code in keyof ServiceFindingValues]: (
    values: ServiceFindingValues[Code],
    speech: DigSpeech,
  ) => Said;
};

const call =
  'Call the one-call centre (811 in the United States), wait for the marks, and dig with regard to them.';
const byHand =
  'Dig by hand there, or with vacuum or water, until it is seen; private lines are usually not marked.';

/** What is said of other services: where they cross, where to dig by hand, and how it stands with the one-call ticket. */
export const serviceSentences: Sentences = {
  'service-crossed': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} crosses ${speech.feature(v.feature)} at ${speech.length(v.station)}, at ${angleText(v.angle)}${height(v, speech)}.`,
    cure: v.missing.length > 0 ? `${byHand} Its depth is not known here.` : byHand,
  }),
  'dig-in-tolerance-zone': (v, speech) => ({
    text: `${atStart(speech.dig(v.dig))} comes ${
      v.distance <= 0 ? 'over' : `within ${speech.size(v.distance)} of`
    } ${speech.feature(v.feature)}, and ${speech.length(v.zone)} to each side is dug by hand${
      v.handDig === null ? '' : `: ${speech.size(v.handDig)} along the trench`
    }.`,
    cure: byHand,
  }),
  'tolerance-under-floor': (v, speech) => ({
    text: `The tolerance zone on this site is ${speech.length(v.value)}, less than the ${speech.length(v.floor)} that is the least; that is used.`,
    cure: 'Put in what the law of the state says.',
  }),
  'service-without-diameter': ({ feature }, speech) => ({
    text: `${atStart(speech.feature(feature))} has no diameter: distances count from its middle.`,
    cure: 'Give its diameter, or keep a little further off.',
  }),
  'one-call-missing': () => ({ text: 'No one-call ticket is kept here.', cure: call }),
  'one-call-not-called': () => ({ text: 'The one-call centre has not been called yet.', cure: call }),
  'one-call-waiting': ({ days }) => ({
    text:
      days === null
        ? 'The one-call marks are not good yet.'
        : `The one-call marks are good in ${daysText(days)}.`,
    cure: 'Wait for that day, and for the marks.',
  }),
  'one-call-expired': ({ days }) => ({
    text: `The one-call marks ran out ${daysText(days)} ago.`,
    cure: 'Do not dig by them: call again and wait for fresh marks.',
  }),
  'one-call-dates-clash': () => ({
    text: 'The days of the one-call ticket contradict each other.',
    cure: 'Look at the ticket and put its days right.',
  }),
};

function height({ gap, over }: ServiceFindingValues['service-crossed'], speech: DigSpeech): string {
  if (gap === null || over === null) return '';
  return over === 'service' ? `, ${speech.size(gap)} below it` : `, ${speech.size(gap)} above it`;
}

function daysText(days: number): string {
  return days === 1 ? 'one day' : `${days} days`;
}
