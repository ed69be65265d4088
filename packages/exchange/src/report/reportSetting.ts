import type { Derived, RunsFit, Site } from '@footmark/site';
import type { Words } from '@footmark/words';

/** What every part of a report is made from. */
export type ReportSetting = {
  readonly site: Site;
  readonly derived: Derived;
  /** Null when the runs were not weighed. */
  readonly fit: RunsFit | null;
  readonly words: Words;
};
