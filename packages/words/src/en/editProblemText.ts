import {
  type EditProblem,
  formatDiameter,
  formatSlope,
  type SigmaName,
  sigmas,
  type Units,
} from '@footmark/site';
import { angleText, lengthText } from '../measureText';
import { fieldNames } from './fieldNames';
import { sigmaNames } from './sigmaNames';

type Measured = 'length' | 'diameter' | 'slope' | 'angle' | 'degrees' | 'number';

type NumberName = { readonly name: string; readonly as: Measured };

/** What a number of a site is called in a sentence, by its property, and how it is told. */
const numbers: Readonly<Record<string, NumberName>> = {
  x: { name: 'the distance from the origin', as: 'length' },
  y: { name: 'the distance from the origin', as: 'length' },
  distance: { name: 'the distance', as: 'length' },
  along: { name: 'the distance along the line', as: 'length' },
  out: { name: 'the offset from the line', as: 'length' },
  fraction: { name: 'the share of the way', as: 'number' },
  value: { name: 'the value of a rule', as: 'number' },
  footingDepth: { name: 'the depth of a footing', as: 'length' },
  baseDiameter: { name: 'a diameter', as: 'diameter' },
  bottomWidth: { name: 'the bottom width', as: 'length' },
  shieldHeight: { name: 'the height of a shield', as: 'length' },
  radius: { name: 'the radius', as: 'length' },
  sweep: { name: 'the angle of the curve', as: 'angle' },
  chord: { name: 'the direction of the chord', as: 'angle' },
  azimuth: { name: 'the direction', as: 'angle' },
  upAzimuth: { name: 'the direction', as: 'angle' },
  reading: { name: 'the compass reading', as: 'angle' },
  turn: { name: 'the turn', as: 'angle' },
  declination: { name: 'the declination', as: 'angle' },
  latitudeDeg: { name: 'the latitude', as: 'degrees' },
  longitudeDeg: { name: 'the longitude', as: 'degrees' },
  accuracy: { name: 'the accuracy', as: 'length' },
  metresPerPixel: { name: 'the scale of the picture, in metres a pixel,', as: 'number' },
  widthPx: { name: 'the width of the picture, in pixels,', as: 'number' },
  heightPx: { name: 'the height of the picture, in pixels,', as: 'number' },
  opacity: { name: 'the opacity', as: 'number' },
  length: { name: 'the length', as: 'length' },
  sigma: { name: 'the give or take', as: 'length' },
  entryReach: { name: 'how far an entry may be from its pipe', as: 'length' },
  bendRadius: { name: 'the bend radius', as: 'length' },
  drop: { name: 'the drop', as: 'length' },
  bend: { name: 'the turn of the fitting', as: 'angle' },
  from: { name: 'where the stretch begins', as: 'length' },
  slope: { name: 'the slope', as: 'slope' },
  riser: { name: 'the depth of the riser', as: 'length' },
  sweepRadius: { name: 'the radius of the sweep', as: 'length' },
  counter: { name: 'the counter', as: 'length' },
  to: { name: 'the counter at the far end', as: 'length' },
  counted: { name: 'the counted length', as: 'length' },
  actual: { name: 'the true length', as: 'length' },
  water: { name: 'the share of the pipe that is under water', as: 'number' },
  videoAt: { name: 'the time in the recording, in seconds,', as: 'number' },
  newZero: { name: 'what the counter was set to', as: 'length' },
  number: { name: 'the number of a reading', as: 'number' },
  scale: { name: 'the true length per counted length', as: 'number' },
  factor: { name: 'the true length per counted length', as: 'number' },
  resolution: { name: 'the smallest step of the counter', as: 'length' },
  right: { name: 'the distance to the right', as: 'length' },
  flow: { name: 'the direction of flow', as: 'angle' },
  // of things in the yard
  diameter: { name: 'the diameter', as: 'diameter' },
  trunkDiameter: { name: 'the trunk diameter', as: 'diameter' },
  stemDiameters: { name: 'the diameter of a stem', as: 'diameter' },
  crownSpread: { name: 'the crown spread', as: 'length' },
  height: { name: 'the height', as: 'length' },
  depth: { name: 'the depth', as: 'length' },
  riserDepth: { name: 'the riser depth', as: 'length' },
  invert: { name: 'the invert level', as: 'length' },
  rimLevel: { name: 'the rim level', as: 'length' },
  floorLevel: { name: 'the floor level', as: 'length' },
  level: { name: 'the level', as: 'length' },
};

/** What a site has several of, by the property that lists them. */
const lists: Readonly<Record<string, string>> = {
  features: 'things in the yard',
  paths: 'pipes',
  runs: 'runs',
  visits: 'visits',
  underlays: 'pictures',
  control: 'control points',
  vertices: 'points in one line or outline',
  stretches: 'stretches of one pipe',
  readings: 'readings in one run',
  branches: 'branches in one run',
  tapes: 'tapes to one point',
  pairs: 'pairs',
  different: 'readings told apart',
  knownLengths: 'known lengths of one pipe',
  setAside: 'observations set aside',
  asFound: 'records of what was found',
  photos: 'photos of one find',
  ties: 'tapes to one point',
  digs: 'planned digs',
  notes: 'notes',
  changed: 'changed rules',
  counters: 'corrected readings',
  evidence: 'observations of a fit',
  drawn: 'points in one line or outline',
  fitted: 'points in one line or outline',
  added: 'points in one line or outline',
  stemDiameters: 'stems',
};

const texts: Readonly<Record<string, string>> = {
  name: 'a name',
  address: 'the address',
  note: 'a note',
  letter: 'the letter of a run',
  by: 'the name of who found it',
  label: 'what is painted',
  ticket: 'the ticket number',
  text: 'a note',
  who: 'the name of who changed a rule',
  why: 'the reason for a rule’s value',
  observation: 'the name of an observation',
  setAside: 'the name of an observation',
};

/** Lengths (m) from here on are told in kilometres or miles: they bound a map, not a tape. */
const FAR_M = 10_000;

const MILE_M = 1609.344;

/** Why an edit was not made, with the limit that it would have passed, in the units of the site. */
export function editProblemText(problem: EditProblem, units: Units): string {
  return `Not done: ${reason(problem, units)}`;
}

function reason(problem: EditProblem, units: Units): string {
  switch (problem.code) {
    case 'too-great': {
      const { name, limit } = told(problem, units);
      return `${name} ${problem.inclusive ? 'can be at most' : 'must be less than'} ${limit}.`;
    }
    case 'too-small': {
      const { name, limit } = told(problem, units);
      return `${name} must be ${problem.inclusive ? 'at least' : 'more than'} ${limit}.`;
    }
    case 'too-many':
      return `there can be at most ${count(problem.limit)} ${lists[field(problem)] ?? 'of these'}.`;
    case 'too-few':
      return `there must be at least ${count(problem.limit)} ${lists[field(problem)] ?? 'of these'}.`;
    case 'too-long':
      return `${nameOfText(field(problem))} can be at most ${count(problem.limit)} characters long.`;
    case 'wrong-value':
      return `${nameOf(field(problem))} is not a value that a site can hold.`;
    case 'depends-on-itself':
      return 'a point would then be measured, by way of others, from itself. Measure it from another point.';
    case 'joins-itself':
      return 'a pipe would then join, by way of others, itself. End it at another pipe.';
    case 'stretches-out-of-order':
      return 'the stretches of a pipe begin at 0 and each further on than the one before.';
    case 'nothing-before':
      return 'a point would then be measured from points before it that are not there.';
    case 'unknown-point':
    case 'unknown-path':
    case 'unknown-entry':
      return `something would then name ${problem.name}, which is not there.`;
    case 'unknown-visit':
      return `a run would then belong to the visit ${problem.name}, which is not there.`;
    case 'unknown-reading':
      return 'something would then name a reading that is not there.';
    case 'paired-with-itself':
      return 'a reading would then be paired with itself. Choose a reading of another run.';
    case 'length-to-itself':
      return 'a length of pipe would then begin and end at one point. Choose two.';
    case 'dig-out-of-order':
      return 'a trench begins before it ends.';
    case 'duplicate-id':
      return `two things would then have the id ${problem.name}.`;
  }
}

/** The property that a problem is about: the last name on the way to it. */
function field({ path }: EditProblem): string {
  return path.findLast((key) => typeof key === 'string') ?? '';
}

function nameOf(property: string): string {
  return numbers[property]?.name ?? nameOfText(property);
}

function nameOfText(property: string): string {
  if (texts[property] !== undefined) return texts[property];
  const named = Object.entries(fieldNames).find(([name]) => name === property)?.[1];
  return named === undefined ? 'this' : `“${named}”`;
}

function told(
  problem: Extract<EditProblem, { limit: number; inclusive: boolean }>,
  units: Units,
): { readonly name: string; readonly limit: string } {
  const { name, as } = sigmaOf(problem) ?? numbers[field(problem)] ?? { name: 'this', as: 'number' };
  return { name, limit: limitText(problem.limit, as, units) };
}

/** A standard deviation of the site's own, which has its name from the table of them. */
function sigmaOf({ path }: EditProblem): NumberName | undefined {
  const [list, name] = path;
  if (list !== 'sigmas' || !isSigmaName(name)) return undefined;
  const { unit } = sigmas[name];
  const as = unit === 'm' ? 'length' : unit === 'rad' ? 'angle' : 'number';
  return { name: `the give or take of “${sigmaNames[name]}”`, as };
}

function isSigmaName(key: unknown): key is SigmaName {
  return typeof key === 'string' && Object.hasOwn(sigmas, key);
}

function limitText(limit: number, as: Measured, units: Units): string {
  if (limit === 0) return 'zero';
  switch (as) {
    case 'length':
      return Math.abs(limit) < FAR_M ? lengthText(limit, units) : farText(limit, units);
    case 'diameter':
      return formatDiameter(limit, units.diameter);
    case 'slope':
      return formatSlope(limit, 'percent');
    case 'angle':
      return `${limit < 0 ? '−' : ''}${angleText(limit)}`;
    case 'degrees':
      return `${count(limit)}°`;
    case 'number':
      return count(limit);
  }
}

function farText(metres: number, units: Units): string {
  return units.length === 'm'
    ? `${count(Math.round(metres / 1000))} km`
    : `${count(Math.floor(metres / MILE_M))} miles`;
}

function count(amount: number): string {
  return amount.toLocaleString('en-US').replace('-', '−');
}
