import type { OneCall } from '@footmark/site';

/**
 * How it stands with the one-call ticket on a day. `missing`: there is none; `not-called`: its number is there and no day on which the
 * centre was called, or one to come; `waiting`: called, and the marks do not hold yet; `valid`: they do; `expired`: not any more. `days`: until
 * the call, until the marks hold, until they do not (0 on the last day), since they did; null where no day is told.
 */
export type OneCallState = {
  readonly is: 'missing' | 'not-called' | 'waiting' | 'valid' | 'expired';
  readonly days: number | null;
  /** The marks would end before they begin, or hold before anybody called. */
  readonly datesClash: boolean;
};

/** `today`: an ISO day. A ticket without a number is none; one without a last day holds until somebody says so. */
export function oneCallState(oneCall: OneCall | undefined, today: string): OneCallState {
  if (oneCall === undefined || oneCall.ticket === '') return { is: 'missing', days: null, datesClash: false };
  const { called, validFrom, validUntil } = oneCall;
  const datesClash =
    isAfter(validFrom, validUntil) || isAfter(called, validFrom) || isAfter(called, validUntil);
  const state = (is: OneCallState['is'], days: number | null): OneCallState => ({ is, days, datesClash });
  if (validUntil !== undefined && today > validUntil) return state('expired', daysBetween(validUntil, today));
  if (isAfter(called, today)) return state('not-called', daysBetween(today, called ?? today));
  if (called === undefined && validFrom === undefined) return state('not-called', null);
  if (validFrom === undefined) return state('waiting', null);
  if (today < validFrom) return state('waiting', daysBetween(today, validFrom));
  return state('valid', validUntil === undefined ? null : daysBetween(today, validUntil));
}

/** ISO days sort as text. */
function isAfter(day: string | undefined, other: string | undefined): boolean {
  return day !== undefined && other !== undefined && day > other;
}

const DAY_MS = 86_400_000;

function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}
