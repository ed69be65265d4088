import type { OneCall } from '@footmark/site';
import type { Said } from '../words';
import { dateText } from './visitText';

/** A ticket as it stands on a day of the calendar (`2025-03-09`, as the ticket writes its days); null where nothing is to be said. */
export function oneCallText(oneCall: OneCall | undefined, today: string): Said | null {
  if (oneCall === undefined || oneCall.ticket === '') {
    return {
      text: 'No one-call ticket is kept here.',
      cure: 'Call the one-call centre before any dig, and put its number here.',
    };
  }
  const { validFrom, validUntil } = oneCall;
  if (validUntil !== undefined && validUntil < today) {
    return {
      text: `The marks ran out on ${dateText(validUntil)}.`,
      cure: 'Do not dig by them: call again and wait for fresh marks.',
    };
  }
  if (validFrom !== undefined && validFrom > today) {
    return {
      text: `The ticket is good from ${dateText(validFrom)} on.`,
      cure: 'Wait for that day, and for the marks.',
    };
  }
  if (validUntil === undefined) {
    return {
      text: 'Until when the marks are good is not known.',
      cure: 'Ask the one-call centre, and put the day here.',
    };
  }
  return null;
}
