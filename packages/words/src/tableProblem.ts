import type { ParseFailure } from '@footmark/site';

/** Why a table of readings, a row or a cell of it is not taken over. */
export type TableProblemKind =
  | 'text-too-long'
  | 'no-rows'
  | 'no-counter-column'
  | 'two-counter-columns'
  | 'too-many-rows'
  | 'above-header'
  | 'total-row'
  | 'counter-missing'
  | 'not-a-length'
  | 'counter-too-large'
  | 'number-cut-by-comma'
  | 'too-many-cells'
  | 'cell-too-long'
  | 'to-before-from'
  | 'unknown-thing-seen'
  | 'seen-missing'
  | 'clock-not-read'
  | 'passed-not-read'
  | 'video-time-not-read';

/** What is to be said of it: `text` stands there, `because` is why a length or a clock in it was refused. */
export type TableProblemFacts = {
  readonly code: TableProblemKind;
  readonly text: string;
  readonly because?: ParseFailure;
};
