import type { PairExplanation, Site, SiteAccuracy } from '@footmark/site';
import { counterText, lengthText } from '../measureText';
import { atStart } from '../named';
import type { PairProblem } from '../pairProblem';
import { percentText } from '../percentText';
import type { Said } from '../said';
import { scaleText } from '../sightings';
import { runInText } from './evidenceText';
import { surpriseText } from './fitText';
import { sureText } from './sureText';

/** Why two readings cannot be said to have seen one thing. */
export const pairProblemTexts: Record<PairProblem, string> = {
  itself: 'That is the same reading twice. Choose one of each run.',
  'one-run': 'Both are of one run. A pair is of two runs that saw one thing.',
  paired: 'These two are paired already.',
};

/** How far apart two runs have one thing, and how surprising that is. */
export function apartText(
  { closure, sigma }: Readonly<{ closure: number; sigma: number }>,
  site: Site,
): string {
  return `As shown they are ${sureText(closure, site.units)} apart: ${surpriseText(closure / sigma)}.`;
}

/** What one thing alone would have to be to make two runs agree. */
export function explanationText(explanation: PairExplanation, site: Site): string {
  const { units } = site;
  const { by, wouldBe } = explanation;
  const more = by > 0 ? 'more' : 'less';
  switch (explanation.is) {
    case 'zero':
      return `The counter of ${runInText(explanation.run, site)} would have to have shown ${counterText(wouldBe, units)} at its zero, ${sureText(by, units)} ${more} than said.`;
    case 'riser':
      return `${atStart(runInText(explanation.run, site))} would have to have ${lengthText(wouldBe, units)} of cable between its zero and the pipe, ${sureText(by, units)} ${more} than said.`;
    case 'scale':
      return `The counter of ${runInText(explanation.run, site)} would have to count × ${scaleText(wouldBe)}, ${percentText(Math.abs(by / (wouldBe - by)))} ${more} than said.`;
    case 'pipe':
      return `The pipe between the two entries would have to be ${lengthText(wouldBe, units)} long, ${sureText(by, units)} ${more} than drawn.`;
  }
}

const CHECKS = {
  receiver: { one: 'locate', several: 'locates', of: 'the sonde' },
  digging: { one: 'mark that was laid bare', several: 'marks that were laid bare', of: 'them' },
} as const;

/** How well the computation agrees on this site with the receiver, or with what was laid bare, and what that is worth. */
export function accuracyText(
  accuracy: SiteAccuracy,
  { units }: Site,
  by: 'receiver' | 'digging' = 'receiver',
): Said {
  const { count, enough, independent } = accuracy;
  const { one, several, of } = CHECKS[by];
  const off =
    count === 1
      ? `The one ${one} is ${sureText(accuracy.rmse, units)} from where the computation has ${by === 'digging' ? 'it' : of}.`
      : `The ${count} ${several} are ${sureText(accuracy.rmse, units)} from where the computation has ${of}, taken together; by them, 19 of 20 lie within ${sureText(accuracy.accuracy, units)}.`;
  return {
    text: off,
    cure: [
      ...(independent ? [] : ['The lines were fitted to some of them, so this is no second opinion.']),
      ...(enough ? [] : ['That is few: it takes 20 of them to state an accuracy.']),
    ].join(' '),
  };
}
