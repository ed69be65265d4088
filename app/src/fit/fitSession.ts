import type { RunsFit, Site } from '@footmark/site';
import { create } from 'zustand';
import { useShallow } from 'zustand/react/shallow';
import { type Desk, workerDesk } from '../session/desk';
import { useSiteSession } from '../session/siteSession';
import { knownFits } from './knownFits';
import type { Weighed } from './weigh';

type FitSession = {
  /** The last answer for the open site, also while it is being weighed again; null without runs and before the first answer. */
  readonly fit: RunsFit | null;
  /** The state of the site that the answer is for. */
  readonly ofSite: Site | null;
  /** The site has changed since, and is being weighed again. */
  readonly busy: boolean;
  /** The last attempt broke down; `fit` is of an earlier state or null. */
  readonly failed: boolean;
};

const NOTHING: FitSession = { fit: null, ofSite: null, busy: false, failed: false };

/** Typing and dragging pause for less than this (ms). */
const PAUSE_MS = 150;

const useFitSession = create<FitSession>()(() => NOTHING);

/** All runs and lines of the open site weighed together. Not part of the document. */
export function useFit(): Pick<FitSession, 'fit' | 'ofSite'> {
  return useFitSession(useShallow(({ fit, ofSite }) => ({ fit, ofSite })));
}

/** Whether that is being done, and whether it broke down. */
export function useWeighing(): Pick<FitSession, 'busy' | 'failed'> {
  return useFitSession(useShallow(({ busy, failed }) => ({ busy, failed })));
}

/** The same outside of a component. */
export function currentFit(): FitSession {
  return useFitSession.getState();
}

/** Weighs the open site whenever it has changed and has runs. */
export function startWeighing(
  desk: Desk<Site, Weighed> = workerDesk(
    () => new Worker(new URL('./fitWorker.ts', import.meta.url), { type: 'module' }),
    weighHere,
  ),
): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const take = (site: Site | null) => {
    clearTimeout(timer);
    desk.drop();
    const { ofSite } = currentFit();
    if (site === null || site.runs.length === 0) {
      useFitSession.setState(NOTHING);
      return;
    }
    const known = knownFits.get(site);
    if (known !== undefined) {
      useFitSession.setState({ fit: known, ofSite: site, busy: false, failed: false });
      return;
    }
    const isSame = ofSite?.id === site.id;
    if (!isSame) useFitSession.setState(NOTHING);
    useFitSession.setState({ busy: true });
    timer = setTimeout(() => ask(site), isSame ? PAUSE_MS : 0);
  };
  const ask = (site: Site) =>
    desk.ask(site, (weighed) => {
      if (weighed.failed) useFitSession.setState({ busy: false, failed: true });
      else {
        knownFits.set(site, weighed.fit);
        useFitSession.setState({ fit: weighed.fit, ofSite: site, busy: false, failed: false });
      }
    });
  useSiteSession.subscribe((now, before) => now.site !== before.site && take(now.site));
  take(useSiteSession.getState().site);
}

/** Where there is no worker. */
async function weighHere(site: Site): Promise<Weighed> {
  try {
    return (await import('./weigh')).weigh(site);
  } catch {
    return { failed: true };
  }
}
