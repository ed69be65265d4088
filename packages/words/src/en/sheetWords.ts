import { formatLength, type Units } from '@footmark/site';
import { lengthText } from '../measureText';
import type { SheetWords } from '../sheetWords';
import { ownerWords } from './ownerWords';
import { sheetColumns, sheetFacts, sheetHeadings, sheetLegends, sheetTitles } from './sheetNames';

const unitNames: Record<Units['length'], string> = {
  'ft-in': 'feet and inches',
  ft: 'feet',
  m: 'metres',
};

/** Standard bends turn by angles with up to two decimals: 22.5°, 11.25°. */
function bendAngleText(turn: number): string {
  return `${Number(((Math.abs(turn) * 180) / Math.PI).toFixed(2))}°`;
}

/** What the sheet on paper says. */
export const sheetWords: SheetWords = {
  ...ownerWords,
  title: (kind) => sheetTitles[kind],
  heading: (heading) => sheetHeadings[heading],
  continued: (heading) => `${heading}, continued`,
  column: (column) => sheetColumns[column],
  legend: (entry) => sheetLegends[entry],

  fact: (fact) => sheetFacts[fact],
  unnamed: () => 'Site without a name',
  sheetOf: (number, of) => `${number} of ${of}`,
  unitsText: ({ length }) => unitNames[length],
  scaleText: (denominator, feetToAnInch) =>
    feetToAnInch === null ? `1:${denominator}` : `1 in = ${feetToAnInch} ft`,
  noScale: () => '–',
  printActualSize: () => 'Print at actual size.',
  northText: (known) => (known ? 'True north.' : 'North is assumed.'),
  detailName: (letter) => `Detail ${letter}`,
  detailText: (letter, scale) => `Detail ${letter}, ${scale}`,
  matchText: (sheet) => `Match line, see sheet ${sheet}`,

  sideName: (side) => side,
  tieNote: () =>
    'Tapes: hook each on its point, pull level, and paint where they meet. The side is that of the mark, looking from the point of tape 1 to that of tape 2; the cut is the angle at which they meet. The check tape must read as listed.',
  holeNote: () => 'The hole is what finds the pipe 95 of 100 times.',
  depthNote: (evenGround) =>
    evenGround
      ? 'Depths are estimates until the pipe is exposed; without levels of the ground it is taken as even.'
      : 'Depths are estimates until the pipe is exposed.',
  stillStandsNote: () => 'Tapes begin at things that are there to stay: look whether they still stand.',
  wasteNote: () => 'Pipe is measured along the drain through its bends. Add for cuts and waste.',
  depthUnknown: () => 'not known',
  noPlace: () => 'no place on the plan',
  noTies: () => 'no two points to tape from',
  underBuilding: (name) => `under ${name}`,
  paintBeside: (distance, units) => `Painted ${lengthText(distance, units)} beside its place, see plan`,
  invertText: (level, { length }) =>
    `invert ${formatLength(level, length === 'm' ? 'm' : 'ft', { decimals: 2 })}`,
  exaggerationText: (factor) =>
    factor === 1 ? 'Heights drawn as lengths.' : `Heights drawn ${factor} times as large as lengths.`,
  pipeItem: (material, diameter) => `Pipe, ${diameter} ${material.toLowerCase()}`,
  bendItem: (name, turn) =>
    name === null ? `Bend, ${bendAngleText(turn)}, no standard one` : `${name} bend, ${bendAngleText(turn)}`,
  cleanoutItem: () => 'Cleanout, with what brings it up to the ground',
  ticketText: (ticket) => `One-call ticket ${ticket}`,
  nothingFound: () =>
    'Nothing was found that has to be settled first. That is no promise that nothing is there.',
  moreNear: (count) =>
    count === 1
      ? 'One more that comes nearer than asked is left out here. The plan in the app lists it.'
      : `${count} more that come nearer than asked are left out here. The plan in the app lists them.`,
  fewerNotes: (count) =>
    count === 1
      ? 'One note that presses nobody is left out here.'
      : `${count} notes that press nobody are left out here.`,
};
