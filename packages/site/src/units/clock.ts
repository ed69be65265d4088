import type { PlainOption } from './number-text';
import { type Parsed, parsed, refused } from './parsed';
import { plainTyped } from './typed-text';

/** A place on the pipe wall seen along the run: 12 at the crown, 3 to the right, 6 at the invert, 9 to the left. */
export type ClockHour = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11 | 12;

/** The wall from one hour clockwise to another, both included; `from` = `to` is one place. */
export type ClockRange = Readonly<{ from: ClockHour; to: ClockHour }>;

const OCLOCK = / ?o'? ?clock$/;

/** Reads one clock position: `3`, `03`, `3:00`, `12 o'clock`. */
export function parseClockHour(text: string): Parsed<ClockHour> {
  const typed = plainTyped(text);
  if (typed === '') return refused('empty');
  const match = /^(\d+)(?::(\d\d))?$/.exec(typed.replace(OCLOCK, ''));
  if (!match) {
    const broken = /^\d+[.,:]\d+$/.test(typed) ? 'clock-not-whole-hour' : 'not-a-number';
    return refused(broken, { text: typed });
  }
  if (match[2] !== undefined && match[2] !== '00') return refused('clock-not-whole-hour', { text: typed });
  const hour = Number(match[1]);
  return isClockHour(hour) ? parsed(hour) : refused('clock-out-of-range', { hour });
}

/** Reads a stretch of the wall, clockwise: `4-8`, `4 to 8`, `10-2` (over the crown); one position gives `from` = `to`. */
export function parseClockRange(text: string): Parsed<ClockRange> {
  const typed = plainTyped(text);
  const match = /^(.+?)(?: ?- ?| to )(.+)$/.exec(typed);
  const from = parseClockHour(match?.[1] ?? typed);
  if (!from.ok) return from;
  const to = parseClockHour(match?.[2] ?? typed);
  return to.ok ? parsed({ from: from.value, to: to.value }) : to;
}

function isClockHour(hour: number): hour is ClockHour {
  return Number.isInteger(hour) && hour >= 1 && hour <= 12;
}

/** Prints `3 o’clock` for an hour or a stretch without an end, or `4–8 o’clock`; plain `3 o'clock`, `4-8 o'clock`. */
export function formatClock(
  at: ClockHour | Readonly<{ from: ClockHour; to?: ClockHour | undefined }>,
  format: PlainOption = {},
): string {
  const { from, to = from } = typeof at === 'number' ? { from: at } : at;
  const hours = from === to ? `${from}` : `${from}${format.plain ? '-' : '–'}${to}`;
  return `${hours} o${format.plain ? "'" : '’'}clock`;
}
