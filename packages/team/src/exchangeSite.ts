import { canonicalText, mergeStates, type SiteState } from '@footmark/merge';
import type { Device } from './device';
import type { Replica } from './replica';
import { settle } from './settle';
import { documentOf, MOST_TEAM_CHARACTERS } from './teamDocument';

/**
 * What an exchange did: nothing had to be done, or the site went out, came in, or both became one. `too-large`, `unreadable`: it stays as
 * it is on both sides; `busy`: others wrote all the while, try again.
 */
export type ExchangeOutcome = 'same' | 'sent' | 'taken' | 'merged' | 'too-large' | 'unreadable' | 'busy';

const MOST_TRIES = 8;
/** A document of a site that no device has any more goes when it has been in the bin for so long (ms): the bin's 30 days and two for clocks. */
const GONE_MS = 32 * 24 * 60 * 60 * 1000;

/** Makes what the device and the replica have of one site the same. `now` in milliseconds since 1970. */
export async function exchangeSite(
  device: Device,
  replica: Replica,
  id: string,
  now: number,
): Promise<ExchangeOutcome> {
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const outcome = await exchangeOnce(device, replica, id, now);
    if (outcome !== null) return outcome;
  }
  return 'busy';
}

/** Null: somebody wrote meanwhile. */
async function exchangeOnce(
  device: Device,
  replica: Replica,
  id: string,
  now: number,
): Promise<ExchangeOutcome | null> {
  const [here, there] = [await device.read(id), await settle(replica, id)];
  if (there.is === 'unreadable') return 'unreadable';
  if (here === null) {
    if (there.is !== 'site') return 'same';
    const { state, rev } = there;
    if (state.binnedAt !== null && now - state.binnedAt > GONE_MS) {
      await replica.bulkDocs([{ _id: documentOf(state)._id, _rev: rev, _deleted: true }]);
      return 'same';
    }
    return (await device.write(id, { state, seq: null })) ? 'taken' : null;
  }
  const { state: mine, base, seq, shared } = here;
  if (mine === null) return 'unreadable';
  if (there.is !== 'site') {
    if (there.is === 'deleted' && base !== null && isSame(mine, base)) {
      if (mine.binnedAt !== null) return 'same';
      // deleted there by other means, and untouched here: into the bin
      const binned = { ...mine, binnedAt: now };
      return (await device.write(id, { state: binned, seq })) ? 'taken' : null;
    }
    return shared ? send(device, replica, { outcome: 'sent', state: mine, seq, on: null }) : 'same';
  }
  const state = mergeStates(base, mine, there.state);
  const asThere = isSame(state, there.state);
  if (asThere) {
    const asHere = isSame(state, mine);
    return (await device.write(id, { state, seq })) ? (asHere ? 'same' : 'taken') : null;
  }
  const outcome = isSame(state, mine) ? 'sent' : 'merged';
  return send(device, replica, { outcome, state, seq, on: there.rev });
}

type Sending = {
  readonly outcome: ExchangeOutcome;
  readonly state: SiteState;
  readonly seq: number;
  /** The revision that it is put on; null: a new document. */
  readonly on: string | null;
};

async function send(
  device: Device,
  replica: Replica,
  { outcome, state, seq, on }: Sending,
): Promise<ExchangeOutcome | null> {
  const document = documentOf(state);
  if (JSON.stringify(document).length > MOST_TEAM_CHARACTERS) return 'too-large';
  const [written] = await replica.bulkDocs([on === null ? document : { ...document, _rev: on }]);
  if (written?.rev === undefined) return null;
  return (await device.write(state.site.id, { state, seq })) ? outcome : null;
}

function isSame(a: SiteState, b: SiteState): boolean {
  return a === b || canonicalText(a) === canonicalText(b);
}
