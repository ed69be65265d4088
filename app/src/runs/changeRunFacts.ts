import type { RunFacts } from '@footmark/site';

/** Changes a run under a name for the history; false when that is refused. */
export type ChangeRun = (what: string, facts: RunFacts) => boolean;
