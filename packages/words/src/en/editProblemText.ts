import type { EditProblem, Units } from '@footmark/site';
import { countText } from '../countText';
import {
  type EditList,
  type EditNames,
  type EditText,
  listName,
  numberName,
  textName,
  valueName,
} from '../editNames';
import { type EditNumber, limitText } from '../editNumbers';
import { fieldNames } from './fieldNames';
import { sigmaNames } from './sigmaNames';

/** What a number of a site is called in a sentence, by its property. */
const numberNames: Record<EditNumber, string> = {
  x: 'the distance from the origin',
  y: 'the distance from the origin',
  distance: 'the distance',
  along: 'the distance along the line',
  out: 'the offset from the line',
  fraction: 'the share of the way',
  value: 'the value of a rule',
  footingDepth: 'the depth of a footing',
  baseDiameter: 'a diameter',
  bottomWidth: 'the bottom width',
  shieldHeight: 'the height of a shield',
  radius: 'the radius',
  sweep: 'the angle of the curve',
  chord: 'the direction of the chord',
  azimuth: 'the direction',
  upAzimuth: 'the direction',
  reading: 'the compass reading',
  turn: 'the turn',
  declination: 'the declination',
  latitudeDeg: 'the latitude',
  longitudeDeg: 'the longitude',
  accuracy: 'the accuracy',
  metresPerPixel: 'the scale of the picture, in metres a pixel,',
  widthPx: 'the width of the picture, in pixels,',
  heightPx: 'the height of the picture, in pixels,',
  opacity: 'the opacity',
  length: 'the length',
  sigma: 'the give or take',
  entryReach: 'how far an entry may be from its pipe',
  bendRadius: 'the bend radius',
  drop: 'the drop',
  bend: 'the turn of the fitting',
  from: 'where the stretch begins',
  slope: 'the slope',
  riser: 'the depth of the riser',
  sweepRadius: 'the radius of the sweep',
  counter: 'the counter',
  to: 'the counter at the far end',
  counted: 'the counted length',
  actual: 'the true length',
  water: 'the share of the pipe that is under water',
  videoAt: 'the time in the recording, in seconds,',
  newZero: 'what the counter was set to',
  number: 'the number of a reading',
  scale: 'the true length per counted length',
  factor: 'the true length per counted length',
  resolution: 'the smallest step of the counter',
  right: 'the distance to the right',
  flow: 'the direction of flow',
  // of things in the yard
  diameter: 'the diameter',
  trunkDiameter: 'the trunk diameter',
  stemDiameters: 'the diameter of a stem',
  crownSpread: 'the crown spread',
  height: 'the height',
  depth: 'the depth',
  riserDepth: 'the riser depth',
  invert: 'the invert level',
  rimLevel: 'the rim level',
  floorLevel: 'the floor level',
  level: 'the level',
};

/** What a site has several of, by the property that lists them. */
const lists: Readonly<Record<EditList, string>> = {
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

const texts: Readonly<Record<EditText, string>> = {
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

const names: EditNames = {
  numbers: numberNames,
  texts,
  lists,
  fields: fieldNames,
  sigma: (name) => `the give or take of “${sigmaNames[name]}”`,
  other: 'this',
  others: 'of these',
};

const limitWords = { zero: 'zero', miles: 'miles' } as const;

/** Why an edit was not made, with the limit that it would have passed, in the units of the site. */
export function editProblemText(problem: EditProblem, units: Units): string {
  return `Not done: ${reason(problem, units)}`;
}

function reason(problem: EditProblem, units: Units): string {
  switch (problem.code) {
    case 'too-great': {
      const limit = limitText(problem, units, limitWords);
      return `${numberName(problem, names)} ${problem.inclusive ? 'can be at most' : 'must be less than'} ${limit}.`;
    }
    case 'too-small': {
      const limit = limitText(problem, units, limitWords);
      return `${numberName(problem, names)} must be ${problem.inclusive ? 'at least' : 'more than'} ${limit}.`;
    }
    case 'too-many':
      return `there can be at most ${countText(problem.limit)} ${listName(problem, names)}.`;
    case 'too-few':
      return `there must be at least ${countText(problem.limit)} ${listName(problem, names)}.`;
    case 'too-long':
      return `${textName(problem, names)} can be at most ${countText(problem.limit)} characters long.`;
    case 'wrong-value':
      return `${valueName(problem, names)} is not a value that a site can hold.`;
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
      return 'a trench would then end before it begins.';
    case 'duplicate-id':
      return `two things would then have the id ${problem.name}.`;
  }
}
