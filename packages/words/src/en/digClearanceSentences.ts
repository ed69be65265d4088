import type { ClearanceFindingValues } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import { atStart } from '../named';
import type { Said } from '../said';

type Sentences = {
  readonly [Code in keyof ClearanceFindingValues]: (
    values: ClearanceFindingValues[Code],
    speech: DigSpeech,
  ) => Said;
};

/** What is said of pipes and marks that come too near to something. */
export const clearanceSentences: Sentences = {
  'pipe-too-near': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} ${apartText(v, speech)} at ${speech.size(v.station)}${
      v.toCentre ? ', counted to its middle' : ''
    }; ${speech.length(v.required)} is asked.`,
    cure:
      v.state !== 'proposed'
        ? 'It lies there already: keep to what is asked when it is replaced, and ask the code officer.'
        : 'Move the pipe away, or ask the code officer what holds here.',
  }),
  'service-nearer-than-elsewhere': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} ${apartText(v, speech)} at ${speech.size(v.station)}, as far as is asked here; some codes ask for ${speech.length(v.elsewhere)}.`,
    cure: 'Ask the code officer and whoever owns the line what holds here.',
  }),
  'mark-in-tolerance-zone': (v, speech) => ({
    text: `${atStart(speech.mark(v.run, v.reading))} ${apartText(v, speech)}, within the ${speech.length(v.required)} that are dug by hand.`,
    cure: 'Dig by hand there, or with vacuum or water, until it is seen; private lines are usually not marked.',
  }),
  'pipe-along-wall': (v, speech) => ({
    text: `${atStart(speech.path(v.path))} runs along ${speech.feature(v.feature)} from ${speech.size(v.from)} to ${speech.size(v.to)}, ${speech.size(v.distance)} from it; ${speech.length(v.required)} is asked beside a bearing wall.`,
    cure: 'A trench there may weaken the wall: move it away, or ask an engineer.',
  }),
  'outline-doubtful': ({ feature }, speech) => ({
    text: `The outline of ${speech.feature(feature)} crosses itself, so what is inside it may not be what is meant.`,
    cure: 'Put its points in the order in which one walks round it.',
  }),
};

function apartText(
  { feature, distance }: { readonly feature: string; readonly distance: number },
  speech: DigSpeech,
): string {
  const name = speech.feature(feature);
  return distance < 0
    ? `reaches ${speech.size(-distance)} into ${name}`
    : `comes within ${speech.size(distance)} of ${name}`;
}
