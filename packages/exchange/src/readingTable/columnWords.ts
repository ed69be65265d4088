import type { LengthStyle } from '@footmark/site';
import type { TableColumn, TableColumns } from './readingTable';
import { MOST_HEADING_CHARACTERS } from './tableLimits';

/** How much of a heading the words must be. */
type Where = 'whole' | 'first' | 'any';

/**
 * The words of headings (common practice, no source), earlier rows before later ones where both match alike. A word that is
 * also small talk, as `at` or `end`, counts only as a whole heading or at its beginning.
 */
const COLUMN_WORDS: readonly Readonly<{ column: TableColumn; where: Where; words: readonly string[] }>[] = [
  {
    column: 'blocked',
    where: 'any',
    words: ['could not pass', 'cannot pass', 'cant pass', 'did not pass', 'unable to pass', 'not passed'],
  },
  { column: 'blocked', where: 'whole', words: ['blocked'] },
  { column: 'passed', where: 'any', words: ['passed', 'passable'] },
  { column: 'passed', where: 'first', words: ['pass', 'could pass'] },
  { column: 'clock', where: 'any', words: ['clock', 'oclock'] },
  { column: 'videoAt', where: 'any', words: ['video', 'recording'] },
  { column: 'videoAt', where: 'first', words: ['time', 'timecode'] },
  { column: 'to', where: 'whole', words: ['to', 'until', 'till', 'end', 'finish'] },
  {
    column: 'to',
    where: 'whole',
    words: ['distance to', 'footage to', 'counter to', 'to distance', 'to footage'],
  },
  { column: 'to', where: 'whole', words: ['end distance', 'end footage', 'end counter', 'to counter'] },
  { column: 'counter', where: 'any', words: ['counter'] },
  { column: 'counter', where: 'any', words: ['footage'] },
  { column: 'counter', where: 'any', words: ['distance', 'chainage'] },
  {
    column: 'counter',
    where: 'whole',
    words: ['reading', 'dist', 'from', 'start', 'at', 'ft', 'feet', 'foot'],
  },
  { column: 'counter', where: 'whole', words: ['m', 'meter', 'meters', 'metre', 'metres', 'cm', 'mm'] },
  { column: 'seen', where: 'any', words: ['seen', 'observation', 'observations', 'observed'] },
  { column: 'seen', where: 'any', words: ['defect', 'defects', 'finding', 'findings'] },
  { column: 'seen', where: 'first', words: ['what'] },
  { column: 'seen', where: 'whole', words: ['condition', 'problem', 'feature', 'type', 'description'] },
  { column: 'clock', where: 'first', words: ['position'] },
  { column: 'note', where: 'any', words: ['note', 'notes', 'remark', 'remarks', 'comment', 'comments'] },
];

type HeadingUnit = 'ft' | 'in' | 'm' | 'cm' | 'mm';

/** `in` is missing: it is a preposition too. */
const UNIT_WORDS: Readonly<Record<string, HeadingUnit>> = {
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  footage: 'ft',
  inch: 'in',
  inches: 'in',
  m: 'm',
  meter: 'm',
  meters: 'm',
  metre: 'm',
  metres: 'm',
  cm: 'cm',
  mm: 'mm',
};

const WORDS_OF_HEADING = 12;

/** A heading in words: lower case, without what stands in brackets, a unit at its end taken off. */
export type Heading = Readonly<{ words: readonly string[]; unit?: HeadingUnit }>;

export function headingOf(text: string): Heading {
  const plain = text.slice(0, MOST_HEADING_CHARACTERS).toLowerCase().replace(/['’]/g, '');
  const bracketed = wordsOf(/[([]([^)\]]*)/.exec(plain)?.[1] ?? '');
  const words = wordsOf(plain.replace(/[([].*$/s, ''));
  const units = [...bracketed, ...words].flatMap((word) => UNIT_WORDS[word] ?? []);
  const bare = words.length > 1 && UNIT_WORDS[words.at(-1) ?? ''] !== undefined ? words.slice(0, -1) : words;
  return {
    words: bare.length > 1 && bare.at(-1) === 'in' ? bare.slice(0, -1) : bare,
    ...(units[0] && { unit: units[0] }),
  };
}

function wordsOf(text: string): readonly string[] {
  return (text.match(/\p{L}+/gu) ?? []).slice(0, WORDS_OF_HEADING);
}

/** The unit of bare numbers under a heading; feet stay in the style of feet that was asked for. */
export function styleUnder({ unit }: Heading, asked: LengthStyle): LengthStyle {
  if (unit === undefined) return asked;
  return unit === 'ft' && (asked === 'ft-in' || asked === 'usft') ? asked : unit;
}

/** Which heading is which column. Every column once, the closest match first, then the row of the table, then the left. */
export function matchHeadings(headings: readonly Heading[]): TableColumns {
  const matches = headings.flatMap(({ words }, at) =>
    COLUMN_WORDS.flatMap((row, order) => {
      const rank = Math.min(...row.words.map((phrase) => rankOf(words, phrase.split(' '), row.where)));
      return rank < Number.POSITIVE_INFINITY ? [{ column: row.column, at, rank, order }] : [];
    }),
  );
  matches.sort((a, b) => a.rank - b.rank || a.order - b.order || a.at - b.at);
  const columns: Partial<Record<TableColumn, number>> = {};
  const taken = new Set<number>();
  for (const { column, at } of matches) {
    if (columns[column] !== undefined || taken.has(at)) continue;
    columns[column] = at;
    taken.add(at);
  }
  return columns;
}

/** 0: the whole heading, 1: its beginning, 2: within it; infinite for less than `where` asks. */
function rankOf(words: readonly string[], phrase: readonly string[], where: Where): number {
  const at = words.findIndex((_, i) => phrase.every((word, j) => words[i + j] === word));
  const rank = at < 0 ? 3 : at > 0 ? 2 : words.length === phrase.length ? 0 : 1;
  return rank <= { whole: 0, first: 1, any: 2 }[where] ? rank : Number.POSITIVE_INFINITY;
}
