import { isEvidence, type RunsFit, type Site } from '@footmark/site';
import {
  chanceOf,
  countedEvidence,
  furthestMove,
  looseTags,
  TEST_CHANCE,
  timesOf,
  worstEvidence,
} from '../fitFacts';
import { atStart } from '../named';
import type { Said } from '../said';
import { evidenceInText } from './evidenceText';
import { orList } from './listText';
import { sureText } from './sureText';

/** How surprising a misfit is, from how many of its own standard deviations it comes to. */
export function surpriseText(standardized: number): string {
  const chance = chanceOf(standardized);
  if (chance === null) return 'as expected';
  return `${timesOf(standardized)} times what is usual, a chance of less than 1 in ${chance}`;
}

/** What is said where no fit is there to show: it is on its way, could not be made, or has nothing to be made of. */
export function noFitText({ busy, failed }: Readonly<{ busy: boolean; failed: boolean }>): string {
  if (busy) return 'Weighing what is known.';
  if (failed) return 'What is known could not be weighed. The marks stand as drawn.';
  return 'There is nothing to weigh without a run.';
}

/** What is said beside a fit of an earlier state of the site; null where it is of this one. */
export function oldFitText({ busy, failed }: Readonly<{ busy: boolean; failed: boolean }>): string | null {
  if (busy) return 'Weighing again.';
  return failed ? 'The last change could not be weighed; this is from before it.' : null;
}

/** How the evidence stands, and what to do next. */
export function fitText(fit: RunsFit, site: Site): Said {
  switch (fit.status) {
    case 'no-evidence':
      return fit.aside.some(isEvidence)
        ? {
            text: 'All evidence is set aside, so nothing checks these marks.',
            cure: 'Count some of it again.',
          }
        : { text: 'Nothing checks these marks yet.', cure: firstEvidence(site) };
    case 'undetermined':
      return {
        text: `Something hangs on nothing${afterColon(looseTags(fit).map((tag) => evidenceInText(tag, site)))}.`,
        cure: 'Count again what it hung on, or add what is known there. The sketch stays as it is.',
      };
    case 'not-converged':
      return {
        text: `No place fits all of the evidence${worstOf(fit, site)}.`,
        cure: 'Set aside what cannot be right, and see. The sketch stays as it is.',
      };
    case 'fitted':
      return fittedText(fit, site);
  }
}

/** How many things may have been seen from two runs, and that saying so helps. */
export function suggestedText(count: number): string {
  return count === 1
    ? 'One thing may have been seen from two runs. If it was, saying so makes every mark surer.'
    : `${count} things may have been seen from two runs. Where they were, saying so makes every mark surer.`;
}

/** What the misfit of it all means; null where nothing checks anything. */
export function misfitText({ sigma0, test }: RunsFit): Said | null {
  if (sigma0 === null || test === null) return null;
  const text = `On the whole, things miss by ${timesOf(sigma0)} times what is expected.`;
  return test.passed
    ? { text, cure: 'That is no sign of a mistake.' }
    : {
        text,
        cure: `That is more than chance explains: less than 1 in ${TEST_CHANCE} sound sites come out so.`,
      };
}

function fittedText(fit: RunsFit, site: Site): Said {
  const [worst] = fit.blunders;
  const [only, ...others] = worst ?? [];
  if (only !== undefined && others.length === 0) {
    return {
      text: `${atStart(evidenceInText(only.tag, site))} does not fit: ${surpriseText(only.standardized)}.`,
      cure: 'See what it would have to be. Check it, or set it aside and see.',
    };
  }
  if (worst !== undefined && only !== undefined) {
    return {
      text: `One of these is wrong, and nothing tells which: ${orList(worst.map((s) => evidenceInText(s.tag, site)))}.`,
      cure: 'Check them, or set one aside and see.',
    };
  }
  const count = countedEvidence(fit);
  if (fit.test?.passed === false) {
    return {
      text: `The evidence agrees less well than it should: it misses by ${timesOf(fit.sigma0 ?? 0)} times what is expected.`,
      cure: 'No single thing stands out. Check how sure things are, or find one more reading with the receiver.',
    };
  }
  const text = count === 1 ? 'One piece of evidence fits.' : `${count} pieces of evidence agree.`;
  return { text, cure: movedText(fit, site) };
}

function movedText(fit: RunsFit, { units }: Site): string {
  const by = furthestMove(fit);
  if (by === 0)
    return fit.taken
      ? 'The marks stand where it puts them.'
      : 'Taking the fit leaves the marks where they are.';
  return fit.taken
    ? `With what is known since, taking it anew moves the marks by up to ${sureText(by, units)}.`
    : `Taking the fit moves the marks by up to ${sureText(by, units)}.`;
}

function firstEvidence({ runs }: Site): string {
  const receiver = 'find the sonde with a receiver at a reading or two';
  return runs.length > 1
    ? `Say which things two runs both saw, or ${receiver}.`
    : `${atStart(receiver)}, and say so on its mark.`;
}

function worstOf(fit: RunsFit, site: Site): string {
  const worst = worstEvidence(fit);
  return worst === null ? '' : `; ${evidenceInText(worst, site)} fits least`;
}

function afterColon(names: readonly string[]): string {
  return names.length === 0 ? '' : `: ${names.join(', ')}`;
}
