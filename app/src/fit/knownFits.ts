import type { RunsFit, Site } from '@footmark/site';

/** What sites came to, each state weighed once. */
export const knownFits = new WeakMap<Site, RunsFit>();
