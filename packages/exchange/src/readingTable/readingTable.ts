import type { ClockRange, LengthStyle, ObservationKind } from '@footmark/site';
import type { TableProblemFacts } from '@footmark/words';

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

/** What is not taken over, and where it stands; its text is what stands there, or in the row where the cell is blank, shortened. */
export type TableProblem = TableProblemFacts &
  Readonly<{
    /** Line of the text on which the row begins, from 1; 1 for the whole text. */
    line: number;
    /** From 0; `null`: the whole row. */
    column: number | null;
    /** Whether the row is among the rows nonetheless. */
    rowKept: boolean;
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
  /** Some counters other than 0 are bare numbers, and no heading says of what: they were taken in the unit that was given. */
  unitIsAssumed: boolean;
}>;
