import type { FileProblem, OpenFailure } from '@footmark/site';
import { filePathText } from '../filePath';
import { holdsNoNumber, megabytesText } from '../fileProblem';
import type { SaidOfFile } from '../said';

const problemNames: Record<FileProblem['code'], (detail: string) => string> = {
  'wrong-value': (detail) => `this value does not fit (${detail})`,
  'unknown-field': (detail) => `a site has no field called ${JSON.stringify(detail)} here`,
  missing: () => 'this is missing',
  'duplicate-id': (name) => `the id ${JSON.stringify(name)} is used before`,
  'unknown-point': (name) => `there is no point ${JSON.stringify(name)}`,
  'unknown-path': (name) => `there is no path ${JSON.stringify(name)}`,
  'unknown-entry': (name) => `there is no feature ${JSON.stringify(name)}`,
  'unknown-visit': (name) => `there is no visit ${JSON.stringify(name)}`,
  'unknown-reading': (name) => `there is no reading ${JSON.stringify(name)}`,
  'paired-with-itself': (name) => `reading ${JSON.stringify(name)} is paired with itself`,
  'length-to-itself': (name) => `this length begins and ends at point ${JSON.stringify(name)}`,
  'dig-out-of-order': (name) => `trench ${JSON.stringify(name)} ends before it begins`,
  'nothing-before': (name) =>
    `point ${JSON.stringify(name)} is measured from points before it, and there are too few`,
  'depends-on-itself': (name) => `point ${JSON.stringify(name)} is measured, by way of others, from itself`,
  'joins-itself': (name) => `path ${JSON.stringify(name)} joins, by way of others, itself`,
  'stretches-out-of-order': (from) =>
    `stretches begin at 0 and each further on than the one before; this is at ${from}`,
};

const NO_NUMBER_HINT =
  'NaN and Infinity are not numbers that can be measured: put the measured number there, or take the field out.';

/** Why a file could not be opened, what to do, and each place in it that is wrong with the path to it. */
export function fileProblemText(failure: OpenFailure): SaidOfFile {
  switch (failure.code) {
    case 'too-large':
      return {
        text: `The file is too large for a site: ${megabytesText(failure.characters)}, and the most is ${megabytesText(failure.most)}.`,
        cure: 'Check that it is the right file.',
        problems: [],
      };
    case 'not-json':
      return {
        text: 'The file is not JSON, so it is not a site or it was damaged on the way.',
        cure: holdsNoNumber(failure) ? NO_NUMBER_HINT : 'Get the file again from where it was written.',
        problems: notJsonPlaces(failure),
      };
    case 'not-a-site':
      return {
        text: 'The file is JSON, but it is not a site.',
        cure: 'Choose a file that was saved as a site; it says "format": "footmark-site" at its top.',
        problems: [],
      };
    case 'newer-version':
      return {
        text: `The file is of version ${failure.version}, and this program knows up to version ${failure.known}.`,
        cure: 'Open it with a newer version of the program; the file was left as it is.',
        problems: [],
      };
    case 'invalid': {
      const problems = failure.problems.map(problemText);
      const more = failure.more === 0 ? [] : [`and ${failure.more} more`];
      const count = failure.problems.length + failure.more;
      return {
        text:
          count === 1
            ? 'The file is not a sound site: one place in it is wrong.'
            : `The file is not a sound site: ${count} places in it are wrong.`,
        cure: holdsNoNumber(failure)
          ? NO_NUMBER_HINT
          : 'Put these places right in the file, or get it again from where it was written.',
        problems: [...problems, ...more],
      };
    }
  }
}

function problemText({ code, path, detail }: FileProblem): string {
  return `${filePathText(path) || 'the whole file'}: ${problemNames[code](detail)}`;
}

function notJsonPlaces({ position, near }: Extract<OpenFailure, { code: 'not-json' }>): readonly string[] {
  if (position === null && near === '') return [];
  const where = position === null ? 'somewhere' : `character ${position + 1}`;
  return [near === '' ? where : `${where}, near ${JSON.stringify(near)}`];
}
