import {
  assertFinite,
  type Denominator,
  decimalText,
  mixedNumberText,
  type PlainOption,
  signText,
} from './number-text';
import { type Parsed, parsed, refused } from './parsed';
import { plainTyped, readNumber, splitSign } from './typed-text';

/** How a slope is shown, and what a bare number means: inches per foot, per cent, the run of `1:n`, rise over run. */
export type SlopeStyle = 'in/ft' | 'percent' | 'ratio' | 'decimal';

const INCHES_PER_FOOT = 12;

/** A bare number from here on is not taken as rise over run: per cent or inches per foot is far likelier. */
const BARE_SLOPE_LIMIT = 1;

/** What the amount is divided by to give rise over run. */
const SLOPE_UNITS: readonly Readonly<{ spelled: RegExp; divisor: number }>[] = [
  { spelled: /^("|in\.?|inch|inches)( per |\/)('|ft\.?|foot)$/, divisor: INCHES_PER_FOOT },
  { spelled: /^(%|percent|per cent)$/, divisor: 100 },
  { spelled: /^‰$/, divisor: 1000 },
  { spelled: /^mm( per |\/)m$/, divisor: 1000 },
  { spelled: /^cm( per |\/)m$/, divisor: 100 },
  { spelled: /^(ft( per |\/)ft|m( per |\/)m)$/, divisor: 1 },
];

/**
 * Reads a slope as rise over run: `1/4 in/ft`, `1/4"/ft`, `1/4 in per foot`, `2 %`, `20 mm/m`, `1:48`, `1 in 48`, `0.02`.
 * A bare number is in `defaultStyle` (default rise over run, where a fraction or 1 and more is refused as `slope-needs-unit`).
 */
export function parseSlope(
  text: string,
  options: Readonly<{ defaultStyle?: SlopeStyle; allowNegative?: boolean }> = {},
): Parsed {
  const typed = plainTyped(text);
  if (typed === '') return refused('empty');
  const signed = splitSign(typed);
  if (!signed.ok) return signed;
  const slope = readSlope(signed.value.rest, options.defaultStyle ?? 'decimal');
  if (!slope.ok || slope.value === 0) return slope;
  if (!Number.isFinite(slope.value)) return refused('too-large', { limit: Number.MAX_VALUE });
  if (signed.value.sign === -1 && !options.allowNegative) return refused('negative', { text: typed });
  return parsed(signed.value.sign * slope.value);
}

function readSlope(typed: string, defaultStyle: SlopeStyle): Parsed {
  const ratio = /^([\d.,/ ]+?) ?(?:: ?| in )([\d.,/ ]+)$/.exec(typed);
  if (ratio) return readRatio(typed, ratio[1] ?? '', ratio[2] ?? '');

  const match = /^([\d.,/ ]*[\d.,]) ?(\D.*)?$/.exec(typed);
  if (!match) return refused('not-a-number', { text: typed });
  const amount = readNumber(match[1] ?? '', 'decimal');
  if (!amount.ok) return amount;
  const unit = match[2];
  if (unit === undefined) return readBare(typed, amount.value, defaultStyle);
  const known = SLOPE_UNITS.find((candidate) => candidate.spelled.test(unit));
  return known ? parsed(amount.value / known.divisor) : refused('unknown-unit', { unit });
}

function readRatio(typed: string, riseText: string, runText: string): Parsed {
  const rise = readNumber(riseText, 'decimal');
  if (!rise.ok) return rise;
  const run = readNumber(runText, 'decimal');
  if (!run.ok) return run;
  return run.value === 0 ? refused('zero-denominator', { text: typed }) : parsed(rise.value / run.value);
}

function readBare(typed: string, amount: number, style: SlopeStyle): Parsed {
  switch (style) {
    case 'in/ft':
      return parsed(amount / INCHES_PER_FOOT);
    case 'percent':
      return parsed(amount / 100);
    case 'ratio':
      return amount === 0 ? refused('zero-denominator', { text: typed }) : parsed(1 / amount);
    case 'decimal':
      return typed.includes('/') || amount >= BARE_SLOPE_LIMIT
        ? refused('slope-needs-unit', { text: typed })
        : parsed(amount);
  }
}

/** `denominator` (default 16) is for `in/ft`; `decimals` for percent (default 2) and decimal (default 4). */
export type SlopeFormat = PlainOption & Readonly<{ denominator?: Denominator; decimals?: number }>;

/**
 * Prints a slope given as rise over run: `¼ in/ft`, `2.08 %`, `1:48`, `0.0208`. A ratio's larger part is whole from 10 on,
 * else has up to two decimals (`1:2.5`, `3:1`); level is `0:1`. Throws for a value that is not finite.
 */
export function formatSlope(slope: number, style: SlopeStyle, format: SlopeFormat = {}): string {
  assertFinite(slope, 'slope');
  const plain = format.plain ?? false;
  switch (style) {
    case 'in/ft': {
      const denominator = format.denominator ?? 16;
      const count = Math.round(Math.abs(slope) * INCHES_PER_FOOT * denominator);
      const sign = signText(slope, count === 0, plain);
      return `${sign}${mixedNumberText(count, denominator, plain)} in/ft`;
    }
    case 'percent':
      return `${decimalText(slope * 100, format.decimals ?? 2, plain)} %`;
    case 'ratio':
      return ratioText(slope, plain);
    case 'decimal':
      return decimalText(slope, format.decimals ?? 4, plain);
  }
}

/** Flatter than one in a million is level. */
const LEVEL_SLOPE = 1e-6;

function ratioText(slope: number, plain: boolean): string {
  const size = Math.abs(slope);
  if (size < LEVEL_SLOPE) return '0:1';
  const larger = Math.max(size, 1 / size);
  const amount = decimalText(larger, larger < 10 ? 2 : 0, true, true);
  return signText(slope, false, plain) + (size > 1 ? `${amount}:1` : `1:${amount}`);
}
