import { assertFinite } from './number-text';
import { type Parsed, parsed, refused } from './parsed';

const TYPED = /^(?:(?:(\d+):)?(\d+):)?(\d+(?:[.,]\d+)?)$/;

/**
 * Reads a place in a recording, seconds: `75`, `1:15`, `0:01:15`, with parts of a second if they are given. Behind a colon the
 * seconds are below 60, behind hours the minutes too.
 */
export function parseVideoTime(text: string): Parsed {
  const typed = text.trim();
  if (typed === '') return refused('empty');
  const [whole, hours = '0', minutes = '0', last = ''] = TYPED.exec(typed) ?? [];
  const seconds = Number(last.replace(',', '.'));
  const wellFormed = !typed.includes(':') || (seconds < 60 && (Number(hours) === 0 || Number(minutes) < 60));
  if (whole === undefined || !wellFormed) return refused('not-a-number', { text: typed });
  const value = Number(hours) * 3600 + Number(minutes) * 60 + seconds;
  return Number.isFinite(value) ? parsed(value) : refused('too-large', { limit: Number.MAX_VALUE });
}

/** Prints seconds ≥ 0 into a recording: `1:15`, from an hour on `1:02:05`; parts of a second to the thousandth. Throws for a value that is not finite. */
export function formatVideoTime(seconds: number): string {
  assertFinite(seconds, 'seconds');
  const thousandths = Math.round(seconds * 1000);
  const whole = Math.floor(thousandths / 1000);
  const part = (thousandths - whole * 1000) / 1000;
  const two = (n: number) => String(n).padStart(2, '0');
  const clock = `${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}${part === 0 ? '' : String(part).slice(1)}`;
  return whole < 3600 ? clock.replace(/^0(?=\d:)/, '') : `${Math.floor(whole / 3600)}:${clock}`;
}
