import { type FitObservation, isEvidence, observationName, type RunsFit, type Site } from '@footmark/site';
import { atStart } from '../named';
import type { Said } from '../words';
import { evidenceInText } from './evidenceText';
import { orList } from './listText';
import { sureText } from './sureText';

/** Standard deviations that a normal error passes, to either side, once in so many times. Table of the normal distribution. */
const CHANCES = [
  [4.892, '1 in 1,000,000'],
  [3.891, '1 in 10,000'],
  [3.291, '1 in 1,000'],
  [2.576, '1 in 100'],
  [1.96, '1 in 20'],
] as const;

/** Of a fit that passes the limit of its test, one in so many is sound: its upper side is half of the test's 5 %. */
const TEST_CHANCE = '1 in 40';

/** How surprising a misfit is, from how many of its own standard deviations it comes to. */
export function surpriseText(standardized: number): string {
  const times = Math.abs(standardized);
  const chance = CHANCES.find(([least]) => times >= least)?.[1];
  if (chance === undefined) return 'as expected';
  return `${timesText(times)} what is usual, a chance of less than ${chance}`;
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
        text: `Something hangs on nothing${afterColon(looseNames(fit, site))}.`,
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
  const text = `On the whole, things miss by ${timesText(sigma0)} what is expected.`;
  return test.passed
    ? { text, cure: 'That is no sign of a mistake.' }
    : { text, cure: `That is more than chance explains: less than ${TEST_CHANCE} sound sites come out so.` };
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
  const count = countedNames(fit).size;
  if (fit.test?.passed === false) {
    return {
      text: `The evidence agrees less well than it should: it misses by ${timesText(fit.sigma0 ?? 0)} what is expected.`,
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

/** Longest way (m) that a mark or a point of a pipe would move; 0 when nothing would. */
function furthestMove({ pending, marks, taken }: RunsFit): number {
  if (pending === 0 && taken) return 0;
  return [...marks.values()].reduce((most, { fitted }) => Math.max(most, fitted?.off ?? 0), pending);
}

function countedNames(fit: RunsFit): ReadonlySet<string> {
  return new Set(fit.observations.filter((o) => isEvidence(o.tag)).map((o) => o.name));
}

function firstEvidence({ runs }: Site): string {
  const receiver = 'find the sonde with a receiver at a reading or two';
  return runs.length > 1
    ? `Say which things two runs both saw, or ${receiver}.`
    : `${atStart(receiver)}, and say so on its mark.`;
}

function looseNames(fit: RunsFit, site: Site): readonly string[] {
  const tags = new Map(
    [...fit.observations.map((o) => o.tag), ...fit.aside].map((tag) => [observationName(tag), tag]),
  );
  return fit.loose.flatMap((name) => {
    const tag = tags.get(name);
    return tag === undefined ? [] : [evidenceInText(tag, site)];
  });
}

function worstOf(fit: RunsFit, site: Site): string {
  const worst = fit.observations.reduce<FitObservation | null>(
    (most, o) =>
      isEvidence(o.tag) && Math.abs(o.standardized) > Math.abs(most?.standardized ?? 0) ? o : most,
    null,
  );
  return worst === null ? '' : `; ${evidenceInText(worst.tag, site)} fits least`;
}

function timesText(times: number): string {
  return `${times >= 10 ? Math.round(times) : Number(times.toFixed(1))} times`;
}

function afterColon(names: readonly string[]): string {
  return names.length === 0 ? '' : `: ${names.join(', ')}`;
}
