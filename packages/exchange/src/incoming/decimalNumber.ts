/** A plain decimal number: no blanks in it, no thousands, nothing hexadecimal. */
const NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d{1,3})?$/;

/** The number that a text is; NaN for what is none. */
export function decimalNumber(text: string): number {
  return NUMBER.test(text) ? Number(text) : Number.NaN;
}
