import { FOOT_M, INCH_M, US_SURVEY_FOOT_M } from './foot';
import {
  assertFinite,
  type Denominator,
  decimalText,
  mixedNumberText,
  type PlainOption,
  signText,
} from './number-text';
import { type Parsed, parsed, refused } from './parsed';
import { type CommaReading, plainTyped, readNumber, splitSign } from './typed-text';

/** How a length is shown, and what a bare number means (`ft-in`: feet). `usft` only for State Plane coordinates. */
export type LengthStyle = 'ft-in' | 'ft' | 'usft' | 'in' | 'm' | 'cm' | 'mm';

/** Larger typed lengths are refused: beyond every UTM or State Plane coordinate, metres. */
export const LENGTH_LIMIT_M = 1e8;

const INCHES_PER_FOOT = 12;

type DecimalStyle = Exclude<LengthStyle, 'ft-in'>;

/** `comma`: feet, inches and millimetres are grouped in thousands; `1,234 m` is read differently on two continents. */
const UNITS: Readonly<
  Record<DecimalStyle, Readonly<{ metres: number; spelled: RegExp; comma: CommaReading; decimals: number }>>
> = {
  ft: { metres: FOOT_M, spelled: /^('|ft|foot|feet)$/, comma: 'thousands', decimals: 2 },
  usft: {
    metres: US_SURVEY_FOOT_M,
    spelled: /^(us[- ]?ft|ft[- ]?us|(ft|foot|feet) ?\(us\)|us survey (ft|foot|feet))$/,
    comma: 'thousands',
    decimals: 2,
  },
  in: { metres: INCH_M, spelled: /^("|in|inch|inches)$/, comma: 'thousands', decimals: 2 },
  m: { metres: 1, spelled: /^(m|met(er|re)s?)$/, comma: 'ambiguous', decimals: 2 },
  cm: { metres: 0.01, spelled: /^(cm|centimet(er|re)s?)$/, comma: 'ambiguous', decimals: 1 },
  mm: { metres: 0.001, spelled: /^(mm|millimet(er|re)s?)$/, comma: 'thousands', decimals: 0 },
};

const DECIMAL_STYLES = Object.keys(UNITS) as DecimalStyle[]; // Object.keys forgets the literal keys of UNITS

const FEET_AND_INCHES =
  /^([\d.,][\d.,/ ]*?) ?(?:'|ft\.?|foot|feet) ?-? ?([\d.,/][\d.,/ -]*?) ?("|in\.?|inch|inches)?$/;
const DASHED = /^(\d+) ?- ?([\d.,/][\d.,/ -]*?) ?("|in\.?|inch|inches)?$/;
const AMOUNT_AND_UNIT = /^([\d.,/ ]*[\d.,/]) ?([^\d\s-][^\d]*)?$/;

/**
 * Reads a typed length, metres: `23' 6 1/2"`, `23'6`, `23'-6"`, `23 ft 6 in`, `23-6 1/2`, `6½"`, `23.54 ft`, `7.18 m`,
 * `7,18 m`, `7180 mm`, `71.8 cm`, `100 ft (US)`; a bare number is in `defaultUnit`.
 *
 * A dash joins feet and inches where bare numbers are feet, or before an inch mark. `6-1/2"` is refused as
 * `ambiguous-dash`; `23'6-1/2"` is not. `1,234` is 1234 in feet, inches and millimetres and refused as
 * `ambiguous-comma` in metres and centimetres; any other single comma is a decimal comma. The feet of a
 * feet-and-inches length are international ones.
 */
export function parseLength(
  text: string,
  defaultUnit: LengthStyle,
  options: Readonly<{ allowNegative?: boolean }> = {},
): Parsed {
  const typed = plainTyped(text);
  if (typed === '') return refused('empty');
  const signed = splitSign(typed);
  if (!signed.ok) return signed;
  const magnitude = readMagnitude(signed.value.rest, defaultUnit);
  if (!magnitude.ok) return magnitude;
  if (magnitude.value === 0) return magnitude;
  if (magnitude.value > LENGTH_LIMIT_M) return refused('too-large', { limit: LENGTH_LIMIT_M });
  if (signed.value.sign === -1 && !options.allowNegative) return refused('negative', { text: typed });
  return parsed(signed.value.sign * magnitude.value);
}

function readMagnitude(typed: string, defaultUnit: LengthStyle): Parsed {
  const feetAndInches = FEET_AND_INCHES.exec(typed);
  if (feetAndInches) return readFeetAndInches(feetAndInches[1] ?? '', feetAndInches[2] ?? '');

  const dashed = DASHED.exec(typed);
  if (dashed) {
    const bareIsFeet = defaultUnit === 'ft' || defaultUnit === 'ft-in';
    const inches = dashed[2] ?? '';
    if (/^\d+\/\d+$/.test(inches) || (!bareIsFeet && dashed[3] === undefined))
      return refused('ambiguous-dash', { text: typed });
    return readFeetAndInches(dashed[1] ?? '', inches);
  }

  const amount = AMOUNT_AND_UNIT.exec(typed);
  if (amount) return readAmount(amount[1] ?? '', amount[2], defaultUnit);
  const firstUnit = /^[\d.,/ ]+(\D+?) ?\d/.exec(typed)?.[1];
  return firstUnit !== undefined && styleSpelled(firstUnit) !== undefined
    ? refused('mixed-units', { text: typed })
    : refused('not-a-number', { text: typed });
}

function readFeetAndInches(feetText: string, inchesText: string): Parsed {
  const feet = readNumber(feetText, UNITS.ft.comma);
  if (!feet.ok) return feet;
  if (!Number.isInteger(feet.value)) return refused('feet-not-whole', { feet: feetText });
  const inches = readNumber(inchesText.replace(/^(\d+) ?- ?(\d+\/)/, '$1 $2'), 'decimal');
  if (!inches.ok) return inches;
  if (inches.value >= INCHES_PER_FOOT)
    return refused('inches-too-large', { inches: inches.value, limit: INCHES_PER_FOOT });
  return parsed((feet.value * INCHES_PER_FOOT + inches.value) * INCH_M);
}

function readAmount(amountText: string, unitText: string | undefined, defaultUnit: LengthStyle): Parsed {
  const bareStyle = defaultUnit === 'ft-in' ? 'ft' : defaultUnit;
  const style = unitText === undefined ? bareStyle : styleSpelled(unitText);
  if (style === undefined) return refused('unknown-unit', { unit: unitText ?? '' });
  const amount = readNumber(amountText, UNITS[style].comma);
  return amount.ok ? parsed(amount.value * UNITS[style].metres) : amount;
}

function styleSpelled(unitText: string): DecimalStyle | undefined {
  const spelled = unitText.trim().replace(/\.$/, '');
  return DECIMAL_STYLES.find((style) => UNITS[style].spelled.test(spelled));
}

/** `denominator` is for `ft-in` (default 4), `decimals` for all others (default 2; cm 1, mm 0). */
export type LengthFormat = PlainOption & Readonly<{ denominator?: Denominator; decimals?: number }>;

/**
 * Prints a length given in metres: `23′ 6½″`, `23.54 ft`, `23.54 ft (US)`, `282.50 in`, `7.18 m`, `718.0 cm`, `7180 mm`. In
 * `ft-in`, less than a foot is inches alone (`6½″`) and whole feet keep their `0″`. Throws for a value that is not finite.
 */
export function formatLength(metres: number, style: LengthStyle, format: LengthFormat = {}): string {
  assertFinite(metres, 'metres');
  const plain = format.plain ?? false;
  if (style === 'ft-in') return feetInchesText(metres, format.denominator ?? 4, plain);
  const decimals = format.decimals ?? UNITS[style].decimals;
  return `${decimalText(metres / UNITS[style].metres, decimals, plain)} ${unitText(style)}`;
}

/** Finest tape division and the decimals below a tenth of a millimetre, so that opening an editor hides nothing. */
const INPUT_DENOMINATOR: Denominator = 16;
const INPUT_DECIMALS: Readonly<Record<DecimalStyle, number>> = { ft: 4, usft: 4, in: 3, m: 4, cm: 2, mm: 1 };

/**
 * The text to put into an edit field: keyboard characters only, finer than `formatLength`, without trailing zeros, and
 * `parseLength` reads it back to within half of 1/16 in or of the last decimal (negative ones with `allowNegative`).
 */
export function lengthInputText(metres: number, style: LengthStyle): string {
  assertFinite(metres, 'metres');
  if (style === 'ft-in') return feetInchesText(metres, INPUT_DENOMINATOR, true);
  const amount = metres / UNITS[style].metres;
  return `${decimalText(amount, INPUT_DECIMALS[style], true, true)} ${unitText(style)}`;
}

function unitText(style: DecimalStyle): string {
  return style === 'usft' ? 'ft (US)' : style;
}

function feetInchesText(metres: number, denominator: Denominator, plain: boolean): string {
  // Rounding the whole length first carries 11 15/16" into the next foot.
  const count = Math.round((Math.abs(metres) / INCH_M) * denominator);
  const feet = Math.floor(count / (INCHES_PER_FOOT * denominator));
  const inches = mixedNumberText(count - feet * INCHES_PER_FOOT * denominator, denominator, plain);
  const sign = signText(metres, count === 0, plain);
  const [footMark, inchMark] = plain ? ["'", '"'] : ['′', '″'];
  return feet === 0 ? `${sign}${inches}${inchMark}` : `${sign}${feet}${footMark} ${inches}${inchMark}`;
}
