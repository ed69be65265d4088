import type { DrainFindingValues, WaterUnknown } from '@footmark/dig';
import { angleText } from '../measureText';
import { atStart } from '../named';
import type { Said } from '../words';
import { fallSentences } from './digFallText';
import type { DigSpeech } from './digSpeech';
import { andList } from './listText';

type Sentences = {
  readonly [Code in keyof DrainFindingValues]: (values: DrainFindingValues[Code], speech: DigSpeech) => Said;
};

const coverMissing = {
  'no-pipe-level': 'no level of the pipe is known',
  'no-ground': 'no level of the ground is known',
} as const;

const waterMissing: Record<WaterUnknown, string> = {
  'service-depth': 'how deep the water pipe lies',
  'service-diameter': 'how thick the water pipe is',
  'pipe-level': 'how deep the sewer lies',
  ground: 'the level of the ground',
};

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
  'cleanout-at-turn': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} turns by ${angleText(v.turn)} at ${speech.length(v.station)}, more than ${angleText(v.limit)}, and has no cleanout there.`,
    cure: 'Plan a cleanout at the turn, or draw the one that is there.',
  }),
  'cleanout-after-turns': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} has turned by ${angleText(v.turn)} in all at ${speech.length(v.station)}, more than ${angleText(v.limit)} since the last cleanout.`,
    cure: 'Plan a cleanout there, or draw the one that is there.',
  }),
  'cleanout-along': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} runs on past ${speech.length(v.station)} without a cleanout within ${speech.length(v.spacing)} before.`,
    cure: 'Plan a cleanout there or before, or draw the one that is there.',
  }),
  'turn-needs-sweep': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} turns by ${angleText(v.turn)} at ${speech.length(v.station)}, more than the ${angleText(v.limit)} of a single bend.`,
    cure: 'Use a long sweep, or two gentler bends with pipe between them.',
  }),
  'water-too-near': (v, speech) => ({
    text: `${apart(v, speech)}; the bottom of the water pipe lies ${speech.size(Math.abs(v.above))} ${
      v.above < 0 ? 'below' : 'above'
    } the top of the sewer, and ${speech.length(v.aboveAsked)} above it is asked.`,
    cure: v.crosses
      ? 'Move one up or down, or ask the code officer about a sleeve on the water pipe.'
      : `Move one of them away or up. ${localCode}`,
  }),
  'water-depth-not-known': (v, speech) => ({
    text: `${apart(v, speech)}. Nearer than that it is to lie ${speech.length(v.aboveAsked)} or more above the sewer, and whether it does cannot be told.`,
    cure: `Find out ${andList(v.missing.map((m) => waterMissing[m]))}.`,
  }),
};

function covered({ path, cover, station }: DrainFindingValues['cover-too-thin'], speech: DigSpeech): string {
  const has =
    cover < 0 ? `comes ${speech.size(-cover)} out of the ground` : `has ${speech.size(cover)} of cover`;
  return `${atStart(speech.path(path))} ${has} at ${speech.length(station)}`;
}

function unsure({ sure }: { sure: boolean }): string {
  return sure ? '' : ', though the levels leave it open';
}

function apart(
  {
    path,
    service,
    distance,
    asked,
    crosses,
    main,
  }: DrainFindingValues['water-depth-not-known'] | DrainFindingValues['water-too-near'],
  speech: DigSpeech,
): string {
  const water = `${atStart(speech.feature(service))}${main ? ', a main by its size,' : ''}`;
  if (crosses) return `${water} crosses ${speech.path(path)}, where ${speech.length(asked)} apart is asked`;
  return `${water} lies ${speech.size(distance)} from ${speech.path(path)}, where ${speech.length(asked)} is asked`;
}
