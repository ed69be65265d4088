import type { OneCallState, ServiceFindingValues } from '@footmark/dig';
import type { OneCall } from '@footmark/site';
import type { Said } from '../said';
import { dateText } from './visitText';

/** How a ticket stands, as the findings about it are called. */
type TicketCode = Extract<keyof ServiceFindingValues, `one-call-${string}`>;
type TicketValues = ServiceFindingValues[TicketCode];

const CALL =
  'Call the one-call centre (811 in the United States), wait for the marks, and dig with regard to them.';

/** What is said of the one-call ticket. */
export const oneCallSentences: { readonly [Code in TicketCode]: (values: TicketValues) => Said } = {
  'one-call-missing': () => ({
    text: 'No one-call ticket is kept here.',
    cure: `${CALL} Put the number of the ticket here.`,
  }),
  'one-call-not-called': ({ days }) => ({
    text:
      days === null
        ? 'When the one-call centre was called is not known.'
        : 'The one-call centre is still to be called.',
    cure: CALL,
  }),
  'one-call-waiting': ({ from }) => ({
    text:
      from === null
        ? 'The one-call marks are not made yet.'
        : `The ticket is good from ${dateText(from)} on.`,
    cure: 'Wait for that day, and for the marks.',
  }),
  'one-call-expired': ({ until }) => ({
    text: `The marks ran out${until === null ? '' : ` on ${dateText(until)}`}.`,
    cure: 'Do not dig by them: call again and wait for fresh marks.',
  }),
  'one-call-dates-clash': () => ({
    text: 'The days of the one-call ticket contradict each other.',
    cure: 'Look at the ticket and put its days right.',
  }),
  'one-call-without-end': () => ({
    text: 'Until when the marks are good is not known.',
    cure: 'Ask the one-call centre, and put the day here.',
  }),
};

/** How it stands with the ticket, in a few words. */
export function oneCallText({ is, datesClash }: OneCallState, { validFrom, validUntil }: OneCall): string {
  switch (is) {
    case 'missing':
      return 'none kept';
    case 'not-called':
      return 'not called yet';
    case 'waiting':
      return validFrom === undefined ? 'marks not made yet' : `good from ${dateText(validFrom)}`;
    case 'valid':
      if (datesClash) return 'its days contradict each other';
      return validUntil === undefined ? 'good, last day not known' : `good until ${dateText(validUntil)}`;
    case 'expired':
      return validUntil === undefined ? 'ran out' : `ran out on ${dateText(validUntil)}`;
  }
}
