import type { Site } from '@footmark/site';
import { create } from 'zustand';
import { saveSite } from '../storage/siteStore';
import { useSiteSession } from './siteSession';

/** What is not on the device yet, by site: the latest state of each. */
type SaveState = {
  readonly waiting: ReadonlyMap<string, Site>;
  /** Sites whose last write failed; they stay waiting. */
  readonly failed: ReadonlySet<string>;
};

export const useSaveState = create<SaveState>()(() => ({ waiting: new Map(), failed: new Set() }));

let writing: Promise<void> | null = null;

/**
 * Writes every new state of the open site to the device. While a write is under way only the latest state of each site waits; a
 * site that could not be written is kept until it can, also when it has been left.
 */
export function startAutosave(): () => void {
  const leaving = (event: BeforeUnloadEvent) => {
    if (useSaveState.getState().waiting.size > 0) event.preventDefault();
  };
  window.addEventListener('beforeunload', leaving);
  const stop = useSiteSession.subscribe((now, before) => {
    if (now.site === null || now.site === before.site || now.site.id !== before.site?.id) return;
    const site = now.site;
    useSaveState.setState(({ waiting, failed }) => ({
      waiting: new Map(waiting).set(site.id, site),
      // a new state is worth a new try
      failed: new Set([...failed].filter((id) => id !== site.id)),
    }));
    void writeWaiting();
  });
  return () => {
    stop();
    window.removeEventListener('beforeunload', leaving);
  };
}

/** Tries again what failed. */
export function saveAgain(): void {
  useSaveState.setState({ failed: new Set() });
  void writeWaiting();
}

/** The latest state of a site that is not on the device yet, after writes under way have ended; null when the device has it. */
export async function unsavedStateOf(id: string): Promise<Site | null> {
  await writing;
  return useSaveState.getState().waiting.get(id) ?? null;
}

function writeWaiting(): Promise<void> {
  writing ??= writeAll().finally(() => {
    writing = null;
  });
  return writing;
}

async function writeAll(): Promise<void> {
  for (let next = nextWaiting(); next !== undefined; next = nextWaiting()) {
    const site = next;
    try {
      await saveSite(site, Date.now());
      useSaveState.setState(({ waiting, failed }) => ({
        waiting: waiting.get(site.id) === site ? without(waiting, site.id) : waiting,
        failed: new Set([...failed].filter((id) => id !== site.id)),
      }));
    } catch {
      useSaveState.setState(({ failed }) => ({ failed: new Set(failed).add(site.id) }));
    }
  }
}

function nextWaiting(): Site | undefined {
  const { waiting, failed } = useSaveState.getState();
  return [...waiting.values()].find((site) => !failed.has(site.id));
}

function without(waiting: ReadonlyMap<string, Site>, id: string): ReadonlyMap<string, Site> {
  const left = new Map(waiting);
  left.delete(id);
  return left;
}
