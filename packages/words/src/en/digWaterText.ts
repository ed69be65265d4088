import type { DrainFindingValues, WaterUnknown } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import { atStart } from '../named';
import type { Said } from '../said';
import { andList } from './listText';

type WaterCode = Extract<keyof DrainFindingValues, `water-${string}`>;

type Sentences = {
  readonly [Code in WaterCode]: (values: DrainFindingValues[Code], speech: DigSpeech) => Said;
};

const missingNames: Record<WaterUnknown, string> = {
  'service-depth': 'how deep the water pipe lies',
  'service-diameter': 'how thick the water pipe is',
  'pipe-level': 'how deep the sewer lies',
  'pipe-material': 'what the sewer is made of: plastic and cast iron may lie nearer',
  ground: 'the level of the ground',
};

/** What is said of water pipes beside a sewer. */
export const waterSentences: Sentences = {
  'water-too-near': (v, speech) => ({
    text: `${apart(v, speech)}; the bottom of the water pipe lies ${height(v.above, speech)} the top of the sewer, and ${over(v, speech)} is asked.`,
    cure: `${
      v.crosses
        ? `Move one up or down${v.sleeve === null ? '' : `, or sleeve the water pipe for ${speech.length(v.sleeve)} to each side`}`
        : 'Move one of them away or up'
    }${v.passBelow === null ? '' : `; some codes let it pass ${speech.length(v.passBelow)} or more below`}${v.main ? '' : ', or lay the sewer of a material that may lie under a building'}. Ask the code officer what holds here.`,
  }),
  'water-depth-not-known': (v, speech) => ({
    text: `${apart(v, speech)}. Nearer than that it is to lie ${speech.length(v.aboveAsked)} or more ${v.main && v.crosses ? 'above or below' : 'above'} the sewer, and whether it may lie so cannot be told.`,
    cure: `Find out ${andList(v.missing.map((m) => missingNames[m]))}.`,
  }),
  'water-allowed': (v, speech) => ({
    text:
      v.by === 'height'
        ? `${apart(v, speech)}; it may, as its bottom lies ${height(v.above ?? 0, speech)} the top of the sewer, where ${speech.length(v.aboveAsked)} ${v.main && v.crosses ? 'between them' : 'above it'} is asked${v.sure ? '' : ', though the levels leave that open'}.`
        : `${lies(v, speech)}; it may, by what the sewer is made of${v.asked > 0 ? `: ${speech.length(v.asked)} is asked` : ''}.`,
    cure: v.main
      ? 'Ask whoever runs the main.'
      : `Keep to it when either is replaced; some codes ask for ${speech.length(v.elsewhere)} from any water pipe.`,
  }),
  'water-nearer-than-elsewhere': (v, speech) => ({
    text: `${lies(v, speech)}, as far as is asked here; some codes ask for ${speech.length(v.elsewhere)} from any water pipe.`,
    cure: 'Ask the code officer what holds here.',
  }),
};

function height(above: number, speech: DigSpeech): string {
  return `${speech.size(Math.abs(above))} ${above < 0 ? 'below' : 'above'}`;
}

function over(
  { aboveAsked, shelf, main, crosses }: DrainFindingValues['water-too-near'],
  speech: DigSpeech,
): string {
  // a main may cross below as well
  if (main && crosses) return `${speech.length(aboveAsked)} between them`;
  return `${speech.length(aboveAsked)} above it${shelf ? ', on a solid shelf at one side of the trench,' : ''}`;
}

type Apart = Pick<
  DrainFindingValues['water-too-near'],
  'path' | 'service' | 'distance' | 'asked' | 'crosses' | 'main'
>;

function apart(values: Apart, speech: DigSpeech): string {
  const asked = speech.length(values.asked);
  return `${lies(values, speech)}, where ${asked} ${values.crosses ? 'apart is' : 'is'} asked`;
}

function lies({ path, service, distance, crosses, main }: Apart, speech: DigSpeech): string {
  const water = `${atStart(speech.feature(service))}${main ? ', a main by its size,' : ''}`;
  if (crosses) return `${water} crosses ${speech.path(path)}`;
  return `${water} lies ${speech.size(distance)} from ${speech.path(path)}`;
}
