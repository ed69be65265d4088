import type { RunsFit } from '@footmark/site';
import { LastSites } from '../session/lastSites';

/** What sites came to, each state weighed once. */
export const knownFits = new LastSites<RunsFit>();
