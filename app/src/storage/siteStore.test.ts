import 'fake-indexeddb/auto';
import { newSite, type Site } from '@footmark/site';
import { openDB } from 'idb';
import { beforeAll, describe, expect, it } from 'vitest';
import { database, openDevice } from './database';
import { removeSite } from './removeSite';
import { saveSiteAfter } from './saveSiteAfter';
import { binSite, listSites, loadSite, markDownloaded, readSite, saveSite } from './siteStore';
import { MOST_VERSIONS, VERSION_SPACING_MS } from './versionSpacing';
import { listVersions, loadVersion } from './versionStore';

// fake-indexeddb: the IndexedDB of the W3C in memory, written by others

const DAY_MS = 86_400_000;
const START = Date.UTC(2026, 2, 4, 8);

function siteOf(id: string, name = id): Site {
  return newSite({
    id,
    name,
    createdAt: '2026-01-02T03:04:05Z',
    units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
  });
}

/** As a session saves: after what it read. */
async function edit(id: string, name: string, now: number): Promise<void> {
  const read = await readSite(id);
  expect(read).not.toBeNull();
  const seq = await saveSiteAfter({ site: siteOf(id, name), others: [], seq: read?.seq ?? null, now });
  expect(seq).toBe((read?.seq ?? 0) + 1);
}

describe('sites of the device', () => {
  beforeAll(async () => {
    // what the second version of the database left behind: no counts of writes, no versions
    const old = await openDB('footmark', 2, {
      upgrade(db) {
        for (const store of ['sites', 'entries', 'files']) db.createObjectStore(store, { keyPath: 'id' });
      },
    });
    const counts = { features: 0, runs: 0, readings: 0 };
    await old.put('sites', { id: 'old', site: siteOf('old', 'From before') });
    await old.put('entries', {
      id: 'old',
      name: 'From before',
      address: '',
      savedAt: START - DAY_MS,
      counts,
    });
    await old.put('files', { id: 'i1', site: 'old', name: 'p.png', widthPx: 1, heightPx: 1, addedAt: START });
    old.close();
  });

  it('carries over what an earlier version of the app stored, and puts its state by before the first write', async () => {
    const opened = await loadSite('old');
    expect(opened).toMatchObject({ ok: true, site: { name: 'From before' } });
    expect(await (await database()).get('files', 'i1')).toMatchObject({ site: 'old' });
    await edit('old', 'Changed', START);
    const [version, ...more] = await listVersions('old');
    expect([version, more]).toEqual([{ seq: 0, at: START - DAY_MS }, []]);
    if (version !== undefined)
      expect(await loadVersion('old', version)).toMatchObject({ ok: true, site: { name: 'From before' } });
  });

  it.each([1, 2, 3, 4])(
    'opens what version %i of the database left behind, and loses none of it',
    async (from) => {
      const stores = ['sites', 'entries', 'files', 'answers', 'teams'].slice(0, from + 1);
      const name = `footmark-${from}`;
      const old = await openDB(name, from, {
        upgrade: (db) => {
          for (const store of stores) db.createObjectStore(store, { keyPath: 'id' });
          if (from === 4) {
            db.createObjectStore('versions', { keyPath: ['of', 'seq', 'at'] });
            db.createObjectStore('bases', { keyPath: 'id' });
          }
        },
      });
      for (const store of stores) await old.put(store, { id: 'x', site: store });
      old.close();
      const db = await openDevice(name);
      const all = ['sites', 'entries', 'files', 'answers', 'versions', 'stamps', 'teams'] as const;
      expect([...db.objectStoreNames].toSorted()).toEqual([...all].toSorted());
      for (const store of all)
        expect(await db.getAll(store)).toEqual(stores.includes(store) ? [{ id: 'x', site: store }] : []);
      db.close();
    },
  );

  it('does not write over what somebody else wrote meanwhile', async () => {
    await saveSite(siteOf('two', 'first'), START);
    const seen = (await readSite('two'))?.seq ?? null;
    await edit('two', 'by the other', START + 1);
    const refused = await saveSiteAfter({
      site: siteOf('two', 'mine'),
      others: [],
      seq: seen,
      now: START + 2,
    });
    expect(refused).toBeNull();
    expect(await loadSite('two')).toMatchObject({ site: { name: 'by the other' } });
    // a site that nobody has seen is not there to be written over either
    expect(
      await saveSiteAfter({ site: siteOf('two', 'blind'), others: [], seq: null, now: START }),
    ).toBeNull();
  });

  it('puts a version by every ten minutes, also when the clock is set back, and keeps a fair spread of them', async () => {
    await saveSite(siteOf('v'), START);
    await edit('v', 'soon after', START + 1000);
    expect(await listVersions('v')).toHaveLength(0);
    await edit('v', 'later', START + VERSION_SPACING_MS);
    expect(await listVersions('v')).toHaveLength(1);
    await edit('v', 'clock set back by a year', START - 365 * DAY_MS);
    expect(await listVersions('v')).toHaveLength(2);
    for (let n = 1; n <= 70; n++) await edit('v', `edit ${n}`, START + n * 2 * VERSION_SPACING_MS);
    const versions = await listVersions('v');
    expect(versions).toHaveLength(MOST_VERSIONS);
    const first = versions.at(-1);
    expect(first).toEqual({ seq: 2, at: START + 1000 });
    // the last ten are all there
    expect(versions.slice(0, 10).map((v) => v.seq)).toEqual(Array.from({ length: 10 }, (_, i) => 73 - i));
  });

  it('keeps versions that wait for a choice with the site, whoever writes it', async () => {
    const others = [{ place: ['name'], other: 'By the crew' }];
    await saveSite(siteOf('w'), START);
    await saveSiteAfter({ site: siteOf('w'), others, seq: 1, now: START });
    await saveSite(siteOf('w', 'imported anew'), START);
    expect((await readSite('w'))?.others).toEqual(others);
  });

  it('remembers which write was downloaded', async () => {
    await saveSite(siteOf('d'), START);
    await markDownloaded('d');
    const line = async () => (await listSites(START)).sites.find((e) => e.id === 'd');
    expect(await line()).toMatchObject({ seq: 1, downloadedSeq: 1 });
    await edit('d', 'changed', START);
    expect(await line()).toMatchObject({ seq: 2, downloadedSeq: 1 });
  });

  it('takes a site away with what a crew found there, but no picture that another site names', async () => {
    const found = {
      id: 'w1',
      about: { is: 'place' as const },
      state: 'found' as const,
      by: '',
      at: '2026-05-20T12:00:00-05:00',
      note: '',
      photos: ['shared'],
    };
    await saveSite(siteOf('gone'), START);
    await saveSite({ ...siteOf('stays'), asFound: [found] }, START);
    const db = await database();
    const picture = {
      site: 'gone',
      name: 'p.jpg',
      widthPx: 1,
      heightPx: 1,
      addedAt: START,
      blob: new Blob(),
    };
    for (const id of ['own', 'shared', 'unsent']) await db.put('files', { ...picture, id });
    // a crew's answer on another site has not been taken over there yet
    await db.put('answers', { id: 'a1', site: 'gone', answer: { id: 'a1' }, savedAt: START });
    const unsent = { id: 'a2', found: [{ ...found, photos: ['unsent'] }] };
    await db.put('answers', { id: 'a2', site: 'stays', answer: unsent, savedAt: START });
    await removeSite('gone');
    expect(await db.getAllKeys('answers')).toEqual(['a2']);
    const kept = await db.getAllKeys('files');
    expect(kept.filter((id) => ['own', 'shared', 'unsent'].includes(id))).toEqual(['shared', 'unsent']);
    expect(await loadSite('gone')).toBeNull();
  });

  it('lets a site rest in the bin for 30 days, and does not believe a clock that jumps ahead for an hour', async () => {
    await saveSite(siteOf('b'), START);
    await binSite('b', START);
    const isThere = async (now: number) => (await listSites(now)).bin.some((e) => e.id === 'b');
    expect(await isThere(START + 29 * DAY_MS)).toBe(true);
    expect(await isThere(START + 400 * DAY_MS)).toBe(true); // the clock jumps ahead
    expect(await isThere(START + 3600_000)).toBe(true); // and is set right
    expect(await isThere(START + 30 * DAY_MS + 1000)).toBe(true);
    expect(await isThere(START + 31 * DAY_MS + 2000)).toBe(false);
    expect(await loadSite('b')).toBeNull();
    expect(await listVersions('b')).toEqual([]);
  });
});
