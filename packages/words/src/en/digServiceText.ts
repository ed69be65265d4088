import type { ServiceFindingValues } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import { angleText } from '../measureText';
import { atStart } from '../named';
import type { Said } from '../said';
import { leastText } from './digMeasure';
import { oneCallSentences } from './digOneCallText';

type Sentences = {
  readonly [Code in keyof ServiceFindingValues]: (
    values: ServiceFindingValues[Code],
    speech: DigSpeech,
  ) => Said;
};

const byHand =
  'Dig by hand there, or with vacuum or water, until it is seen; private lines are usually not marked.';

/** What is said of other services: where they cross, where to dig by hand, and how it stands with the one-call ticket. */
export const serviceSentences: Sentences = {
  'service-crossed': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} crosses ${speech.feature(v.feature)} at ${speech.size(v.station)}, at ${angleText(v.angle)}${height(v, speech)}.`,
    cure: v.missing.length > 0 ? `${byHand} Its depth is not known here.` : byHand,
  }),
  'dig-in-tolerance-zone': (v, speech) => ({
    text: `${atStart(speech.dig(v.dig))} comes ${
      v.distance <= 0 ? 'over' : `within ${speech.size(v.distance)} of`
    } ${speech.feature(v.feature)}, and ${speech.length(v.zone)} to each side is dug by hand${byHandText(v, speech)}.${belowText(v, speech)}`,
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
  ...oneCallSentences,
};

function byHandText(
  { handDig, length, atLeast }: ServiceFindingValues['dig-in-tolerance-zone'],
  speech: DigSpeech,
): string {
  if (handDig === null || length === null) return '';
  return `: ${leastText(atLeast)}${speech.size(handDig)} of the ${speech.size(length)} that the trench is long at the ground`;
}

function belowText({ below }: ServiceFindingValues['dig-in-tolerance-zone'], speech: DigSpeech): string {
  if (below === null) return '';
  return ` By the depth that was given its top lies ${speech.size(Math.abs(below))} ${below < 0 ? 'above' : 'below'} the bottom of the dig.`;
}

function height({ gap, over }: ServiceFindingValues['service-crossed'], speech: DigSpeech): string {
  if (gap === null || over === null) return '';
  return over === 'service' ? `, ${speech.size(gap)} below it` : `, ${speech.size(gap)} above it`;
}
