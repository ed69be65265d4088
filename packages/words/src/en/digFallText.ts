import type { DrainFindingValues } from '@footmark/dig';
import { WITHIN_95 } from '@footmark/site';
import type { DigSpeech } from '../digSpeech';
import { atStart } from '../named';
import type { Said } from '../said';

type FallCode =
  | 'fall-too-little'
  | 'fall-against-flow'
  | 'fall-not-sure'
  | 'fall-said-too-little'
  | 'fall-less-than-elsewhere'
  | 'fall-not-known'
  | 'end-below-tap';

type Sentences = {
  readonly [Code in FallCode]: (values: DrainFindingValues[Code], speech: DigSpeech) => Said;
};

/** What is said of how a drain falls, and of where it comes out. */
export const fallSentences: Sentences = {
  'fall-too-little': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} falls ${speech.slope(v.slope)}${between(v, speech)}, ${giveOrTake(v, speech)}; ${speech.slope(v.least)} is the least for its size.`,
    cure: slopeCure(v, speech),
  }),
  'fall-against-flow': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} rises with the flow${between(v, speech)}, by ${speech.slope(-v.slope)}, ${giveOrTake(v, speech)}: water stands in it. ${speech.slope(v.least)} of fall is the least for its size.`,
    cure: slopeCure(v, speech),
  }),
  'fall-not-sure': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} falls ${speech.slope(v.slope)}${between(v, speech)}, ${giveOrTake(v, speech)}, so whether it has the ${speech.slope(v.least)} that is the least for its size cannot be told${
      v.others === 0 ? '' : ', nor elsewhere on it'
    }.${v.whole ? ' From the first level to the last it does fall enough.' : ''}`,
    cure: 'Level both ends better, or further apart, before anything is built on it.',
  }),
  'fall-said-too-little': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} is planned to fall ${speech.slope(v.slope)}${between(v, speech)}; ${speech.slope(v.least)} is the least for its size.`,
    cure: `Plan ${speech.size(v.short)} more fall there, ${orAsk}`,
  }),
  'fall-less-than-elsewhere': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} falls ${speech.slope(v.slope)}${between(v, speech)}, enough here; some codes ask for ${speech.slope(v.elsewhere)}.`,
    cure: 'Give it more where there is room, or ask the code officer what holds here.',
  }),
  'fall-not-known': (v, speech) => ({
    text: `Whether ${speech.path(v.path)} can fall as it is asked to is not known: fewer than two levels of it are. Its ${speech.size(v.length)} ask for ${speech.size(v.required)}.`,
    cure: 'Give the level or the depth at its upper end and where it is to end.',
  }),
  'end-below-tap': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} comes out ${speech.size(v.by)} below ${speech.feature(v.tap)}, invert to invert, give or take ${speech.size(WITHIN_95 * v.sigma)}${
      v.sure ? ': it cannot flow into it' : ', so it may not flow into it'
    }.`,
    cure:
      v.state === 'proposed'
        ? 'Raise its end, and check the fall above; else tap the main lower, or plan a pump.'
        : 'Check both levels: one of them is wrong, or the pipe does not join there.',
  }),
};

const orAsk = 'or ask the code officer whether less is allowed here.';

function slopeCure(
  { state, from, to, short }: DrainFindingValues['fall-too-little'],
  speech: DigSpeech,
): string {
  return state === 'proposed'
    ? `Lower it by ${speech.size(short)} at ${speech.size(to)} or raise it as much at ${speech.size(from)}, ${orAsk}`
    : `It lies there already: check both levels. Laid anew, it lies ${speech.size(short)} lower at ${speech.size(to)} or higher at ${speech.size(from)}.`;
}

function between({ from, to }: { readonly from: number; readonly to: number }, speech: DigSpeech): string {
  return ` between ${speech.size(from)} and ${speech.size(to)}`;
}

function giveOrTake({ sigma }: { readonly sigma: number }, speech: DigSpeech): string {
  return `give or take ${speech.slope(WITHIN_95 * sigma)}`;
}
