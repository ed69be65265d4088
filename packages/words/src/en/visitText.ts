import type { GapEnd, SeverityWord, Site, StillThere, Units, Visit, VisitComparison } from '@footmark/site';
import { lengthText } from '../measureText';
import { atStart, inSentence } from '../named';
import { dayOf, severityOf, withinErrors } from '../visitFacts';
import { runEndNames, severityNames, visitPurposeNames } from './drainNames';
import { runInText } from './evidenceText';

/** Days of the calendar, which are the same day in every time zone. */
const day = new Intl.DateTimeFormat('en-US', {
  year: 'numeric',
  month: 'short',
  day: 'numeric',
  timeZone: 'UTC',
});

/** `Mar 9, 2025`, for a day written `2025-03-09`. */
export function dateText(date: string): string {
  return day.format(dayOf(date));
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

/** How a thing that is still there has fared: its severity, and how far apart the two visits have it. */
export function faredText(thing: StillThere, units: Units): string {
  const [was, is] = [severityOf(thing.before), severityOf(thing.after)];
  const apart = `${lengthText(Math.abs(thing.moved), units)} apart by the counters, ${
    withinErrors(thing) ? 'within their errors' : 'more than their errors explain'
  }`;
  if (was === is) return is === null ? apart : `${severityText(is)} as before; ${apart}`;
  return `${severityText(was)} before, ${severityText(is)} after; ${apart}`;
}

function severityText(severity: SeverityWord | null): string {
  return severity === null ? 'not said' : inSentence(severityNames[severity]);
}

/** Where a camera went no further, and why; null where it was not stopped. */
export function stoppedText(end: GapEnd, site: Site): string | null {
  if (end.is !== 'stopped') return null;
  const why = end.ended === null ? 'nobody said why' : inSentence(runEndNames[end.ended]);
  return `${atStart(runInText(end.run, site))} ended at ${end.last.label}: ${why}.`;
}
