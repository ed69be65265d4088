import 'fake-indexeddb/auto';
import { addFeature, newSite, removeThing, type Site } from '@footmark/site';
import { exchangeSite } from '@footmark/team';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { saveSiteAfter } from '../../app/src/storage/saveSiteAfter';
import { readSite } from '../../app/src/storage/siteStore';
import { dice } from '../random/dice';
import { type Break, type Client, exchange, makeClient, round } from './client';
import { startTeamServer, type TeamServer } from './teamServer';

const NOW = Date.UTC(2026, 2, 4);
const PATIENCE_MS = 60_000;
const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
const yard = newSite({ id: 'yard', name: 'Yard', createdAt: '2026-01-02T03:04:05Z', units });

const pole = (id: string) => (site: Site) =>
  addFeature(site, {
    feature: {
      id,
      kind: 'pole',
      name: '',
      fields: {},
      vertices: [{ id: 'a', spot: { by: 'finger', x: 0, y: 0 } }],
    },
  });
const without = (id: string) => (site: Site) => removeThing(site, { id, places: new Map() });

async function edit({ db }: Client, change: (site: Site) => Site): Promise<void> {
  const read = await readSite('yard', db);
  const site = change(read?.opened.ok ? read.opened.site : yard);
  const seq = read?.seq ?? null;
  expect(await saveSiteAfter({ site, others: read?.others ?? [], seq, now: NOW }, db)).not.toBeNull();
}

async function poles({ db }: Client): Promise<readonly string[]> {
  const read = await readSite('yard', db);
  return read?.opened.ok ? read.opened.site.features.map((f) => f.id).toSorted() : [];
}

let server: TeamServer;
let count = 0;
beforeAll(async () => {
  server = await startTeamServer();
});
afterAll(() => server.close());

async function twoDevices(): Promise<readonly [Client, Client]> {
  count += 1;
  await server.close();
  server = await startTeamServer();
  const make = (name: string) => makeClient(`${name}-broken-${count}`, server, dice(count, name));
  const [here, there] = [await make('here'), await make('there')];
  await edit(here, pole('first'));
  await round(here, NOW);
  await round(there, NOW);
  expect(await poles(there)).toEqual(['first']);
  return [here, there];
}

describe('an exchange that is broken off', () => {
  it.each(['keep', 'put', 'close', 'write'] satisfies Break[])(
    'at the %s: what is taken away after it does not come back, what others put in does',
    async (breaks) => {
      const [here, there] = await twoDevices();
      await edit(here, pole('mine'));
      await exchange(here, 'yard', NOW, breaks);
      await edit(here, without('mine'));
      await edit(there, pole('theirs'));
      for (const device of [there, here, there, here]) await round(device, NOW);
      expect(await poles(here)).toEqual(['first', 'theirs']);
      expect(await poles(there)).toEqual(['first', 'theirs']);
    },
    PATIENCE_MS,
  );
});

describe('revisions that were put beside one another', () => {
  it(
    'are settled once: what is the same on both sides is not written again and again',
    async () => {
      const [here, there] = await twoDevices();
      for (const device of [here, there]) await edit(device, pole('same'));
      // each in its own replica first, then both on the server
      for (const device of [here, there]) await exchange(device, 'yard', NOW);
      for (const device of [here, there, here, there, here]) await round(device, NOW);
      const before = (await server.database.info()).update_seq;
      for (const device of [here, there, here, there]) await round(device, NOW);
      expect((await server.database.info()).update_seq).toBe(before);
      expect(await poles(here)).toEqual(['first', 'same']);
    },
    PATIENCE_MS,
  );

  it(
    'share what was merged into either: what is taken away after two mergings does not come back',
    async () => {
      const [here, there] = await twoDevices();
      // here goes two revisions on, so that its own is the winning one when there's is merged into it
      for (const id of ['one', 'two']) {
        await edit(here, pole(id));
        await exchange(here, 'yard', NOW);
      }
      await edit(there, pole('crossed'));
      await round(there, NOW);
      await round(here, NOW);
      expect(await poles(here)).toEqual(['crossed', 'first', 'one', 'two']);
      // there goes on from its own, without having seen that; here takes away what came from there
      there.line = 'cut';
      await edit(there, pole('late'));
      await round(there, NOW);
      await edit(here, without('crossed'));
      await exchange(here, 'yard', NOW);
      there.line = 'good';
      for (const device of [here, there, here, there]) await round(device, NOW);
      expect(await poles(here)).toEqual(['first', 'late', 'one', 'two']);
      expect(await poles(there)).toEqual(['first', 'late', 'one', 'two']);
      const again = { now: NOW, newWriter: () => 'again' };
      expect(await exchangeSite(here.device, here.replica, 'yard', again)).toBe('same');
    },
    PATIENCE_MS,
  );
});
