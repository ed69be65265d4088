import type { Parsed } from '@footmark/site';

const TYPED = /^(?:(?:(\d+):)?(\d+):)?(\d+(?:[.,]\d+)?)$/;

/** Reads a place in a recording, seconds: `75`, `1:15`, `0:01:15`, with parts of a second if they are given. */
export function parseVideoTime(text: string): Parsed {
  const typed = text.trim();
  const [whole, hours = '0', minutes = '0', last = ''] = TYPED.exec(typed) ?? [];
  const seconds = Number(last.replace(',', '.'));
  const wellFormed = !typed.includes(':') || (seconds < 60 && (Number(hours) === 0 || Number(minutes) < 60));
  return whole === undefined || !wellFormed
    ? { ok: false, code: 'not-a-number', values: { text: typed } }
    : { ok: true, value: Number(hours) * 3600 + Number(minutes) * 60 + seconds };
}

/** `1:15`, from an hour on `1:02:05`; parts of a second as they are. */
export function videoTimeText(seconds: number): string {
  const whole = Math.floor(seconds);
  const part = Number((seconds - whole).toFixed(3));
  const two = (n: number) => String(n).padStart(2, '0');
  const clock = `${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}${part === 0 ? '' : String(part).slice(1)}`;
  return whole < 3600 ? clock.replace(/^0(?=\d:)/, '') : `${Math.floor(whole / 3600)}:${clock}`;
}
