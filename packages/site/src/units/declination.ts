import { degreesToRadians, radiansToDegrees, readDegrees } from './degrees';
import { assertFinite, decimalText } from './number-text';
import { type Parsed, parsed, refused } from './parsed';
import { plainTyped, splitSign } from './typed-text';

const LIMIT_DEG = 180;

/**
 * Reads a magnetic declination, radians, east positive, −π to π, both included: `8.5 E`, `W 11°15'`, `8°30' west`, `+8.5` (east),
 * `-11` (west), `0`. Without a side or a sign only zero is accepted: a declination on the wrong side turns the plan twice as far off.
 */
export function parseDeclination(text: string): Parsed {
  const typed = plainTyped(text);
  if (typed === '') return refused('empty');
  const before = /^(e|w|east|west)(?![a-z])\.? ?(.*)$/.exec(typed);
  const after = /^(.*?) ?(e|w|east|west)\.?$/.exec(typed);
  const side = before?.[1] ?? after?.[2];
  const angleText = before?.[2] ?? after?.[1] ?? typed;
  const signed = splitSign(angleText);
  if (!signed.ok) return signed;
  const hasSign = /^[+-]/.test(angleText);
  if (side !== undefined && hasSign) return refused('sign-and-hemisphere', { text: typed });
  const degrees = readDegrees(signed.value.rest);
  if (!degrees.ok) return degrees;
  if (degrees.value === 0) return parsed(0);
  if (side === undefined && !hasSign) return refused('east-or-west-missing', { text: typed });
  if (degrees.value > LIMIT_DEG) {
    return refused('declination-over-180', { degrees: degrees.value, limit: LIMIT_DEG });
  }
  const west = side === undefined ? signed.value.sign === -1 : side.startsWith('w');
  return parsed(degreesToRadians(west ? -degrees.value : degrees.value));
}

/** Prints a declination given in radians, east positive, to a hundredth of a degree: `8.5° E`, `11.25° W`, `0°`. */
export function formatDeclination(radians: number): string {
  assertFinite(radians, 'radians');
  const degrees = decimalText(Math.abs(radiansToDegrees(radians)), 2, true, true);
  if (Number(degrees) === 0) return '0°';
  return `${degrees}° ${radians < 0 ? 'W' : 'E'}`;
}
