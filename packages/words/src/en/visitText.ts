import type { Visit } from '@footmark/site';
import { inSentence } from '../named';
import { visitPurposeNames } from './drainNames';

/** Days of the calendar, which are the same day in every time zone. */
const day = new Intl.DateTimeFormat('en-US', {
  year: 'numeric',
  month: 'short',
  day: 'numeric',
  timeZone: 'UTC',
});

/** `Mar 9, 2025`, for a day written `2025-03-09`. */
export function dateText(date: string): string {
  return day.format(new Date(`${date}T00:00:00Z`));
}

/** `Mar 9, 2025, first look`; `First look, day not known` without its day. */
export function visitName({ date, purpose }: Visit): string {
  const name = visitPurposeNames[purpose];
  return date === undefined ? `${name}, day not known` : `${dateText(date)}, ${inSentence(name)}`;
}
