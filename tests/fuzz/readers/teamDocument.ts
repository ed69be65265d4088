import {
  canonicalText,
  join,
  type SiteState,
  type SiteView,
  type StampedSite,
  sameStamped,
  stampSite,
  viewSite,
} from '@footmark/merge';
import { documentIdOf, documentOf, stampedOf } from '@footmark/team';
import { jsonMutators } from '../mutate/json';
import { bytesOf, type FuzzReader, textOf } from '../reader';
import { soundSites } from '../soundSites';
import { siteBack, siteWrong } from '../whole';

type Read = {
  readonly accepted: boolean;
  readonly stamped: StampedSite | null;
  readonly again: StampedSite | null;
  readonly view: SiteView | null;
  /** What a device has that joins it to what it has already: the same, an earlier state of it, and a later one. */
  readonly joined: readonly { readonly is: StampedSite; readonly view: SiteView | null }[];
};

const REFUSED: Read = { accepted: false, stamped: null, again: null, view: null, joined: [] };

/** A site of two writers who did not know of each other's names for it. */
function stampedByTwo(state: SiteState): StampedSite {
  const first = stampSite(null, state, { by: 'w1' });
  const named = (name: string) => ({ ...state, site: { ...state.site, name } });
  return join(
    stampSite(first, named('Front yard'), { by: 'w2' }),
    stampSite(first, named('Rear lane'), { by: 'w3' }),
  );
}

/** What another device of the team wrote; null refuses it, which the team's status tells. Partial: it does not come back as it is, alone or joined to itself. */
export const reader: FuzzReader<Read> = {
  name: 'team’s document',
  seeds: () =>
    soundSites().map((site, i) => {
      const binnedAt = i % 3 === 0 ? 1_780_000_000_000 : null;
      const state: SiteState = { site, others: [], binnedAt };
      return bytesOf(
        JSON.stringify(documentOf(i % 2 === 0 ? stampSite(null, state, { by: 'w1' }) : stampedByTwo(state))),
      );
    }),
  mutators: jsonMutators,
  read(input) {
    const stamped = read(textOf(input));
    if (stamped === null) return REFUSED;
    const view = viewSite(stamped);
    const later =
      view === null
        ? stamped
        : stampSite(stamped, { ...view, site: { ...view.site, name: 'Later' } }, { by: 'w9' });
    return {
      accepted: true,
      stamped,
      again: stampedOf({ ...documentOf(stamped) }),
      view,
      joined: [join(stamped, stamped), join(stamped, later), join(later, stamped)].map((is) => ({
        is,
        view: viewSite(is),
      })),
    };
  },
  judge(_, { stamped, again, view, joined }) {
    if (stamped === null || again === null) return 'accepted, and not what is written of it';
    if (!sameStamped(stamped, again)) return 'another state when it is written again';
    if (view === null) return 'accepted, and nothing to be shown';
    const [self, ahead, behind] = joined;
    if (self === undefined || ahead === undefined || behind === undefined) return 'not joined';
    if (!sameStamped(self.is, stamped)) return 'another state when it is joined to itself';
    if (canonicalText(ahead.view?.site ?? null) !== canonicalText(behind.view?.site ?? null))
      return 'the order in which it is joined matters';
    if (joined.some((one) => one.view === null)) return 'joined, and nothing to be shown';
    return siteWrong(siteBack(view.site));
  },
};

/** The database gives only what is JSON, and an object, under the name by which it was asked for. */
function read(text: string): StampedSite | null {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return null;
    const document = value as Record<string, unknown>; // an object that JSON made
    const stamped = stampedOf(document);
    return stamped !== null && document._id === documentIdOf(stamped.fixed.id) ? stamped : null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}
