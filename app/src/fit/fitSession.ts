import type { RunsFit, Site } from '@footmark/site';
import { create } from 'zustand';
import { type Desk, workerDesk } from '../session/desk';
import { derivedFrom, useSiteSession } from '../session/siteSession';
import { type Weighed, weigh } from './weigh';

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
export function useFit(): FitSession {
  return useFitSession();
}

/** The same outside of a component. */
export function currentFit(): FitSession {
  return useFitSession.getState();
}

const fitOf = new WeakMap<Site, RunsFit>();

/**
 * What a site comes to, weighed on the spot when no answer for just this state is there yet: for what leaves the device. Null when it
 * cannot be weighed.
 */
export function fitOfSite(site: Site): RunsFit | null {
  const known = fitOf.get(site);
  if (known !== undefined) return known;
  const weighed = weigh(site, derivedFrom(site));
  if (weighed.failed) return null;
  fitOf.set(site, weighed.fit);
  return weighed.fit;
}

/** Weighs the open site whenever it has changed and has runs. */
export function startWeighing(
  desk: Desk<Site, Weighed> = workerDesk(
    () => new Worker(new URL('./fitWorker.ts', import.meta.url), { type: 'module' }),
    (site: Site) => weigh(site),
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
    const known = fitOf.get(site);
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
        fitOf.set(site, weighed.fit);
        useFitSession.setState({ fit: weighed.fit, ofSite: site, busy: false, failed: false });
      }
    });
  useSiteSession.subscribe((now, before) => now.site !== before.site && take(now.site));
  take(useSiteSession.getState().site);
}
