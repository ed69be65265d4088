import type { DrainFindingValues } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import { angleText } from '../measureText';
import { atStart } from '../named';
import type { Said } from '../said';
import { fallSentences } from './digFallText';
import { waterSentences } from './digWaterText';

type Sentences = {
  readonly [Code in keyof DrainFindingValues]: (values: DrainFindingValues[Code], speech: DigSpeech) => Said;
};

const coverMissing = {
  'no-pipe-level': 'no level of the pipe is known',
  'no-ground': 'no level of the ground is known',
} as const;

const localCode = 'Ask the code officer what holds here.';

/** What is said of the drain itself: its fall, cover, cleanouts, fittings, and the water beside it. */
export const drainSentences: Sentences = {
  ...fallSentences,
  'cover-too-thin': (v, speech) => ({
    text: `${covered(v, speech)}, less than the ${speech.length(v.asked)} that is asked${unsure(v)}.`,
    cure:
      v.state === 'proposed'
        ? 'Lay it deeper, or of a material that may lie so shallow.'
        : `Keep wheels off it, and lay it deeper when it is replaced. ${localCode}`,
  }),
  'cover-above-frost': (v, speech) => ({
    text: `${covered(v, speech)}, and frost goes ${speech.length(v.asked)} deep${unsure(v)}.`,
    cure:
      v.state === 'proposed'
        ? 'Lay it deeper, or insulate it.'
        : `Look for ice and heave there. ${localCode}`,
  }),
  'cover-not-known': (v, speech) => ({
    text: `How much ground lies over ${speech.path(v.path)} is not known${
      v.whole ? '' : ` on ${speech.size(v.length)} of it`
    }: ${coverMissing[v.because]}${v.whole ? '' : ' there'}.`,
    cure: 'Give a depth of the pipe from a locate or a cleanout, or levels of the pipe and the ground.',
  }),
  'cleanout-at-head': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} has no cleanout at its upper end, nor a stack near by.`,
    cure: 'Plan a cleanout there, or draw the one that is there.',
  }),
  'cleanout-at-junction': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} has left the building at ${speech.size(v.station)} and has no cleanout within ${speech.length(v.limit)} of there, nor a stack that serves.`,
    cure: 'Plan a cleanout just outside the wall, two-way if it can be, or draw the one that is there.',
  }),
  'manhole-along': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} is a large sewer and runs on past ${speech.size(v.station)} without a manhole; further ones stand ${speech.length(v.spacing)} apart at most.`,
    cure: 'Plan a manhole there or before, or draw the one that is there.',
  }),
  'cleanout-too-small': (v, speech) => ({
    text: `${atStart(speech.feature(v.feature))} at ${speech.size(v.station)} of ${speech.path(v.path)} is ${speech.diameter(v.diameter)} wide; ${speech.diameter(v.asked)} is asked.`,
    cure: 'Put in one as wide as the pipe, or correct its size.',
  }),
  'cleanout-at-turn': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} turns by ${angleText(v.turn)} at ${speech.size(v.station)}, more than ${angleText(v.limit)}, and has no cleanout there.`,
    cure: 'Plan a cleanout at the turn, or draw the one that is there.',
  }),
  'cleanout-after-turns': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} has turned by ${angleText(v.turn)} in all at ${speech.size(v.station)}, more than ${angleText(v.limit)} since the last cleanout.`,
    cure: 'Plan a cleanout there, or draw the one that is there.',
  }),
  'cleanout-along': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} runs on past ${speech.size(v.station)} without a cleanout within ${speech.length(v.spacing)} before.`,
    cure: 'Plan a cleanout there or before, or draw the one that is there.',
  }),
  'turn-needs-sweep': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} turns by ${angleText(v.turn)} at ${speech.size(v.station)}, more than the ${angleText(v.limit)} of a single bend.`,
    cure: 'Use a long sweep, or two gentler bends with pipe between them.',
  }),
  ...waterSentences,
};

function covered({ path, cover, station }: DrainFindingValues['cover-too-thin'], speech: DigSpeech): string {
  const has =
    cover < 0 ? `comes ${speech.size(-cover)} out of the ground` : `has ${speech.size(cover)} of cover`;
  return `${atStart(speech.path(path))} ${has} at ${speech.size(station)}`;
}

function unsure({ sure }: { sure: boolean }): string {
  return sure ? '' : ', though the levels leave it open';
}
