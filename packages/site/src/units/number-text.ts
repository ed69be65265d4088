const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

/** `plain` prints what a keyboard has: `-`, `1/2`, `'` and `"` instead of minus sign, `½` and primes. */
export type PlainOption = Readonly<{ plain?: boolean }>;

/** A binary fraction of an inch or an inch per foot, as on a tape. */
export type Denominator = 1 | 2 | 4 | 8 | 16;

/** Throws for a value that no measurement can have: printing it would hide a programmer's mistake. */
export function assertFinite(value: number, name: string): void {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be finite, got ${value}`);
}

/** The sign before a printed amount; none when the amount was rounded to zero. */
export function signText(value: number, roundedToZero: boolean, plain: boolean): string {
  if (value >= 0 || roundedToZero) return '';
  return plain ? '-' : '−';
}

/** `value` with `decimals` places, rounded away from zero at the half, without a negative zero. */
export function decimalText(value: number, decimals: number, plain: boolean, trimZeros = false): string {
  const digits = Math.abs(value).toFixed(decimals);
  const shown = trimZeros && digits.includes('.') ? digits.replace(/\.?0+$/, '') : digits;
  return signText(value, Number(digits) === 0, plain) + shown;
}

/**
 * A whole count ≥ 0 of `1/denominator` as a mixed number in lowest terms: `6½`, `6 15⁄16`, `½`, `6`; plain `6 1/2`.
 * Sixteenths have no sign of their own and take the fraction slash.
 */
export function mixedNumberText(count: number, denominator: Denominator, plain: boolean): string {
  const whole = Math.floor(count / denominator);
  let numerator = count - whole * denominator;
  let lowest: number = denominator;
  if (numerator === 0) return String(whole);
  while (numerator % 2 === 0) {
    numerator /= 2;
    lowest /= 2;
  }
  const fraction = `${numerator}/${lowest}`;
  const sign = plain ? undefined : FRACTION_SIGNS[fraction];
  if (sign !== undefined) return whole === 0 ? sign : `${whole}${sign}`;
  const spelled = plain ? fraction : fraction.replace('/', '⁄');
  return whole === 0 ? spelled : `${whole} ${spelled}`;
}
