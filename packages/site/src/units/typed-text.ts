import { type Parsed, parsed, refused } from './parsed';

const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * Typed text in one spelling: lower case, single blanks, `-` for every dash and minus, `'` and `"` for every
 * prime and quote (two single ones make a double one), `/` for the fraction slash, ` 1/2` for `½`.
 */
export function plainTyped(text: string): string {
  return text
    .toLowerCase()
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (character) => ` ${VULGAR_FRACTIONS[character]}`)
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/['’‘′´]/g, "'")
    .replace(/["“”″]|''/g, '"')
    .replace(/[⁄∕]/g, '/')
    .replace(/\s+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .trim();
}

/** Splits a leading sign off normalised text. Refuses `two-signs` wherever two signs follow each other. */
export function splitSign(text: string): Parsed<Readonly<{ sign: 1 | -1; rest: string }>> {
  if (/[+-] ?[+-]/.test(text)) return refused('two-signs', { text });
  if (/^[+-]/.test(text)) return parsed({ sign: text.startsWith('-') ? -1 : 1, rest: text.slice(1).trim() });
  return parsed({ sign: 1, rest: text });
}

/** What one comma before exactly three digits means: `1,234`. Every other comma can be read in one way only. */
export type CommaReading = 'thousands' | 'decimal' | 'ambiguous';

/**
 * An unsigned number in normalised text: `23`, `23.5`, `.5`, `5.`, `1/2`, `6 1/2`, `7,18` (decimal comma), `1,234.5` and
 * `1.234,5` (both grouped). A single dot is always a decimal point; `comma` decides on `1,234`.
 */
export function readNumber(text: string, comma: CommaReading): Parsed {
  const fraction = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text);
  if (fraction) return readFraction(text, fraction[1], Number(fraction[2]), Number(fraction[3]));
  if (/^(\d+\.?\d*|\.\d+)$/.test(text)) return parsed(Number(text));
  if (/^[1-9]\d{0,2}(,\d{3})+\.\d*$/.test(text) || /^[1-9]\d{0,2}(,\d{3}){2,}$/.test(text))
    return parsed(Number(text.replaceAll(',', '')));
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$/.test(text))
    return parsed(Number(text.replaceAll('.', '').replace(',', '.')));
  if (/^\d*,\d+$/.test(text)) return readSingleComma(text, comma);
  return refused('not-a-number', { text });
}

function readFraction(
  text: string,
  whole: string | undefined,
  numerator: number,
  denominator: number,
): Parsed {
  if (denominator === 0) return refused('zero-denominator', { text });
  if (whole !== undefined && numerator >= denominator) return refused('improper-fraction', { text });
  const value = Number(whole ?? 0) + numerator / denominator;
  // Hundreds of digits overflow both parts, and their quotient is no number.
  return Number.isNaN(value) ? refused('not-a-number', { text }) : parsed(value);
}

function readSingleComma(text: string, comma: CommaReading): Parsed {
  const asDecimal = Number(text.replace(',', '.'));
  if (comma === 'decimal' || !/^[1-9]\d{0,2},\d{3}$/.test(text)) return parsed(asDecimal);
  const asThousands = Number(text.replace(',', ''));
  return comma === 'thousands'
    ? parsed(asThousands)
    : refused('ambiguous-comma', { text, asDecimal, asThousands });
}
