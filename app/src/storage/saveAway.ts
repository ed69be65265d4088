import type { SaveAnswer, SaveQuestion } from './saveMessages';
import { type SaveAfter, saveSiteAfter } from './saveSiteAfter';
import { tellSiteNews } from './siteNews';

type Waiting = { readonly done: (seq: number | null) => void; readonly failed: (error: unknown) => void };

let worker: Worker | null = null;
/** A browser that gives no worker, or not its code: the page writes itself. */
let usable = true;
let jobs = 0;
const waiting = new Map<number, Waiting & { readonly save: SaveAfter }>();

/**
 * Writes a site as `saveSiteAfter` does, away from the page: what an edit makes the page compute and paint does not keep it from the
 * disk. Others are told.
 */
export async function saveAway(save: SaveAfter): Promise<number | null> {
  const seq = readyToSave() ? await ask(save) : await saveSiteAfter(save);
  if (seq !== null) tellSiteNews({ id: save.site.id, seq });
  return seq;
}

/** Starts the worker, so that the first write need not wait for it; false: there is none. */
export function readyToSave(): boolean {
  if (!usable || worker !== null) return usable;
  try {
    worker = new Worker(new URL('./saveWorker.ts', import.meta.url), { type: 'module' });
  } catch {
    usable = false;
    return false;
  }
  worker.onmessage = ({ data }: MessageEvent<SaveAnswer>) => {
    const job = waiting.get(data.job);
    waiting.delete(data.job);
    if (data.is === 'done') job?.done(data.seq);
    else job?.failed(new DOMException('the device did not take the site', data.name));
  };
  worker.onerror = inPage;
  return true;
}

function ask(save: SaveAfter): Promise<number | null> {
  jobs += 1;
  const job = jobs;
  return new Promise((done, failed) => {
    waiting.set(job, { done, failed, save });
    const question: SaveQuestion = { job, save };
    worker?.postMessage(question);
  });
}

/** The worker is not to be had: what it was asked, and all that follows, is done here. */
function inPage(): void {
  usable = false;
  worker?.terminate();
  worker = null;
  for (const [job, { done, failed, save }] of waiting) {
    waiting.delete(job);
    saveSiteAfter(save).then(done, failed);
  }
}
