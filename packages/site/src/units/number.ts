import { type Parsed, parsed, refused } from './parsed';
import { plainTyped, readNumber, splitSign } from './typed-text';

export type NumberOptions = Readonly<{
  /** The unit mark that may stand behind the number, as `%` or `°`; absent: none may. */
  mark?: string;
  /** What one of the typed unit is in SI (default 1): 1/100 for a share in hundredths, π/180 for degrees. */
  per?: number;
  /** The largest value, included, in SI; absent: none. */
  most?: number;
  /** Zero is refused as `not-positive`. */
  aboveZero?: boolean;
}>;

/**
 * Reads a plain number, 0 or more, with or without its unit mark, in SI: `1.5`, `,5`, `1/2`, `2 1/2`, `30 %`, `1.5°`. A single
 * comma is a decimal comma. Another mark is refused as `not-a-number`.
 */
export function parseNumber(text: string, options: NumberOptions = {}): Parsed {
  const { mark, per = 1, most = Number.MAX_VALUE, aboveZero = false } = options;
  const typed = plainTyped(text);
  if (typed === '') return refused('empty');
  const signed = splitSign(typed);
  if (!signed.ok) return signed;
  const number = readNumber(withoutMark(signed.value.rest, mark), 'decimal');
  if (!number.ok) return number.code === 'not-a-number' ? refused(number.code, { text: typed }) : number;
  const value = number.value * per;
  if (value === 0) return aboveZero ? refused('not-positive', { text: typed }) : parsed(0);
  if (signed.value.sign === -1) return refused('negative', { text: typed });
  return value > most ? refused('too-large', { limit: most }) : parsed(value);
}

function withoutMark(typed: string, mark: string | undefined): string {
  return mark !== undefined && typed.endsWith(mark) ? typed.slice(0, -mark.length).trimEnd() : typed;
}
