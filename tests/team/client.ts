import { type Device, exchangeSite, type Replica, siteOfDocument } from '@footmark/team';
import { type DeviceDatabase, openDevice } from '../../app/src/storage/database';
import { deviceForTeam } from '../../app/src/team/deviceForTeam';
import type { Dice } from '../random/dice';
import { Pouch } from './pouch';
import type { TeamServer } from './teamServer';

/** A device of the team: its store, its replica of the team's database, and a way to the server that can be cut. */
export type Client = {
  readonly name: string;
  readonly db: DeviceDatabase;
  readonly replica: Pouch;
  readonly remote: Pouch;
  readonly device: Device;
  readonly newWriter: () => string;
  /** `cut`: no request arrives; `flaky`: one in four is lost, half of these after the server has acted on it. */
  line: 'good' | 'flaky' | 'cut';
  /** How far the replica's own changes have been taken in. */
  seen: number;
};

export async function makeClient(name: string, server: TeamServer, dice: Dice): Promise<Client> {
  const db = await openDevice(name);
  const right = Buffer.from(`${server.user}:${server.password}`, 'utf8').toString('base64');
  const client: Client = {
    name,
    db,
    replica: new Pouch(name, { adapter: 'memory' }),
    remote: new Pouch(server.url, {
      adapter: 'http',
      skip_setup: true,
      fetch: async (url, options) => {
        const lost = client.line === 'cut' || (client.line === 'flaky' && dice.next() < 0.25);
        // PouchDB asks a database about itself without waiting for the answer: to that, what a proxy says when the line behind it is cut
        const asksWho = new URL(String(url)).pathname.replace(/\/$/, '') === new URL(server.url).pathname;
        if (lost && asksWho) return new Response('{"error":"no line"}', { status: 503 });
        if (lost && (client.line === 'cut' || dice.next() < 0.5)) throw new TypeError('the line is cut');
        const headers = new Headers(options?.headers);
        headers.set('Authorization', `Basic ${right}`);
        const answer = await fetch(url, { ...options, headers });
        if (lost) throw new TypeError('the line was cut');
        return answer;
      },
    }),
    device: deviceForTeam(db, () => true),
    newWriter: () => dice.id(name),
    line: 'good',
    seen: 0,
  };
  return client;
}

/** Where an exchange breaks off, as a killed tab does: before or after the device or its replica have written. */
export const breaks = ['keep', 'put', 'close', 'write'] as const;
export type Break = (typeof breaks)[number];

/** Exchanges one site; an exchange may break off. */
export async function exchange(
  client: Client,
  id: string,
  now: number,
  at: Break | null = null,
): Promise<void> {
  const { device, newWriter, replica } = client;
  const broken = new Error('broken off');
  const breaking: Device = {
    read: device.read,
    keep: async (...args) => {
      const kept = await device.keep(...args);
      if (at === 'keep') throw broken;
      return kept;
    },
    write: (...args) => (at === 'write' ? Promise.reject(broken) : device.write(...args)),
  };
  const breakingReplica: Replica = {
    get: (of, options) => replica.get(of, options),
    bulkDocs: async (documents) => {
      if (at === 'close' && documents.every((document) => document._deleted === true)) throw broken;
      const written = await replica.bulkDocs(documents);
      if (at === 'put') throw broken;
      return written;
    },
  };
  await exchangeSite(breaking, breakingReplica, id, { now, newWriter }).catch((error: unknown) => {
    if (error !== broken) throw error;
  });
}

/** Sites of the device whose last write has not been exchanged. */
async function dirtySites({ db }: Client): Promise<readonly string[]> {
  const entries = await db.getAll('entries');
  return entries.filter((e) => e.exchangedSeq !== (e.seq ?? 0)).map((e) => e.id);
}

/** Takes in what has come into the replica. */
async function takeIn(client: Client, now: number): Promise<void> {
  const { results, last_seq } = await client.replica.changes({ since: client.seen });
  for (const { id } of results) {
    const site = siteOfDocument(id);
    if (site !== null) await exchange(client, site, now);
  }
  client.seen = last_seq;
}

/** One round: what was written goes out, what others wrote comes in, as far as the line lets it. False: it broke. */
export async function round(client: Client, now: number): Promise<boolean> {
  for (const id of await dirtySites(client)) await exchange(client, id, now);
  // one after the other, so that the same seed loses the same requests
  const options = { batch_size: 20, retry: false };
  const sent = await client.replica.replicate.to(client.remote, options).then(isWhole, () => false);
  const came = await client.replica.replicate.from(client.remote, options).then(isWhole, () => false);
  const arrived = sent && came;
  await takeIn(client, now);
  return arrived;
}

function isWhole({ errors }: { readonly errors: readonly unknown[] }): boolean {
  return errors.length === 0;
}
