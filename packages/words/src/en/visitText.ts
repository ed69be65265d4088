import type { Visit, VisitComparison } from '@footmark/site';
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

/** What has become of things that two visits are compared by. */
export const comparedTexts: Record<keyof VisitComparison, { readonly title: string; readonly text: string }> =
  {
    gone: { title: 'Gone', text: 'Seen before; a camera came through again and it was not there.' },
    appeared: { title: 'New', text: 'Not there when a camera came through before.' },
    stillThere: { title: 'Still there', text: 'Seen on both, the same thing at the same place.' },
    notLookedAtAgain: {
      title: 'Not looked at again',
      text: 'Seen before, where no camera surely came through again.',
    },
    firstLookedAt: {
      title: 'Looked at for the first time',
      text: 'Seen where no camera had surely come through before.',
    },
  };
