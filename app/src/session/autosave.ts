import type { Site } from '@footmark/site';
import { create } from 'zustand';
import { readyToSave, saveAway } from '../storage/saveAway';
import { onSiteNews } from '../storage/siteNews';
import type { SiteRead } from '../storage/siteStore';
import { type KnownOnDevice, meetDevice } from './meetDevice';
import { oncePainted } from './oncePainted';
import { otherVersionsOf, setOtherVersions, useOtherVersions } from './otherVersions';
import { askToKeep } from './persistence';
import { useSiteSession } from './siteSession';

/** Why a write failed: the device or the browser's share of it is full, or storage does not answer at all. */
export type SaveProblem = 'full' | 'blocked';

/** What is not on the device yet, by site: the latest state of each. */
type SaveState = {
  readonly waiting: ReadonlyMap<string, Site>;
  /** Sites whose last write failed; they stay waiting. */
  readonly failed: ReadonlySet<string>;
  /** Why the last failed write did. */
  readonly problem: SaveProblem | null;
};

export const useSaveState = create<SaveState>()(() => ({
  waiting: new Map(),
  failed: new Set(),
  problem: null,
}));

/** What this tab knows the device to have. */
const known = new Map<string, KnownOnDevice>();
/** Sites that others have written since. */
const behind = new Set<string>();
let writing: Promise<void> | null = null;
let takingOver = false;

/**
 * Writes every new state of the open site to the device, as soon as the edit has been painted: with few processors it would be seen later for the
 * writing. At once where the site is left or the page goes out of sight. While a write is under way only the latest state of each site waits; a
 * site that could not be written is kept until it can, also when it has been left. What others write of the open site is taken in.
 */
export function startAutosave(): () => void {
  const leaving = (event: BeforeUnloadEvent) => {
    if (useSaveState.getState().waiting.size > 0) event.preventDefault();
  };
  const unseen = () => {
    if (document.visibilityState === 'hidden') void writeWaiting();
  };
  window.addEventListener('beforeunload', leaving);
  document.addEventListener('visibilitychange', unseen);
  const stops = [
    useSiteSession.subscribe((now, before) => {
      if (takingOver || now.site === before.site) return;
      if (now.site !== null && now.site.id === before.site?.id) enqueue(now.site);
      else void writeWaiting();
    }),
    useOtherVersions.subscribe(() => {
      const { site } = useSiteSession.getState();
      if (!takingOver && site !== null && otherVersionsOf(site.id) !== known.get(site.id)?.others)
        enqueue(site);
    }),
    onSiteNews(({ id, seq }) => {
      if (useSiteSession.getState().site?.id !== id || known.get(id)?.seq === seq || seq === null) return;
      behind.add(id);
      void writeWaiting();
    }),
  ];
  return () => {
    for (const stop of stops) stop();
    window.removeEventListener('beforeunload', leaving);
    document.removeEventListener('visibilitychange', unseen);
  };
}

function enqueue(site: Site): void {
  useSaveState.setState(({ waiting, failed }) => ({
    waiting: new Map(waiting).set(site.id, site),
    // a new state is worth a new try
    failed: without(failed, site.id),
  }));
  oncePainted(() => void writeWaiting());
}

/** Says that this tab opens a site as the device has it. */
export function openedFromDevice(site: Site, { others, seq }: Pick<SiteRead, 'others' | 'seq'>): void {
  readyToSave();
  known.set(site.id, { site, others, seq });
  quietly(() => setOtherVersions(site.id, others));
}

/** Keeps a site in this tab alone, as its device could not take it. */
export function keepUnsaved(site: Site, error: unknown): void {
  useSaveState.setState(({ waiting, failed }) => ({
    waiting: new Map(waiting).set(site.id, site),
    failed: new Set(failed).add(site.id),
    problem: problemOf(error),
  }));
}

/** Tries again what failed. */
export function saveAgain(): void {
  useSaveState.setState({ failed: new Set() });
  void writeWaiting();
}

/** The latest state of a site that is not on the device yet, after writes under way have ended; null when the device has it. */
export async function unsavedStateOf(id: string): Promise<Site | null> {
  await writeWaiting();
  return useSaveState.getState().waiting.get(id) ?? null;
}

function writeWaiting(): Promise<void> {
  writing ??= writeAll().finally(() => {
    writing = null;
  });
  return writing;
}

async function writeAll(): Promise<void> {
  for (;;) {
    const [late] = behind;
    const site = late === undefined ? nextWaiting() : undefined;
    const id = late ?? site?.id;
    if (id === undefined) return;
    try {
      if (site === undefined) await takeIn(id);
      else await write(site);
    } catch (error) {
      useSaveState.setState(({ failed }) => ({ failed: new Set(failed).add(id), problem: problemOf(error) }));
    }
  }
}

async function write(site: Site): Promise<void> {
  const others = otherVersionsOf(site.id);
  const before = known.get(site.id);
  const seq = await saveAway({ site, others, seq: before?.seq ?? null, now: Date.now() });
  if (seq === null) {
    behind.add(site.id);
    return;
  }
  known.set(site.id, { site, others, seq });
  useSaveState.setState(({ waiting, failed }) => ({
    waiting: waiting.get(site.id) === site ? withoutKey(waiting, site.id) : waiting,
    failed: without(failed, site.id),
  }));
  askToKeep();
}

async function takeIn(id: string): Promise<void> {
  behind.delete(id);
  const met = await meetDevice(id, known.get(id), () => useSaveState.getState().waiting.get(id), quietly);
  if (met === null) {
    known.delete(id); // the next write brings it back
    return;
  }
  known.set(id, met.known);
  useSaveState.setState(({ waiting }) => ({
    waiting: met.settled ? withoutKey(waiting, id) : new Map(waiting).set(id, met.site),
  }));
}

/** What is put into the session from the device is not news to the device. */
function quietly(change: () => void): void {
  takingOver = true;
  try {
    change();
  } finally {
    takingOver = false;
  }
}

function nextWaiting(): Site | undefined {
  const { waiting, failed } = useSaveState.getState();
  return [...waiting.values()].find((site) => !failed.has(site.id));
}

function problemOf(error: unknown): SaveProblem {
  return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'blocked';
}

function withoutKey<Value>(map: ReadonlyMap<string, Value>, key: string): ReadonlyMap<string, Value> {
  const left = new Map(map);
  left.delete(key);
  return left;
}

function without(set: ReadonlySet<string>, key: string): ReadonlySet<string> {
  return new Set([...set].filter((each) => each !== key));
}
