import type { Site } from '@footmark/site';
import { create } from 'zustand';
import { saveSite } from '../storage/siteStore';
import { useSiteSession } from './siteSession';

/** Whether what is on the screen is also on the device. `failed` keeps the reason. */
export type SaveState =
  | { readonly is: 'saved' }
  | { readonly is: 'saving' }
  | { readonly is: 'failed'; readonly reason: string };

export const useSaveState = create<SaveState>()(() => ({ is: 'saved' }));

let pending: Site | null = null;
let writing = false;

/** Writes every new state of the open site to the device; while one write is under way, only the latest waits. */
export function startAutosave(): () => void {
  return useSiteSession.subscribe((now, before) => {
    if (now.site === null || now.site === before.site || now.site.id !== before.site?.id) return;
    pending = now.site;
    void writePending();
  });
}

/** Tries again after a failure. */
export function saveAgain(): void {
  pending = useSiteSession.getState().site;
  void writePending();
}

async function writePending(): Promise<void> {
  if (writing) return;
  writing = true;
  useSaveState.setState({ is: 'saving' }, true);
  try {
    while (pending !== null) {
      const site = pending;
      pending = null;
      await saveSite(site, Date.now());
    }
    useSaveState.setState({ is: 'saved' }, true);
  } catch (error) {
    useSaveState.setState({ is: 'failed', reason: error instanceof Error ? error.message : '' }, true);
  } finally {
    writing = false;
  }
}
