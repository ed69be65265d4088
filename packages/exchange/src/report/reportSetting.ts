import type { Derived, Site } from '@footmark/site';
import type { Words } from '@footmark/words';

/** What every part of a report is made from. */
export type ReportSetting = { readonly site: Site; readonly derived: Derived; readonly words: Words };
