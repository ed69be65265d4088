import { type Derived, derive, type Site, soundEdit } from '@footmark/site';
import { createContext, useContext } from 'react';
import { temporal } from 'zundo';
import { create, useStore } from 'zustand';
import { words } from '../words';
import { LastSites } from './lastSites';
import { stopLooking, useLooking } from './looking';
import { notify } from './workbench';

type SiteSession = {
  /** The open site, null on the first screen. */
  readonly site: Site | null;
  /** What the last edit did, as the history names it. */
  readonly lastEdit: string;
};

/** Steps of undo that are kept. */
const HISTORY_STEPS = 500;

/** The open site and its history. The document changes here and nowhere else. */
export const useSiteSession = create<SiteSession>()(
  temporal((): SiteSession => ({ site: null, lastEdit: '' }), {
    limit: HISTORY_STEPS,
    equality: (a, b) => a.site === b.site,
  }),
);

/** Opens a site, or none, with an empty history. */
export function openInSession(site: Site | null): void {
  stopLooking();
  useSiteSession.setState({ site, lastEdit: '' });
  useSiteSession.temporal.getState().clear();
}

/**
 * Applies an edit to the open site under a name that the history shows; one call is one step of undo, none where nothing changes. An edit
 * that would leave the site unsound (a point measured, by way of others, from itself) or with a value that its file cannot hold is not
 * made; false then, and a notice says why.
 */
export function edit(name: string, change: (site: Site) => Site): boolean {
  const { site } = useSiteSession.getState();
  if (site === null) return false;
  if (useLooking.getState().site !== null) {
    notify('Another version of the site is shown. Go back to how it is now to change it.');
    return false;
  }
  const done = soundEdit(site, change(site));
  if (!done.ok) {
    const [problem] = done.problems;
    if (problem !== undefined) notify(words.editProblemText(problem, site.units));
  } else if (done.site !== site) useSiteSession.setState({ site: done.site, lastEdit: name });
  return done.ok;
}

/** Puts another state of the open site in its place, which is no step of its own; `rebase` makes the states of its history fit. */
export function replaceInSession(site: Site, rebase: (past: Site) => Site): void {
  const { temporal } = useSiteSession;
  const fitting = (step: Partial<SiteSession>) => (step.site ? { ...step, site: rebase(step.site) } : step);
  const { pastStates, futureStates } = temporal.getState();
  temporal.getState().pause();
  useSiteSession.setState({ site });
  temporal.getState().resume();
  temporal.setState({ pastStates: pastStates.map(fitting), futureStates: futureStates.map(fitting) });
}

/** Makes the version that is looked at the site again: one step, which can be undone. */
export function bringBackLooked(name: string): void {
  const { site } = useLooking.getState();
  stopLooking();
  if (site !== null) edit(name, () => site);
}

/** Takes back the last step, or several at once. */
export function undo(steps = 1): void {
  stopLooking();
  if (steps > 0) useSiteSession.temporal.getState().undo(steps);
}

/** Does again what was undone last, or several steps at once. */
export function redo(steps = 1): void {
  stopLooking();
  if (steps > 0) useSiteSession.temporal.getState().redo(steps);
}

/** Names of the steps that undo and redo would take; null where there is none. */
export function useHistory(): { readonly undo: string | null; readonly redo: string | null } {
  const lastEdit = useSiteSession((s) => s.lastEdit);
  const canUndo = useStore(useSiteSession.temporal, (t) => t.pastStates.length > 0);
  const redoName = useStore(useSiteSession.temporal, (t) => t.futureStates.at(-1)?.lastEdit ?? null);
  return { undo: canUndo ? lastEdit : null, redo: redoName };
}

/** Names of the steps that were done, the last first, and of those that were undone, the furthest first. */
export function useHistorySteps(): { readonly done: readonly string[]; readonly undone: readonly string[] } {
  const lastEdit = useSiteSession((s) => s.lastEdit);
  const past = useStore(useSiteSession.temporal, (t) => t.pastStates);
  const future = useStore(useSiteSession.temporal, (t) => t.futureStates);
  const done =
    past.length === 0 ? [] : [...past.slice(1).map((s) => s.lastEdit ?? ''), lastEdit].toReversed();
  return { done, undone: future.map((s) => s.lastEdit ?? '') };
}

/** The site that parts follow which show an edit a moment after the plan does; null for those that show it with the plan. */
export const FollowedSite = createContext<Site | null>(null);

/** The open site, or the version of it that is looked at. Only screens that are shown with a site open call it. */
export function useSite(): Site {
  return useOfSite(itself);
}

const itself = (site: Site): Site => site;

/** A fact of that site: what asks is rendered anew when the fact is another. Not for one that is made anew each time it is asked for. */
export function useOfSite<Fact>(factOf: (site: Site) => Fact): Fact {
  const followed = useContext(FollowedSite);
  const looked = useLooking((l) => (followed === null ? l.site : null));
  // what follows hears nothing of the edit itself
  return useSiteSession(({ site: open }) => {
    const site = followed ?? looked ?? open;
    if (site === null) throw new Error('no site is open');
    return factOf(site);
  });
}

/** The same outside of a component. */
export function currentSite(): Site {
  const site = useLooking.getState().site ?? useSiteSession.getState().site;
  if (site === null) throw new Error('no site is open');
  return site;
}

const derivedOf = new LastSites<Derived>();

/** What follows from a site; computed once for each state of it while that is one of the last. */
export function derivedFrom(site: Site): Derived {
  const known = derivedOf.get(site);
  if (known !== undefined) return known;
  const derived = derive(site);
  derivedOf.set(site, derived);
  return derived;
}

export function useDerived(): Derived {
  return derivedFrom(useSite());
}

/** As `useOfSite`, of what follows from the site. */
export function useOfDerived<Fact>(factOf: (derived: Derived, site: Site) => Fact): Fact {
  return useOfSite((site) => factOf(derivedFrom(site), site));
}
