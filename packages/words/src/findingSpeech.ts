import type { FindingCode, FindingOf } from '@footmark/site';
import type { Said } from './said';

/** What sentences are made with: names and measures as they stand inside one, with the articles that a language puts before them. */
export type Speech = {
  /** The finding's target. */
  readonly thing: string;
  /** For a finding about a reading: the mark that it leads to. */
  readonly mark: string;
  readonly name: (carried: string) => string;
  readonly point: (key: string) => string;
  readonly length: (metres: number) => string;
  readonly counter: (metres: number) => string;
  readonly slope: (fallOverRun: number) => string;
};

export type Sentences<Codes extends FindingCode = FindingCode> = {
  readonly [Code in Codes]: (values: FindingOf<Code>['values'], speech: Speech) => Said;
};
