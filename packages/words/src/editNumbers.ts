import {
  type EditProblem,
  formatDiameter,
  formatSlope,
  type SigmaName,
  sigmas,
  type Units,
} from '@footmark/site';
import { countText } from './countText';
import { angleText, lengthText } from './measureText';

type Measured = 'length' | 'diameter' | 'slope' | 'angle' | 'degrees' | 'number';

/** How a number of a site is told, by its property. */
const measured = {
  x: 'length',
  y: 'length',
  distance: 'length',
  along: 'length',
  out: 'length',
  fraction: 'number',
  value: 'number',
  footingDepth: 'length',
  baseDiameter: 'diameter',
  bottomWidth: 'length',
  shieldHeight: 'length',
  radius: 'length',
  sweep: 'angle',
  chord: 'angle',
  azimuth: 'angle',
  upAzimuth: 'angle',
  reading: 'angle',
  turn: 'angle',
  declination: 'angle',
  latitudeDeg: 'degrees',
  longitudeDeg: 'degrees',
  accuracy: 'length',
  metresPerPixel: 'number',
  widthPx: 'number',
  heightPx: 'number',
  opacity: 'number',
  length: 'length',
  sigma: 'length',
  entryReach: 'length',
  bendRadius: 'length',
  drop: 'length',
  bend: 'angle',
  from: 'length',
  slope: 'slope',
  riser: 'length',
  sweepRadius: 'length',
  counter: 'length',
  to: 'length',
  counted: 'length',
  actual: 'length',
  water: 'number',
  videoAt: 'number',
  newZero: 'length',
  number: 'number',
  scale: 'number',
  factor: 'number',
  resolution: 'length',
  right: 'length',
  flow: 'angle',
  diameter: 'diameter',
  trunkDiameter: 'diameter',
  stemDiameters: 'diameter',
  crownSpread: 'length',
  height: 'length',
  depth: 'length',
  riserDepth: 'length',
  invert: 'length',
  rimLevel: 'length',
  floorLevel: 'length',
  level: 'length',
} as const satisfies Readonly<Record<string, Measured>>;

export type EditNumber = keyof typeof measured;

/** Lengths (m) from here on are told in kilometres or miles: they bound a map, not a tape. */
const FAR_M = 10_000;

const MILE_M = 1609.344;

/** The words that limits need. */
type LimitWords = { readonly zero: string; readonly miles: string };

/** The property that a problem is about: the last name on the way to it. */
export function propertyOf({ path }: EditProblem): string {
  return path.findLast((key) => typeof key === 'string') ?? '';
}

export function isEditNumber(property: string): property is EditNumber {
  return Object.hasOwn(measured, property);
}

/** The standard deviation of the site's own that a problem is about, which has its name from the table of them. */
export function sigmaOf({ path }: EditProblem): SigmaName | null {
  const [list, name] = path;
  return list === 'sigmas' && isSigmaName(name) ? name : null;
}

function isSigmaName(key: unknown): key is SigmaName {
  return typeof key === 'string' && Object.hasOwn(sigmas, key);
}

/** The limit that an edit would have passed, in the units of the site. */
export function limitText(
  problem: Extract<EditProblem, { limit: number; inclusive: boolean }>,
  units: Units,
  words: LimitWords,
): string {
  const { limit } = problem;
  if (limit === 0) return words.zero;
  switch (measuredOf(problem)) {
    case 'length':
      return Math.abs(limit) < FAR_M ? lengthText(limit, units) : farText(limit, units, words);
    case 'diameter':
      return formatDiameter(limit, units.diameter);
    case 'slope':
      return formatSlope(limit, 'percent');
    case 'angle':
      return `${limit < 0 ? '−' : ''}${angleText(limit)}`;
    case 'degrees':
      return `${countText(limit)}°`;
    case 'number':
      return countText(limit);
  }
}

function measuredOf(problem: EditProblem): Measured {
  const sigma = sigmaOf(problem);
  if (sigma === null) {
    const property = propertyOf(problem);
    return isEditNumber(property) ? measured[property] : 'number';
  }
  const { unit } = sigmas[sigma];
  return unit === 'm' ? 'length' : unit === 'rad' ? 'angle' : 'number';
}

function farText(metres: number, units: Units, words: LimitWords): string {
  return units.length === 'm'
    ? `${countText(Math.round(metres / 1000))} km`
    : `${countText(Math.floor(metres / MILE_M))} ${words.miles}`;
}
