import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { canonicalText, type SiteState, viewSite, withVersion } from '@footmark/merge';
import { newSite, openSite, type Site, soundEdit } from '@footmark/site';
import { siteOfDocument, stampedOf } from '@footmark/team';
import { saveSiteAfter } from '../../app/src/storage/saveSiteAfter';
import { readSite } from '../../app/src/storage/siteStore';
import { randomChange } from '../merge/randomChange';
import { type Dice, dice } from '../random/dice';
import { breaks, type Client, exchange, makeClient, round } from './client';
import { Ledger } from './ledger';
import { startTeamServer } from './teamServer';

export type Parted = {
  readonly operations: number;
  readonly acknowledged: number;
  readonly rounds: number;
  readonly brokenRounds: number;
  readonly versionsWaiting: number;
  readonly sites: number;
  readonly lost: readonly unknown[];
  /** How the ends differ; empty: they are equal. */
  readonly unequal: readonly string[];
};

/** Rounds in which two ends that nobody edits must have come to rest. */
const MOST_ROUNDS = 30;
const MOST_SITES = 6;

/**
 * Two devices and a server of CouchDB's protocol on the loopback: random edits on both, random cuts of the line, exchanges broken off.
 * At the end the line is good: both devices and the server must have the same, and all that was acknowledged.
 */
export async function partedTeam(
  seed: number,
  operations: number,
  onProgress: (done: number) => void = () => {},
): Promise<Parted> {
  const server = await startTeamServer();
  const chance = dice(seed, 'o');
  const ledger = new Ledger();
  const clients = [
    await makeClient(`a-${seed}-${operations}`, server, dice(seed + 1, 'x')),
    await makeClient(`b-${seed}-${operations}`, server, dice(seed + 2, 'y')),
  ];
  const hands = new Map(clients.map((client, i) => [client, dice(seed + 3 + i, `${i}z`)]));
  let [now, rounds, brokenRounds] = [Date.UTC(2026, 2, 4), 0, 0];
  for (const site of samples()) await store(clients[0] as Client, null, site, now); // there are two
  for (let n = 0; n < operations; n++) {
    now += 60_000;
    onProgress(n);
    const client = chance.pick(clients);
    const hand = hands.get(client) ?? chance;
    const what = chance.next();
    if (what < 0.76) await editSome(client, hand, ledger, now);
    else if (what < 0.83) await chooseSome(client, hand, ledger, now);
    else if (what < 0.9) await exchangeSome(client, hand, now);
    else if (what < 0.95) client.line = hand.pick(['good', 'good', 'flaky', 'cut'] as const);
    else {
      rounds += 1;
      if (!(await round(client, now))) brokenRounds += 1;
    }
  }
  for (const client of clients) client.line = 'good';
  const ends = async () => [
    ...(await Promise.all(clients.map(statesOf))),
    await statesOfServer(server.database),
  ];
  const unequalEnds = async () => {
    const [first = new Map<string, SiteState>(), ...others] = await ends();
    return others.flatMap((end, i) => differences(first, end).map((d) => `end ${i + 2}: ${d}`));
  };
  let unequal = await unequalEnds();
  for (let n = 0; n < MOST_ROUNDS && unequal.length > 0; n++) {
    for (const client of clients) await round(client, now);
    unequal = await unequalEnds();
  }
  // at rest: nobody has anything more to say
  const { update_seq: before } = await server.database.info();
  for (let n = 0; n < 2; n++) for (const client of clients) await round(client, now);
  const { update_seq: after } = await server.database.info();
  if (after !== before) unequal = [...unequal, `not at rest: ${after - before} more revisions`];
  unequal = [...unequal, ...(await unequalEnds())];
  const [first = new Map<string, SiteState>()] = await ends();
  await server.close();
  return {
    operations,
    acknowledged: ledger.acknowledged,
    rounds,
    brokenRounds,
    versionsWaiting: [...first.values()].reduce((sum, s) => sum + s.others.length, 0),
    sites: first.size,
    lost: ledger.lost(first),
    unequal,
  };
}

function samples(): readonly Site[] {
  return ['rear-alley', 'front-terrace'].map((name) => {
    const file = new URL(`../../packages/site/samples/${name}.json`, import.meta.url);
    const opened = openSite(readFileSync(file, 'utf8'));
    if (!opened.ok) throw new Error(`the sample ${name} does not open`);
    return opened.site;
  });
}

async function store(client: Client, seq: number | null, site: Site, now: number): Promise<void> {
  await saveSiteAfter({ site, others: [], seq, now }, client.db);
}

async function someSite(client: Client, hand: Dice) {
  const ids = await client.db.getAllKeys('sites');
  if (ids.length === 0) return null;
  const read = await readSite(hand.pick(ids), client.db);
  return read?.opened.ok ? { ...read, site: read.opened.site } : null;
}

async function editSome(client: Client, hand: Dice, ledger: Ledger, now: number): Promise<void> {
  if (hand.next() < 0.01 && (await client.db.count('sites')) < MOST_SITES) {
    const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
    const made = newSite({ id: hand.id('s'), name: 'New', createdAt: '2026-01-02T03:04:05Z', units });
    await store(client, null, { ...made, features: samples()[1]?.features ?? [] }, now);
    return;
  }
  const read = await someSite(client, hand);
  if (read === null) return;
  const edited = randomChange(read.site, hand);
  const { others, seq } = read;
  const written = await saveSiteAfter({ site: edited, others, seq, now }, client.db);
  if (written !== null) ledger.write(read.site, edited, await baseOf(client, edited.id));
}

/** Looks at a version that waits, and takes it or lets it go. */
async function chooseSome(client: Client, hand: Dice, ledger: Ledger, now: number): Promise<void> {
  const read = await someSite(client, hand);
  if (read === null || read.others.length === 0) return;
  const chosen = hand.pick(read.others);
  const others = read.others.filter((each) => each !== chosen);
  const sound = soundEdit(read.site, withVersion(read.site, chosen.place, chosen.other));
  const site = hand.next() < 0.5 && sound.ok ? sound.site : read.site;
  const written = await saveSiteAfter({ site, others, seq: read.seq, now }, client.db);
  if (written === null) return;
  ledger.choose(site.id, chosen);
  ledger.write(read.site, site, await baseOf(client, site.id));
}

/** What a device last knew the team to have of a site. */
async function baseOf({ device }: Client, id: string): Promise<Site | null> {
  const last = (await device.read(id))?.stamps?.last;
  return (last && viewSite(last)?.site) ?? null;
}

async function exchangeSome(client: Client, hand: Dice, now: number): Promise<void> {
  const ids = await client.db.getAllKeys('sites');
  if (ids.length > 0)
    await exchange(client, hand.pick(ids), now, hand.next() < 0.5 ? hand.pick(breaks) : null);
}

async function statesOf({ db }: Client): Promise<ReadonlyMap<string, SiteState>> {
  const states = new Map<string, SiteState>();
  for (const id of await db.getAllKeys('sites')) {
    const read = await readSite(id, db);
    if (read?.opened.ok) states.set(id, { site: read.opened.site, others: read.others, binnedAt: null });
  }
  return states;
}

async function statesOfServer(
  database: Awaited<ReturnType<typeof startTeamServer>>['database'],
): Promise<ReadonlyMap<string, SiteState>> {
  const { rows } = await database.allDocs({ include_docs: true, conflicts: true });
  const states = new Map<string, SiteState>();
  for (const { id, doc } of rows) {
    const site = siteOfDocument(id);
    const stamped = doc === undefined ? null : stampedOf(doc);
    const view = stamped === null ? null : viewSite(stamped);
    if (site === null || view === null || doc?._conflicts !== undefined) continue;
    states.set(site, { site: view.site, others: view.others, binnedAt: view.binnedAt });
  }
  return states;
}

function differences(
  a: ReadonlyMap<string, SiteState>,
  b: ReadonlyMap<string, SiteState>,
): readonly string[] {
  return [...new Set([...a.keys(), ...b.keys()])].filter(
    (id) => canonicalText(a.get(id) ?? null) !== canonicalText(b.get(id) ?? null),
  );
}
