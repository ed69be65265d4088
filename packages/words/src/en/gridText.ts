import type { GridFactors, GridNote, GridSystem, GridUnit } from '@footmark/grid';
import type { DefinitionProblem } from '@footmark/site';
import { convergenceFacts, datumNames, factorText, groundFacts, metresText } from '../gridFacts';
import type { Said, WayRow } from '../said';

/** What grid coordinates are counted in, with which foot it is. */
export function gridUnitText({ name, metres }: GridUnit): string {
  switch (name) {
    case 'm':
      return 'metres';
    case 'ft':
      return 'international feet (0.3048 m)';
    case 'us-ft':
      return 'US survey feet (1200/3937 m)';
    case 'other':
      return `units of ${metresText(metres)}`;
  }
}

/** A system with its zone, datum, unit and code. */
export function gridSystemText({ kind, name, datum, unit, epsg }: GridSystem): string {
  const family = { 'state-plane': 'State Plane ', utm: 'UTM zone ', typed: '' }[kind];
  return [
    `${family}${name}`,
    ...(datum === null ? [] : [datumNames[datum]]),
    gridUnitText(unit),
    ...(epsg === null ? [] : [`EPSG ${epsg}`]),
  ].join(', ');
}

/** The factors of a grid at a place, row by row. */
export function gridFactorRows(factors: GridFactors): readonly WayRow[] {
  const factor = (value: number | null) =>
    value === null ? 'not known without a height' : factorText(value);
  return [
    { name: 'Convergence', text: convergenceText(factors.convergence) },
    { name: 'Grid scale factor', text: factor(factors.pointScale) },
    { name: 'Elevation factor', text: factor(factors.elevationFactor) },
    { name: 'Combined factor', text: factor(factors.combined) },
  ];
}

function convergenceText(convergence: number): string {
  const { text, side } = convergenceFacts(convergence);
  return `${text}, grid north ${side === null ? 'is' : `lies ${side} of`} true north`;
}

/** What must be known beside coordinates in a grid. */
export function gridNoteText(note: GridNote): string {
  switch (note.code) {
    case 'datum-as-wgs84':
      return 'GPS positions (WGS 84) and the grid’s datum are taken as one. In North America they are 1 to 2 m (3 to 7 ft) apart: say which datum a position is in, and check at a known point.';
    case 'datum-shifted':
      return 'The way from WGS 84 to the grid’s datum is the one in the definition: good to some metres only.';
    case 'outside-area':
      return 'The site lies outside the area that this zone is for.';
    case 'not-conformal':
      return 'This projection stretches lengths differently in different directions: take no distances from its coordinates.';
    case 'north-not-known':
      return 'North is not measured on this site: its coordinates are turned by as much as its north is wrong.';
    case 'height-not-given':
      return 'Without the height of the ground there is no elevation factor.';
    case 'ground-is-not-grid': {
      const { percent, inHundred, gridIs } = groundFacts(note.partsPerMillion);
      return `A distance in the grid is ${percent} ${gridIs} than on the ground, ${inHundred} in every 100. Tape the distances on the sheet, not those between grid coordinates.`;
    }
  }
}

const definitionTexts: Record<DefinitionProblem, Said> = {
  'definition-too-long': {
    text: 'This is too long for the definition of a coordinate system.',
    cure: 'Paste the PROJ string or the WKT of one system alone.',
  },
  'not-a-definition': {
    text: 'This is not a definition that can be read.',
    cure: 'Paste a PROJ string that begins with “+proj=”, or WKT; a code alone does not say enough.',
  },
  'not-projected': {
    text: 'This system has degrees, not eastings and northings.',
    cure: 'Latitude and longitude are given anyway; paste the definition of a projected system.',
  },
  'needs-shift-grid': {
    text: 'The datum of this system is reached through a file of shifts that is not here.',
    cure: 'Paste a definition with “+towgs84=”, or use a zone of NAD 83 or WGS 84.',
  },
  'datum-not-given': {
    text: 'This definition has an old ellipsoid and does not say how it lies to WGS 84: positions could be hundreds of feet off.',
    cure: 'Add “+towgs84=” with the values for your area, or use a zone of NAD 83 or WGS 84.',
  },
};

/** Why a typed definition cannot be used. */
export function definitionProblemText(problem: DefinitionProblem): Said {
  return definitionTexts[problem];
}
