import type { ClockRange, LengthStyle, ObservationKind, ParseFailure } from '@footmark/site';

/** One reading of the table. Lengths in metres of the counter's own count. */
export type ReadingRow = Readonly<{
  /** Line of the text on which the row begins, from 1. */
  line: number;
  counter: number;
  /** What the counter showed at the far end of something that goes on; more than `counter`. */
  to?: number;
  /** `null`: the table does not say it in words that are known; they are in the note then. */
  seen: ObservationKind | null;
  clock?: ClockRange;
  /** True unless the table says that the camera could not pass. */
  passed: boolean;
  note: string;
  /** Seconds into the recording. */
  videoAt?: number;
}>;

/** What a column tells; `blocked` says that the camera could *not* pass. */
export type TableColumn = 'counter' | 'to' | 'seen' | 'clock' | 'passed' | 'blocked' | 'note' | 'videoAt';

/** Where each thing stands, from 0. */
export type TableColumns = Readonly<Partial<Record<TableColumn, number>>>;

export type TableProblemCode =
  // the whole text; there are no rows, save with `too-many-rows`, which gives those before `line`
  | 'text-too-long'
  | 'no-rows'
  | 'no-counter-column'
  | 'two-counter-columns' // no header, and two columns could be the counter (or one, cut in two at its decimal commas)
  | 'too-many-rows'
  // a row that is left out
  | 'above-header'
  | 'total-row'
  | 'counter-missing'
  | 'not-a-length' // also a cell that is left out, in the column `to`
  | 'counter-too-large'
  | 'number-cut-by-comma' // commas separate the cells, and one stands inside a number
  | 'too-many-cells'
  | 'cell-too-long'
  // a cell that is left out of a row
  | 'to-before-from'
  | 'unknown-thing-seen'
  | 'seen-missing'
  | 'clock-not-read'
  | 'passed-not-read'
  | 'video-time-not-read';

export type TableProblem = Readonly<{
  /** Line of the text on which the row begins, from 1; 1 for the whole text. */
  line: number;
  /** From 0; `null`: the whole row. */
  column: number | null;
  code: TableProblemCode;
  /** What stands there, or in the row where the cell is blank; shortened. */
  text: string;
  /** Whether the row is among the rows nonetheless. */
  rowKept: boolean;
  /** Why a length or a clock was refused. */
  because?: ParseFailure;
}>;

/** A table as it was understood: its readings in the order of the text, and all that was not taken over. */
export type ReadingTable = Readonly<{
  rows: readonly ReadingRow[];
  problems: readonly TableProblem[];
  columns: TableColumns;
  /** Columns of the header that tell nothing a reading has. */
  unread: readonly Readonly<{ column: number; text: string }>[];
  /** What a bare number of the counter was taken for: the header's unit, else the one that was given. */
  unit: LengthStyle;
}>;
