import {
  canonicalText,
  highestCount,
  join,
  type SiteState,
  type StampedSite,
  sameStamped,
  stampSite,
  viewSite,
} from '@footmark/merge';
import type { Device, OnDevice, Stamps } from './device';
import { type OnReplica, readReplica } from './readReplica';
import type { Replica } from './replica';
import { documentIdOf, documentOf, MOST_TEAM_CHARACTERS } from './teamDocument';

/**
 * What an exchange did: nothing had to be done, or the site went out, came in, or both became one. `too-large`, `unreadable`: it stays as
 * it is on both sides; `busy`: others wrote all the while, try again.
 */
export type ExchangeOutcome = 'same' | 'sent' | 'taken' | 'merged' | 'too-large' | 'unreadable' | 'busy';

/** `now` in milliseconds since 1970; `newWriter` gives a name that nobody stamps with yet. */
export type Occasion = { readonly now: number; readonly newWriter: () => string };

const MOST_TRIES = 8;
/** A document of a site that no device has any more goes when it has been in the bin for so long (ms): the bin's 30 days and two for clocks. */
const GONE_MS = 32 * 24 * 60 * 60 * 1000;

type Ends = { readonly device: Device; readonly replica: Replica; readonly id: string };
type ThereSite = Extract<OnReplica, { is: 'site' }>;

/** Makes what the device and the replica have of one site the same. */
export async function exchangeSite(
  device: Device,
  replica: Replica,
  id: string,
  occasion: Occasion,
): Promise<ExchangeOutcome> {
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const outcome = await exchangeOnce({ device, replica, id }, occasion);
    if (outcome !== null) return outcome;
  }
  return 'busy';
}

/** Null: somebody wrote meanwhile. */
async function exchangeOnce(ends: Ends, occasion: Occasion): Promise<ExchangeOutcome | null> {
  const { device, replica, id } = ends;
  const [here, there] = [await device.read(id), await readReplica(replica, id)];
  if (there.is === 'unreadable' || here?.state === null) return 'unreadable';
  if (here === null) return there.is === 'site' ? takeNew(ends, there, occasion) : 'same';
  const { state, seq, stamps } = here;
  if (there.is !== 'site') {
    if (there.is === 'deleted' && stamps !== null && showsSame(stamps.last, state))
      return binned(ends, here, occasion);
    if (!here.shared) return 'same';
  }
  const known = there.is === 'site' ? there.stamped : null;
  const mine = stamped({ state, stamps }, known, occasion);
  if (mine !== stamps && !(await device.keep(id, { stamps: mine, seq }))) return null;
  const both = known === null ? mine.last : join(mine.last, known);
  const view = viewSite(both, state.site);
  if (view === null) return 'unreadable';
  const goesOut = there.is !== 'site' || there.beside.length > 0 || !sameStamped(both, there.standing);
  if (goesOut) {
    const sent = await send(ends, both, there.is === 'site' ? there : null);
    if (sent !== 'sent') return sent;
  }
  if (!(await device.write(id, { state: view, stamps: { by: mine.by, last: both }, seq }))) return null;
  const comesIn = !sameState(view, state);
  return goesOut ? (comesIn ? 'merged' : 'sent') : comesIn ? 'taken' : 'same';
}

/** The device's own changes with its name on them. A device that was set back to an earlier day takes another name: its counts were given. */
function stamped(
  { state, stamps }: { readonly state: SiteState; readonly stamps: Stamps | null },
  known: StampedSite | null,
  { newWriter }: Occasion,
): Stamps {
  const isSetBack = stamps !== null && (known?.seen[stamps.by] ?? 0) > (stamps.last.seen[stamps.by] ?? 0);
  const by = stamps === null || isSetBack ? newWriter() : stamps.by;
  const above = known === null ? 0 : highestCount(known);
  const last = stampSite(stamps?.last ?? null, state, { by, above });
  return stamps !== null && last === stamps.last ? stamps : { by, last };
}

async function takeNew(
  ends: Ends,
  there: ThereSite,
  { now, newWriter }: Occasion,
): Promise<ExchangeOutcome | null> {
  const { device, replica, id } = ends;
  const view = viewSite(there.stamped);
  if (view === null) return 'unreadable';
  if (view.binnedAt !== null && now - view.binnedAt > GONE_MS) {
    const gone = [there.rev, ...there.beside].map((_rev) => ({
      _id: documentIdOf(id),
      _rev,
      _deleted: true,
    }));
    await replica.bulkDocs(gone);
    return 'same';
  }
  if (there.beside.length > 0 && (await send(ends, there.stamped, there)) === null) return null;
  const stamps = { by: newWriter(), last: there.stamped };
  return (await device.write(id, { state: view, stamps, seq: null })) ? 'taken' : null;
}

/** Deleted there by other means, and untouched here: into the bin. */
async function binned(
  { device, id }: Ends,
  here: OnDevice,
  { now }: Occasion,
): Promise<ExchangeOutcome | null> {
  const { state, stamps, seq } = here;
  if (state === null || stamps === null || state.binnedAt !== null) return 'same';
  return (await device.write(id, { state: { ...state, binnedAt: now }, stamps, seq })) ? 'taken' : null;
}

/** Puts a state on the revision that stands, and closes those beside it. Null: somebody wrote since. */
async function send(
  { replica, id }: Ends,
  last: StampedSite,
  on: ThereSite | null,
): Promise<'sent' | 'too-large' | null> {
  const document = documentOf(last);
  if (JSON.stringify(document).length > MOST_TEAM_CHARACTERS) return 'too-large';
  const [written] = await replica.bulkDocs([on === null ? document : { ...document, _rev: on.rev }]);
  if (written?.rev === undefined) return null;
  const closed = (on?.beside ?? []).map((_rev) => ({ _id: documentIdOf(id), _rev, _deleted: true }));
  if (closed.length > 0) await replica.bulkDocs(closed);
  return 'sent';
}

function showsSame(last: StampedSite, state: SiteState): boolean {
  const view = viewSite(last, state.site);
  return view !== null && sameState(view, state);
}

function sameState(a: SiteState, b: SiteState): boolean {
  const text = ({ site, others, binnedAt }: SiteState) => canonicalText([site, others, binnedAt]);
  return text(a) === text(b);
}
