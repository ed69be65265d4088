import type { Site } from '@footmark/site';
import type { Place } from './place';

/** Another value of the thing at a place, null: it was taken away there. */
export type OtherVersion = { readonly place: Place; readonly other: unknown };

/** A site as devices keep it: the versions of its things that wait for a choice, and since when (ms since 1970) it is in the bin. */
export type SiteState = {
  readonly site: Site;
  readonly others: readonly OtherVersion[];
  readonly binnedAt: number | null;
};
