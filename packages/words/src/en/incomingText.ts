import type { Units } from '@footmark/site';
import { countText } from '../countText';
import type {
  IncomingFinding,
  IncomingNote,
  IncomingProblemCode,
  IncomingProblemFacts,
  IncomingQuestion,
  PlacingProblem,
} from '../incoming';
import { farTextIn, millionsText, valueText } from '../incomingFacts';
import type { Said } from '../said';
import { sureText } from './sureText';

type Values = IncomingProblemFacts['values'];

const farText = farTextIn(sureText, 'miles');

const ANOTHER_FILE = 'Choose another file, or have it written again.';
const A_PART = 'Take the part of it about the site, and bring that in.';

const problems: Record<IncomingProblemCode, (values: Values) => Said> = {
  'too-large': (values) => ({
    text: `The file is too large: ${millionsText(values, 'characters')} million characters, and the most is ${millionsText(values, 'most')}.`,
    cure: A_PART,
  }),
  'unknown-format': () => ({
    text: 'The file is none of the kinds that can be brought in.',
    cure: 'Choose a GeoJSON, KML or DXF file, or a table of points as text.',
  }),
  'not-json': () => ({
    text: 'The file is damaged or cut short: it is not JSON to its end.',
    cure: ANOTHER_FILE,
  }),
  'not-geojson': () => ({ text: 'The file is JSON, but not GeoJSON.', cure: ANOTHER_FILE }),
  'not-xml': (values) => ({
    text: `The file is damaged or cut short: its XML breaks in line ${valueText(values, 'line')}.`,
    cure: ANOTHER_FILE,
  }),
  'has-doctype': () => ({
    text: 'The file declares a document type of its own, which can make a program fetch other files. It was not read.',
    cure: 'Have it written without “DOCTYPE”; KML needs none.',
  }),
  'not-kml': () => ({ text: 'The file is XML, but not KML.', cure: ANOTHER_FILE }),
  'not-dxf': (values) => ({
    text: `The file is damaged, or not DXF: line ${valueText(values, 'line')} is not what must stand there.`,
    cure: ANOTHER_FILE,
  }),
  'binary-dxf': () => ({ text: 'This DXF file is binary.', cure: 'Save it as DXF in text (ASCII).' }),
  'cut-short': () => ({ text: 'The file ends before its end: it was cut short.', cure: ANOTHER_FILE }),
  'too-deep': (values) => ({
    text: `Things in it lie inside each other more than ${valueText(values, 'most')} deep.`,
    cure: 'Have it written without groups.',
  }),
  'too-many-things': (values) => ({
    text: `There are more than ${valueText(values, 'most')} things in it.`,
    cure: A_PART,
  }),
  'too-many-points': (values) => ({
    text: `There are more than ${valueText(values, 'most')} points in it.`,
    cure: A_PART,
  }),
  'nothing-in-it': () => ({
    text: 'There is no point, line or outline in it that can be read.',
    cure: ANOTHER_FILE,
  }),
};

/** Why a file is not brought in, and what to do. */
export function incomingProblemText({ code, values }: IncomingProblemFacts): Said {
  return problems[code](values);
}

const notes: Record<IncomingNote['code'], (n: string) => string> = {
  'no-number': (n) => `${n} with a coordinate that is not a number: left out.`,
  'too-few-points': (n) => `${n} with too few points for a line or an outline: left out.`,
  'holes-left-out': (n) => `${n} holes in outlines: left out.`,
  'kinds-left-out': (n) => `${n} things that are neither point, line nor outline: left out.`,
  'texts-left-out': (n) => `${n} texts and dimensions: left out.`,
  'links-left-out': (n) => `${n} links to other files and pictures: left out.`,
  'paper-left-out': (n) => `${n} things on the file’s paper sheets: left out.`,
  'curves-as-chords': (n) => `${n} curves: taken as short straight pieces.`,
  'rows-left-out': (n) => `${n} rows without two numbers where the coordinates should be: left out.`,
};

/** What of a file is left out or made simpler. */
export function incomingNoteText({ code, count }: IncomingNote): string {
  return notes[code](countText(count));
}

const questions: Record<IncomingQuestion, string> = {
  coordinates: 'What are its coordinates: the plan’s own, a grid, or latitude and longitude?',
  unit: 'What are they counted in? The two feet are not the same in a grid.',
  order: 'Which column is which: point, northing, easting, elevation, description?',
};

/** What a file does not say. */
export function incomingQuestionText(question: IncomingQuestion): string {
  return questions[question];
}

const placing: Record<PlacingProblem, Said> = {
  'questions-open': { text: 'The file does not say where it lies.', cure: 'Answer what is asked above.' },
  'site-not-on-the-earth': {
    text: 'This site has no place on the earth yet, and the file has no other.',
    cure: 'Give a point of the site its latitude and longitude first.',
  },
  'grid-not-read': {
    text: 'The definition of the grid cannot be read.',
    cure: 'Choose the grid again.',
  },
  'not-an-order': {
    text: 'This order does not say which column is northing and which is easting.',
    cure: 'Name one column N and one E.',
  },
};

/** Why what came in has no place in this site. */
export function placingProblemText(problem: PlacingProblem): Said {
  return placing[problem];
}

/** What is to be known of where it lies. */
export function incomingFindingText(finding: IncomingFinding, units: Units): Said {
  switch (finding.code) {
    case 'too-far':
      return {
        text: `It lies ${farText(finding.metres, units)} from the site.`,
        cure: 'Check the file, the coordinate system, and the site’s own control points.',
      };
    case 'far-away':
      return {
        text: `It lies ${farText(finding.metres, units)} from the site.`,
        cure: 'Take it only if that is so.',
      };
    case 'wrong-hemisphere':
      return {
        text: `It lies in the wrong hemisphere: ${farText(finding.metres, units)} from the site. With the other sign of a latitude or longitude it would be near.`,
        cure: 'West and south are negative: have the file written again with the right signs.',
      };
    case 'order-swapped':
      return {
        text: `${finding.metres === null ? 'It lies nowhere on the earth' : `It lies ${farText(finding.metres, units)} from the site`}. With its two coordinates the other way round it would be near.`,
        cure: 'Choose the other order.',
      };
    case 'unit-suspected':
      return {
        text: `It lies ${farText(finding.metres, units)} from the site. With feet for metres, or metres for feet, it would be near.`,
        cure: 'Choose the other unit.',
      };
    case 'larger-than-a-yard':
      return {
        text: `It is ${farText(finding.metres, units)} across, which is no yard.`,
        cure: 'Check the unit, and take only the part about the site.',
      };
    case 'smaller-than-a-yard':
      return {
        text: `All of it lies within ${sureText(finding.metres, units)}.`,
        cure: 'Check the unit.',
      };
    case 'no-place':
      return {
        text: `${countText(finding.count)} of its things have no place on the map.`,
        cure: 'Check the coordinate system and the order of the coordinates.',
      };
    case 'too-many-for-a-site':
      return {
        text: `These are ${countText(finding.count)} things, and the site has room for ${countText(finding.room)}.`,
        cure: 'Leave some groups out.',
      };
    case 'too-many-corners':
      return {
        text: `${countText(finding.count)} of its lines have more than ${countText(finding.most)} corners: left out.`,
        cure: 'Have them written with fewer.',
      };
  }
}
