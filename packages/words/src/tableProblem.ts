import type { ParseFailure } from '@footmark/site';

/** Why a table of readings, a row or a cell of it is not taken over. */
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

/** What is to be said of it: `text` stands there, `because` is why a length or a clock in it was refused. */
export type TableProblemFacts = {
  readonly code: TableProblemCode;
  readonly text: string;
  readonly because?: ParseFailure;
};
