import { degreesToRadians, radiansToDegrees, readDegrees } from './degrees';
import { assertFinite, decimalText } from './number-text';
import { type Parsed, parsed, refused } from './parsed';
import { plainTyped, splitSign } from './typed-text';

const TURN_LIMIT_DEGREES = 180;

/**
 * Reads a turn as a deflection from straight on, radians, right positive, −π to π, both included: `L 90`, `90 R`, `left 90`,
 * `R 22 1/2`, `L 11°15'`, `+45` (right), `-45` (left), `0`, `straight`. Without a side only zero is accepted; a side with a
 * sign is refused as `two-signs`.
 */
export function parseTurn(text: string): Parsed {
  const typed = plainTyped(text);
  if (typed === '') return refused('empty');
  if (/^straight( on)?$/.test(typed)) return parsed(0);

  const before = /^(l|r|left|right)(?![a-z])\.? ?(.*)$/.exec(typed);
  const after = /^(.*?) ?(l|r|left|right)\.?$/.exec(typed);
  const side = before?.[1] ?? after?.[2];
  const angleText = before?.[2] ?? after?.[1] ?? typed;
  const signed = splitSign(angleText);
  if (!signed.ok) return signed;
  const hasSign = /^[+-]/.test(angleText);
  if (side !== undefined && hasSign) return refused('two-signs', { text: typed });

  const degrees = readDegrees(signed.value.rest);
  if (!degrees.ok) return degrees;
  if (degrees.value === 0) return parsed(0);
  if (side === undefined && !hasSign) return refused('side-missing', { text: typed });
  if (degrees.value > TURN_LIMIT_DEGREES)
    return refused('turn-over-180', { degrees: degrees.value, limit: TURN_LIMIT_DEGREES });
  const left = side === undefined ? signed.value.sign === -1 : side.startsWith('l');
  return parsed(degreesToRadians(left ? -degrees.value : degrees.value));
}

/** Reads by how much a fitting turns the pipe, to whichever side: radians, 0 to π, both included; a side may be typed or not. */
export function parseBend(text: string): Parsed {
  const turn = parseTurn(text);
  const bend = !turn.ok && turn.code === 'side-missing' ? parseTurn(`R ${text}`) : turn;
  return bend.ok ? parsed(Math.abs(bend.value)) : bend;
}

/**
 * Prints a deflection given in radians, right positive: `R 45°`, `L 22.5°`, `0°`; up to `decimals` (default 2) of the degree,
 * without trailing zeros. Throws for a value that is not finite.
 */
export function formatTurn(radians: number, format: Readonly<{ decimals?: number }> = {}): string {
  assertFinite(radians, 'radians');
  const degrees = decimalText(Math.abs(radiansToDegrees(radians)), format.decimals ?? 2, true, true);
  if (Number(degrees) === 0) return '0°';
  return `${radians < 0 ? 'L' : 'R'} ${degrees}°`;
}
