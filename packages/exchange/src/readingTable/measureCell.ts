import {
  type ClockRange,
  type LengthStyle,
  type Parsed,
  type ParseFailure,
  parseClockRange,
  parseLength,
  parseVideoTime,
} from '@footmark/site';
import { LATEST_VIDEO_S, MOST_MEASURE_CHARACTERS } from './tableLimits';

/** A length in metres. `decimalComma`: one comma between digits is a decimal comma, `12,345` too. */
export function lengthOf(text: string, style: LengthStyle, decimalComma: boolean): Parsed {
  if (text.length > MOST_MEASURE_CHARACTERS) return tooLong(text);
  return parseLength(decimalComma ? text.replace(/^([^,.]*\d),(\d[^,.]*)$/, '$1.$2') : text, style);
}

/** Whether the text is a length by itself, whatever its unit and its comma; `23-6` is one, as in feet. */
export function isLength(text: string): boolean {
  return /\d/.test(text) && lengthOf(text, 'ft', true).ok;
}

/** Whether a length other than 0 is written without a unit or its mark. */
export function isBareLength(text: string): boolean {
  return /[1-9]/.test(text) && !/[\p{L}'"’‘′´“”″]/u.test(text) && isLength(text);
}

export function clockOf(text: string): Parsed<ClockRange> {
  return text.length > MOST_MEASURE_CHARACTERS ? tooLong(text) : parseClockRange(text);
}

/**
 * Whether commas in these lengths are decimal ones: some stand where no comma between thousands can (`7,18`, `0,125`,
 * `1.234,5`), and none of the lengths has a decimal point.
 */
export function hasDecimalComma(lengths: readonly string[]): boolean {
  const short = lengths.filter((text) => text.length <= MOST_MEASURE_CHARACTERS);
  return (
    short.some((text) => /(?:^|\D)(?:\d*,(?:\d{1,2}|\d{4,})|0,\d+|\d\.\d{3},\d+)(?:\D|$)/.test(text)) &&
    !short.some((text) => /^[^,]*\.\d+(?:\D|$)/.test(text) && !text.includes(','))
  );
}

/** Seconds into a recording, from `mm:ss` or `h:mm:ss`, with parts of a second if they are given; else `null`. */
export function videoTimeOf(text: string): number | null {
  const time = text.includes(':') ? parseVideoTime(text) : null;
  return time?.ok && time.value <= LATEST_VIDEO_S ? time.value : null;
}

function tooLong(text: string): ParseFailure {
  return { ok: false, code: 'not-a-number', values: { text: text.slice(0, MOST_MEASURE_CHARACTERS) } };
}
