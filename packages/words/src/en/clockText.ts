import { formatClock, type Reading } from '@footmark/site';

/** `6 o’clock`, `4–8 o’clock`. */
export function clockText(clock: NonNullable<Reading['clock']>): string {
  return formatClock(clock);
}
