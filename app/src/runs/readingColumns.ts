import {
  lengthInputText,
  type Parsed,
  parseClockRange,
  parseLength,
  type Reading,
  type ReadingFacts,
  severityIds,
} from '@footmark/site';
import type { Option } from '../controls/Choice';
import { words } from '../words';
import { clockInputText, clockOf } from './readingFacts';
import { seenOptions } from './seenOptions';

export type ColumnId = 'counter' | 'to' | 'seen' | 'clock' | 'severity' | 'passed' | 'note';

/** A typed text as facts of a reading, or in words why it is none. */
export type CellRead =
  | { readonly ok: true; readonly change: ReadingFacts }
  | { readonly ok: false; readonly problem: string };

export type Column = {
  readonly id: ColumnId;
  readonly name: string;
  /** The cell's text as one edits it: typed, or the id of an option. */
  readonly text: (reading: Reading, unit: 'ft' | 'm') => string;
  /** How the cell shows it; absent: as it is edited. */
  readonly shown?: (reading: Reading, unit: 'ft' | 'm') => string;
  readonly read: (text: string, unit: 'ft' | 'm') => CellRead;
  /** What it is chosen from; absent: it is typed. */
  readonly options?: readonly Option<string>[];
  readonly isNumber?: true;
  /** Shown only in a table that has room for all columns. */
  readonly whenRoomy?: true;
};

const severities: readonly Option<NonNullable<Reading['severity']> | ''>[] = [
  { id: '', name: 'Not said' },
  ...severityIds.map((id) => ({ id, name: words.severityName(id) })),
];
const passing = [
  { id: 'yes', name: 'yes' },
  { id: 'no', name: 'no' },
] as const;

/** The columns of the table of readings, in their order; what is in none of them stands in the reading's own form. */
export const readingColumns: readonly Column[] = [
  {
    id: 'counter',
    name: 'Counter',
    isNumber: true,
    text: (r, unit) => bareLength(r.counter, unit),
    read: (text, unit) =>
      text.trim() === ''
        ? { ok: false, problem: 'Type what the counter shows.' }
        : cellOf(parseLength(text, unit), (counter) => ({ counter })),
  },
  {
    id: 'to',
    name: 'Goes on to',
    isNumber: true,
    whenRoomy: true,
    text: (r, unit) => (r.to === undefined ? '' : bareLength(r.to, unit)),
    read: (text, unit) =>
      text.trim() === ''
        ? { ok: true, change: { to: undefined } }
        : cellOf(parseLength(text, unit), (to) => ({ to })),
  },
  {
    id: 'seen',
    name: 'Seen',
    options: seenOptions,
    text: (r) => r.seen,
    shown: (r) => words.observationName(r.seen),
    read: (text) => chosen(seenOptions, text, (id) => ({ seen: id })),
  },
  {
    id: 'clock',
    name: "O'clock",
    text: (r) => clockInputText(r.clock),
    read: (text) =>
      text.trim() === ''
        ? { ok: true, change: { clock: undefined } }
        : cellOf(parseClockRange(text), (range) => ({ clock: clockOf(range) })),
  },
  {
    id: 'severity',
    name: 'How bad',
    whenRoomy: true,
    options: severities,
    text: (r) => r.severity ?? '',
    shown: (r) => (r.severity === undefined ? '' : words.severityName(r.severity)),
    read: (text) => chosen(severities, text, (id) => ({ severity: id === '' ? undefined : id })),
  },
  {
    id: 'passed',
    name: 'Passed',
    options: passing,
    text: (r) => (r.passed ? 'yes' : 'no'),
    read: (text) => chosen(passing, text, (id) => ({ passed: id === 'yes' })),
  },
  {
    id: 'note',
    name: 'Note',
    text: (r) => r.note,
    read: (text) => ({ ok: true, change: { note: text.trim() } }),
  },
];

function cellOf<T>(parsed: Parsed<T>, change: (value: T) => ReadingFacts): CellRead {
  return parsed.ok
    ? { ok: true, change: change(parsed.value) }
    : { ok: false, problem: words.parseProblemText(parsed) };
}

function chosen<Id extends string>(
  options: readonly Option<Id>[],
  text: string,
  change: (id: Id) => ReadingFacts,
): CellRead {
  const found = options.find((option) => option.id === text);
  return found === undefined
    ? { ok: false, problem: 'Choose one of the list.' }
    : { ok: true, change: change(found.id) };
}

/** In a column of one unit the unit stands in the heading. */
function bareLength(metres: number, unit: 'ft' | 'm'): string {
  return lengthInputText(metres, unit).replace(` ${unit}`, '');
}
