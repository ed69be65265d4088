import {
  DEGREES_PER_TURN,
  degreesMinutesSecondsText,
  degreesToRadians,
  radiansToDegrees,
  readDegrees,
} from './degrees';
import { assertFinite, decimalText, type PlainOption } from './number-text';
import { type Parsed, parsed, refused } from './parsed';
import { plainTyped, splitSign } from './typed-text';

const QUADRANT_DEGREES = 90;

/** Degrees clockwise from north. */
const NAMED_DIRECTIONS: ReadonlyMap<string, number> = new Map([
  ['n', 0],
  ['ne', 45],
  ['e', 90],
  ['se', 135],
  ['s', 180],
  ['sw', 225],
  ['w', 270],
  ['nw', 315],
]);

/**
 * Reads a direction, radians clockwise from north in [0, 2π): an azimuth of 0 to 360° in any form of `readDegrees`
 * (`45.504°`, `45-30-15`; 360 is 0), a quadrant bearing (`N 45°30'15" E`, `N45-30-15E`, `n 45 e`) or a named direction
 * (`E`, `SW`, `due north`). A quadrant's angle goes from 0 to 90°, both included.
 */
export function parseAzimuth(text: string): Parsed {
  const typed = plainTyped(text);
  if (typed === '') return refused('empty');
  const lettered = typed
    .replace(/^due /, '')
    .replace(/(north|south|east|west)/g, (word) => word.charAt(0))
    .replace(/^([ns])[. -]+(?=[ew]$)/, '$1');
  const named = NAMED_DIRECTIONS.get(lettered);
  if (named !== undefined) return parsed(degreesToRadians(named));
  if (/^[nsew]\.? ?\d|\d\D? ?[ew]\.?$/.test(lettered)) return readQuadrant(lettered);

  const signed = splitSign(typed);
  if (!signed.ok) return signed;
  const degrees = readDegrees(signed.value.rest);
  if (!degrees.ok) return degrees;
  const azimuth = degrees.value * signed.value.sign;
  if (azimuth < 0 || azimuth > DEGREES_PER_TURN) return refused('azimuth-out-of-range', { degrees: azimuth });
  return parsed(wrapRadians(degreesToRadians(azimuth)));
}

function readQuadrant(text: string): Parsed {
  const match = /^([ns])\.? ?(\d.*?) ?([ew])\.?$/.exec(text);
  if (!match) return refused('not-a-quadrant', { text });
  const degrees = readDegrees(match[2] ?? '');
  if (!degrees.ok) return degrees;
  const angle = degrees.value;
  if (angle > QUADRANT_DEGREES)
    return refused('quadrant-over-90', { degrees: angle, limit: QUADRANT_DEGREES });
  const east = match[3] === 'e';
  const azimuth =
    match[1] === 'n' ? (east ? angle : DEGREES_PER_TURN - angle) : east ? 180 - angle : 180 + angle;
  return parsed(wrapRadians(degreesToRadians(azimuth)));
}

/** The same direction in [0, 2π). */
function wrapRadians(radians: number): number {
  const turn = 2 * Math.PI;
  const wrapped = ((radians % turn) + turn) % turn;
  return wrapped === turn ? 0 : wrapped;
}

/** `decimals` of the degree (default 3), or of the second when `dms` (default 0). */
export type AzimuthFormat = PlainOption & Readonly<{ dms?: boolean; decimals?: number }>;

/**
 * Prints a direction given in radians clockwise from north, any turn: `45.504°` or `45°30′15″`. What rounds up to
 * a whole turn is 0°. Throws for a value that is not finite.
 */
export function formatAzimuth(radians: number, format: AzimuthFormat = {}): string {
  if (format.dms) {
    const decimals = format.decimals ?? 0;
    return degreesMinutesSecondsText(secondCount(radians, decimals), decimals, format.plain ?? false);
  }
  assertFinite(radians, 'radians');
  const decimals = format.decimals ?? 3;
  const shown = decimalText(radiansToDegrees(wrapRadians(radians)), decimals, true);
  return `${Number(shown) === DEGREES_PER_TURN ? decimalText(0, decimals, true) : shown}°`;
}

/**
 * Prints a direction given in radians clockwise from north as a quadrant bearing, `decimals` of the second: `N 45°30′15″ E`.
 * The quadrant is chosen after rounding; north is `N 0° E`, east `N 90° E`, south `S 0° E`, west `N 90° W`, each
 * with its zero minutes and seconds. Throws for a value that is not finite.
 */
export function formatBearing(
  radians: number,
  format: PlainOption & Readonly<{ decimals?: number }> = {},
): string {
  const decimals = format.decimals ?? 0;
  const count = secondCount(radians, decimals);
  const quarter = QUADRANT_DEGREES * 3600 * 10 ** decimals;
  const north = count <= quarter || count >= 3 * quarter;
  const east = count <= 2 * quarter;
  const angle = north ? (east ? count : 4 * quarter - count) : Math.abs(2 * quarter - count);
  const text = degreesMinutesSecondsText(angle, decimals, format.plain ?? false);
  return `${north ? 'N' : 'S'} ${text} ${east ? 'E' : 'W'}`;
}

/** The direction in whole units of 10^-`decimals` seconds, below a full turn. */
function secondCount(radians: number, decimals: number): number {
  assertFinite(radians, 'radians');
  const perDegree = 3600 * 10 ** decimals;
  return Math.round(radiansToDegrees(wrapRadians(radians)) * perDegree) % (DEGREES_PER_TURN * perDegree);
}
