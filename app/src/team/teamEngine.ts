import { documentIdOf, exchangeSite, siteOfDocument } from '@footmark/team';
import PouchDB from 'pouchdb-browser';
import type { DeviceDatabase } from '../storage/database';
import type { SiteEntry, StoredTeam } from '../storage/records';
import { onSiteNews } from '../storage/siteNews';
import { deviceForTeam } from './deviceForTeam';
import { remoteDatabase } from './remoteDatabase';
import { readSeen, writeSeen } from './seenChanges';
import { fileOfDocument, sendFiles, takeFile } from './teamFiles';
import { replicaName } from './teamRecord';
import { NO_TEAM, type TeamState, type TeamStatus } from './teamStatus';
import { workQueue } from './workQueue';

/** Documents that go in one request: few, so that a slow line shows progress and a broken one loses little. */
const BATCH = { batch_size: 20, batches_limit: 2 } as const;
/** The server is tried again after this long at most (ms). */
const MOST_PAUSE_MS = 15_000;
/** A site that is being edited goes out this often at most, and what failed is tried again after it (ms). */
const EDITING_MS = 2000;
/** Status is told this often at most (ms). */
const STATUS_MS = 200;
/** Older revisions of a document that are kept here; nothing is read from them. */
const REVISIONS_KEPT = 1;

/** Replicates with the team's server, and exchanges between the replica and the device, until the server turns us away. */
export async function runTeam(
  db: DeviceDatabase,
  team: StoredTeam,
  say: (status: TeamStatus) => void,
): Promise<void> {
  const replica = new PouchDB(replicaName(team.url), { adapter: 'idb' });
  const device = deviceForTeam(db, () => team.shareAll);
  const [unreadable, tooLarge] = [new Set<string>(), new Set<string>()];
  let status: TeamStatus = { ...NO_TEAM, state: 'starting' };
  let coming = 0;
  let telling = false;
  const tell = (change: Partial<TeamStatus> = {}) => {
    status = { ...status, ...change };
    if (telling) return;
    telling = true;
    setTimeout(() => {
      telling = false;
      const counts = { unreadable: unreadable.size, tooLarge: tooLarge.size };
      say({ ...status, ...counts, toDo: coming + queue.size });
    }, STATUS_MS);
  };

  const exchange = async (id: string) => {
    const [file, site] = [fileOfDocument(id), siteOfDocument(id)];
    if (file !== null) await takeFile(db, replica, file);
    if (site === null) return;
    const outcome = await exchangeSite(device, replica, site, {
      now: Date.now(),
      newWriter: () => crypto.randomUUID(),
    });
    if (outcome === 'busy') throw new Error('others write all the while');
    if (outcome === 'unreadable') unreadable.add(site);
    if (outcome === 'too-large') tooLarge.add(site);
    if (outcome === 'sent' || outcome === 'merged') {
      await sendFiles(db, replica, site);
      await replica.compactDocument(id, REVISIONS_KEPT);
    }
  };

  let heard = await readSeen(replica);
  const queue = workQueue(
    async (id) => {
      try {
        await exchange(id);
        tell({ done: status.done + 1 });
      } catch (error) {
        if (error instanceof DOMException && error.name === 'QuotaExceededError') tell({ state: 'full' });
        throw error;
      }
    },
    async (well) => {
      tell();
      if (well) await writeSeen(replica, heard).catch(() => {}); // then it is taken in twice, which changes nothing
    },
    EDITING_MS,
  );

  const isWaiting = (entry: SiteEntry | undefined): entry is SiteEntry =>
    entry !== undefined &&
    (entry.team === true || team.shareAll) &&
    entry.exchangedSeq !== (entry.seq ?? 0) &&
    !tooLarge.has(entry.id);
  /** What was written here while the server was away goes out once what others wrote has come in. */
  const sendWaiting = async () => {
    for (const entry of await db.getAll('entries')) if (isWaiting(entry)) queue.add(documentIdOf(entry.id));
  };

  const changes = replica
    .changes({ live: true, since: heard, batch_size: 100 })
    .on('change', ({ id, seq }: { id: string; seq: number }) => {
      heard = seq;
      queue.add(id);
    });
  const remote = remoteDatabase(team, (answer) => {
    if (answer === 'answer') tell({ lastContact: Date.now() });
    else stop(answer);
  });
  const sync = PouchDB.sync(replica, remote, {
    live: true,
    retry: true,
    ...BATCH,
    back_off_function: (delay) => (delay === 0 ? 1000 : Math.min(MOST_PAUSE_MS, delay * 2)),
  });
  let inStep = false;
  sync.pull.on('change', ({ pending }: { pending?: number }) => {
    coming = pending ?? 0;
    tell({ state: 'exchanging' });
  });
  sync.push.on('change', () => tell({ state: 'exchanging' }));
  sync.push.on('paused', () => tell(inStep ? { state: 'in-step' } : {}));
  sync.pull.on('paused', (error: unknown) => {
    const arrived = error === undefined || error === null;
    coming = 0;
    tell({ state: arrived ? 'in-step' : 'offline' });
    if (arrived && !inStep) void sendWaiting();
    inStep = arrived;
  });
  sync.on('error', () => tell({ state: 'offline' }));

  const editing = new Set<string>();
  const stopNews = onSiteNews(({ id, seq }) => {
    if (seq === null || editing.has(id)) return;
    editing.add(id);
    setTimeout(async () => {
      editing.delete(id);
      tooLarge.delete(id);
      if (inStep && isWaiting(await db.get('entries', id))) queue.add(documentIdOf(id));
    }, EDITING_MS);
  });

  let end = () => {};
  const ended = new Promise<void>((resolve) => {
    end = resolve;
  });
  const stop = (why: TeamState) => {
    tell({ state: why });
    sync.cancel();
    changes.cancel();
    stopNews();
    setTimeout(end, 2 * STATUS_MS);
  };
  tell();
  await ended;
}
