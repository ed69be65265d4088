import { DEGREES_PER_TURN, readDegrees } from './degrees';
import { assertFinite, decimalText } from './number-text';
import { type Parsed, parsed, refused } from './parsed';
import { plainTyped, splitSign } from './typed-text';

/** A place on the earth in degrees: latitude north positive, longitude east positive. */
export type LatLon = Readonly<{ latitudeDeg: number; longitudeDeg: number }>;

const LIMIT_DEG = { latitude: 90, longitude: DEGREES_PER_TURN / 2 };

/** Eight decimals of a degree are a millimetre on the ground. */
const DECIMALS = 8;

type Axis = keyof typeof LIMIT_DEG;

/**
 * Reads a latitude and a longitude. Signed, latitude first: `40.446195, -79.948862`, with a comma, a semicolon or a blank between
 * them, decimal commas too (`40,446195; -79,948862`). With hemispheres, in either order and before or behind:
 * `40°26'46.3"N 79°56'55.9"W`, `W 79.948862, N 40.446195`, `40 26 46.3 N, 79 56 55.9 W`. Latitude −90 to 90° and longitude −180 to
 * 180°, both ends included.
 */
export function parseLatLon(text: string): Parsed<LatLon> {
  const typed = plainTyped(text).replace(/\b(north|south|east|west)\b/g, (word) => word.charAt(0));
  if (typed === '') return refused('empty');
  return /[nsew]/.test(typed) ? readWithHemispheres(typed) : readSigned(typed);
}

/** Prints a place so that `parseLatLon` reads it back to within a millimetre: `40.446195, -79.948862`. */
export function formatLatLon({ latitudeDeg, longitudeDeg }: LatLon): string {
  assertFinite(latitudeDeg, 'latitudeDeg');
  assertFinite(longitudeDeg, 'longitudeDeg');
  const degrees = (value: number) => decimalText(value, DECIMALS, true, true);
  return `${degrees(latitudeDeg)}, ${degrees(longitudeDeg)}`;
}

const LETTERS_BEHIND = /^([^nsew]+?) ?([nsew])[ ,;]*([^nsew]+?) ?([nsew])$/;
const LETTERS_BEFORE = /^([nsew]) ?([^nsew]+?)[ ,;]*([nsew]) ?([^nsew]+)$/;

function readWithHemispheres(text: string): Parsed<LatLon> {
  const behind = LETTERS_BEHIND.exec(text);
  const before = LETTERS_BEFORE.exec(text);
  const halves: readonly (readonly [string | undefined, string | undefined])[] = behind
    ? [
        [behind[1], behind[2]],
        [behind[3], behind[4]],
      ]
    : before
      ? [
          [before[2], before[1]],
          [before[4], before[3]],
        ]
      : [];
  const north = halves.find(([, letter]) => letter === 'n' || letter === 's');
  const east = halves.find(([, letter]) => letter === 'e' || letter === 'w');
  if (north === undefined || east === undefined) return refused('not-a-position', { text });
  const latitude = readHalf('latitude', north[0] ?? '', north[1] === 's' ? -1 : 1);
  if (!latitude.ok) return latitude;
  const longitude = readHalf('longitude', east[0] ?? '', east[1] === 'w' ? -1 : 1);
  return longitude.ok ? parsed({ latitudeDeg: latitude.value, longitudeDeg: longitude.value }) : longitude;
}

function readSigned(text: string): Parsed<LatLon> {
  const halves = splitPair(text);
  if (halves === null) return refused('not-a-position', { text });
  const latitude = readHalf('latitude', halves[0], null);
  if (!latitude.ok) return latitude;
  const longitude = readHalf('longitude', halves[1], null);
  return longitude.ok ? parsed({ latitudeDeg: latitude.value, longitudeDeg: longitude.value }) : longitude;
}

/** Splits at the first of these that is there just once: a semicolon, a comma with a blank, a comma, a blank. */
function splitPair(text: string): readonly [string, string] | null {
  for (const between of [/ ?; ?/, / ?, /, / ?, ?/, / /]) {
    const [first, second, ...more] = text.split(between);
    if (first && second && more.length === 0) return [first, second];
  }
  return null;
}

/** One of the two. `sign` is what its hemisphere gives; null where the number brings its own. */
function readHalf(axis: Axis, text: string, sign: 1 | -1 | null): Parsed {
  const signed = splitSign(text);
  if (!signed.ok) return signed;
  if (sign !== null && signed.value.rest !== text) return refused('sign-and-hemisphere', { text });
  const degrees = readDegrees(signed.value.rest);
  if (!degrees.ok) return degrees;
  const value = degrees.value * (sign ?? signed.value.sign);
  const limit = LIMIT_DEG[axis];
  if (Math.abs(value) > limit) return refused(`${axis}-out-of-range`, { degrees: value, limit });
  return parsed(value === 0 ? 0 : value);
}
