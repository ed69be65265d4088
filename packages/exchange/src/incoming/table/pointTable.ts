import type { GridUnit } from '@footmark/grid';
import { gridUnits } from '@footmark/grid';
import type { IncomingOrder } from '../incoming';

/** What a column's heading says of it. */
type Heading = {
  readonly letter: 'P' | 'N' | 'E' | 'Z' | 'D' | '-';
  readonly unit: GridUnit | null;
  readonly earth: boolean;
};

/** Words of headings, without their unit; lower case. Not x and y: which of the two is north differs from country to country, so that they are asked. */
const WORDS: Readonly<Record<string, Heading['letter']>> = {
  p: 'P',
  point: 'P',
  pt: 'P',
  number: 'P',
  no: 'P',
  id: 'P',
  name: 'P',
  mark: 'P',
  n: 'N',
  north: 'N',
  northing: 'N',
  lat: 'N',
  latitude: 'N',
  e: 'E',
  east: 'E',
  easting: 'E',
  lon: 'E',
  lng: 'E',
  long: 'E',
  longitude: 'E',
  z: 'Z',
  elev: 'Z',
  elevation: 'Z',
  height: 'Z',
  level: 'Z',
  d: 'D',
  desc: 'D',
  description: 'D',
  code: 'D',
  note: 'D',
};

const DEGREES = new Set(['lat', 'latitude', 'lon', 'lng', 'long', 'longitude']);

/** Bare `ft` does not say which foot: it is the international one in a table of ours, and in a file of others a question. */
const UNITS: Readonly<Record<string, GridUnit>> = {
  m: gridUnits.m,
  metre: gridUnits.m,
  metres: gridUnits.m,
  meter: gridUnits.m,
  meters: gridUnits.m,
  us_ft: gridUnits['us-ft'],
  usft: gridUnits['us-ft'],
  ftus: gridUnits['us-ft'],
};

/** What the first row says, when it is one of headings. */
export type TableHeading = {
  readonly order: IncomingOrder;
  readonly unit: GridUnit | null;
  readonly earth: boolean;
};

/**
 * The order that a row of headings gives: one heading each for northing and easting, or for latitude and longitude; null where the row is
 * none, or has two of one. Of columns that mean nothing here the letter is `-`.
 */
export function tableHeading(cells: readonly string[]): TableHeading | null {
  const headings = cells.map(headingOf);
  const order = headings.map(({ letter }) => letter).join('');
  const one = (letter: string) => order.split(letter).length === 2;
  if (!one('N') || !one('E')) return null;
  const plane = headings.filter(({ letter }) => letter === 'N' || letter === 'E');
  const [first] = plane;
  const same = plane.every(({ unit }) => unit === first?.unit);
  return { order, unit: same ? (first?.unit ?? null) : null, earth: plane.every(({ earth }) => earth) };
}

function headingOf(cell: string): Heading {
  const [word = '', ...rest] = cell
    .toLowerCase()
    .replace(/[()[\]]/g, ' ')
    .trim()
    .split(/[\s_]+/);
  const letter = Object.hasOwn(WORDS, word) ? (WORDS[word] ?? '-') : '-';
  const unit = rest.join('_');
  return {
    letter,
    unit: Object.hasOwn(UNITS, unit) ? (UNITS[unit] ?? null) : null,
    earth: DEGREES.has(word),
  };
}

/** The order that a comment gives by its letters, such as `# P,N,E,Z,D`; null where it has none. */
export function orderInComment(comment: string): IncomingOrder | null {
  const letters = /^#\s*((?:[PNEZD]\s*,\s*)+[PNEZD])\b/.exec(comment)?.[1]?.replace(/[^PNEZD]/g, '');
  return letters !== undefined && isTableOrder(letters) ? letters : null;
}

/** Whether letters say where northing and easting are, each letter at most once. */
export function isTableOrder(order: IncomingOrder): boolean {
  const letters = order.replaceAll('-', '');
  return (
    /^[PNEZD]+$/.test(letters) &&
    new Set(letters).size === letters.length &&
    letters.includes('N') &&
    letters.includes('E')
  );
}
