import type { OpenFailure } from '@footmark/site';

/** What other programs write for a number that could not be computed. JSON has no such number. */
const NO_NUMBER = /\b(NaN|Infinity)\b/;

/** Whether a file that could not be opened holds a number that is none. */
export function holdsNoNumber(failure: OpenFailure): boolean {
  if (failure.code === 'not-json') return NO_NUMBER.test(failure.near);
  return failure.code === 'invalid' && failure.problems.some((p) => NO_NUMBER.test(p.detail));
}

/** How large a file is that has so many characters. */
export function megabytesText(characters: number): string {
  return `${(characters / 1e6).toFixed(1)} MB`;
}
