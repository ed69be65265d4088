import { INCH_M } from './foot';
import { formatLength, parseLength } from './length';
import { assertFinite, type Denominator, mixedNumberText, type PlainOption } from './number-text';
import { type Parsed, parsed, refused } from './parsed';
import { plainTyped } from './typed-text';

/** How small sizes (pipes, trunks) are shown, and what a bare number means. */
export type DiameterStyle = 'in' | 'mm';

/**
 * Reads a pipe or trunk diameter, metres: `14"`, `14 in`, `4`, `1 1/2"`, `1-1/2"`, `⌀100`, `100 mm`, `DN100`; any length with
 * a unit is accepted too. `DN100` gives 0.1 m: a DN (ISO 6708, from memory) is a designation near the size in millimetres,
 * not a measurement. Zero is refused as `not-positive`.
 */
export function parseDiameter(text: string, defaultUnit: DiameterStyle): Parsed {
  const typed = plainTyped(text).replace(/^[ø⌀∅] ?/, '');
  const nominal = /^dn ?(\d+)$/.exec(typed);
  // In a diameter a dash before a fraction never means feet.
  const size = typed.replace(/^(\d+) ?- ?(\d+\/)/, '$1 $2');
  if (/^\d+ ?- ?\d/.test(size)) return refused('not-a-number', { text: typed });
  const length = nominal ? parseLength(`${nominal[1]} mm`, 'mm') : parseLength(size, defaultUnit);
  if (!length.ok) return length;
  return length.value > 0 ? parsed(length.value) : refused('not-positive', { text: typed });
}

/** `denominator` (default 8) is for inches, `decimals` (default 0) for millimetres. */
export type DiameterFormat = PlainOption & Readonly<{ denominator?: Denominator; decimals?: number }>;

/** Prints a diameter given in metres: `4″`, `1½″`, `100 mm`. Throws for a value that is negative or not finite. */
export function formatDiameter(metres: number, style: DiameterStyle, format: DiameterFormat = {}): string {
  assertFinite(metres, 'metres');
  if (metres < 0) throw new RangeError(`a diameter cannot be negative, got ${metres}`);
  if (style === 'mm') return formatLength(metres, 'mm', format);
  const denominator = format.denominator ?? 8;
  const plain = format.plain ?? false;
  const count = Math.round((metres / INCH_M) * denominator);
  return `${mixedNumberText(count, denominator, plain)}${plain ? '"' : '″'}`;
}
