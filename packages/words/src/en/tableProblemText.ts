import { quotedCell } from '../quotedCell';
import type { TableProblemCode, TableProblemFacts } from '../tableProblem';
import { parseProblemText } from './parseProblemText';

const sentences: Record<TableProblemCode, (there: string, because: string) => string> = {
  'text-too-long': () => 'This is too much text for readings. Paste a part of it.',
  'no-rows': () => 'There are no rows in it. Copy the cells of the table, and paste them here.',
  'no-counter-column': () =>
    'No column holds what the counter showed. Put a row of headings above it, with “Counter” over that column.',
  'two-counter-columns': () =>
    'Two columns could be the counter. Put a row of headings above them, with “Counter” over the one that is meant.',
  'too-many-rows': () => 'A run holds no more readings: this row and those below it are left out.',
  'above-header': (there) => `Stands above the headings: ${there}.`,
  'total-row': (there) => `A total, no reading: ${there}.`,
  'counter-missing': (there) => `No counter beside ${there}. Type what the counter showed.`,
  'not-a-length': (there, because) => because || `${there} is not a length that can be read.`,
  'counter-too-large': (there) => `${there} is more than a counter can show.`,
  'number-cut-by-comma': (there) =>
    `A comma cuts the number at ${there}. Write numbers with a point, or copy the cells themselves.`,
  'too-many-cells': (there) => `More cells than headings, so it is not clear which is which: ${there}.`,
  'cell-too-long': (there) => `A cell is too long: ${there}.`,
  'to-before-from': (there) =>
    `It goes on to ${there}, which is before it begins. Only its beginning is taken.`,
  'unknown-thing-seen': (there) => `${there} is none of the things that a reading can have seen.`,
  'seen-missing': () => 'It does not say what was seen.',
  'clock-not-read': (there, because) =>
    `${because || `${there} is not on a clock face.`} It goes into the note.`,
  'passed-not-read': (there) => `${there} says neither that the camera passed nor that it could not.`,
  'video-time-not-read': (there) => `${there} is not a time in a video; type it like 12:34.`,
};

/** Why pasted readings, a row or a cell of them cannot be taken over, and what to do about it. */
export function tableProblemText({ code, text, because }: TableProblemFacts): string {
  return sentences[code](quotedCell(text), because === undefined ? '' : parseProblemText(because));
}
