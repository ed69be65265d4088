import { type RerouteAsk, type Treatment, usualAsk, type Way } from '@footmark/reroute';
import type { Site } from '@footmark/site';
import { create } from 'zustand';
import { workerDesk } from '../session/desk';
import { currentSite, derivedFrom } from '../session/siteSession';
import { today } from '../session/today';
import type { WaysAsked, WaysFound } from './lookForWays';

type WaysSession = {
  /** The site that is asked about, by its id, and what is asked; null before anybody has. */
  readonly siteId: string | null;
  readonly ask: RerouteAsk | null;
  readonly found: WaysFound | null;
  /** The state of the site and the ask that the answer is for. */
  readonly of: { readonly site: Site; readonly ask: RerouteAsk } | null;
  /** How much is done of what is being looked for; null while nothing is. */
  readonly progress: number | null;
  /** The way that is looked at, by its id. */
  readonly chosen: string | null;
};

const NOTHING: WaysSession = { siteId: null, ask: null, found: null, of: null, progress: null, chosen: null };

/** What is asked of a new pipe and what came of it. Not part of the document. */
export const useWays = create<WaysSession>()(() => NOTHING);

const desk = workerDesk<WaysAsked, WaysFound>(
  () => new Worker(new URL('./waysWorker.ts', import.meta.url), { type: 'module' }),
  lookHere,
);

/** Where there is no worker. */
async function lookHere(asked: WaysAsked): Promise<WaysFound> {
  try {
    return (await import('./lookForWays')).lookForWays(asked);
  } catch {
    return { is: 'failed' };
  }
}

/** What is asked on a site: as it was left, else what a crew lead would ask first. */
export function askOn(site: Site): RerouteAsk | null {
  const { siteId, ask } = useWays.getState();
  const same = siteId === site.id && ask !== null && site.paths.some((p) => p.id === ask.path);
  if (same) return ask;
  const usual = usualAsk(derivedFrom(site));
  useWays.setState({ ...NOTHING, siteId: site.id, ask: usual });
  return usual;
}

/** Asks about a pipe of a site, with all else as it was asked before. */
export function askAbout(site: Site, facts: Partial<RerouteAsk>): void {
  if (askOn(site) !== null) changeAsk(facts);
}

export function changeAsk(facts: Partial<RerouteAsk>): void {
  useWays.setState(({ ask }) => (ask === null ? {} : { ask: { ...ask, ...facts } }));
}

/** Treats a thing otherwise than usual; undefined: as usual again. */
export function treat(id: string, treatment: Treatment | undefined): void {
  const { ask } = useWays.getState();
  if (ask === null) return;
  const { [id]: _, ...others } = ask.treat;
  changeAsk({ treat: treatment === undefined ? others : { ...others, [id]: treatment } });
}

/** Looks for ways on the open site as it is asked now. */
export function startLooking(): void {
  const site = currentSite();
  const ask = askOn(site);
  if (ask === null) return;
  useWays.setState({ progress: 0 });
  desk.ask(
    { site, ask, today: today() },
    (found) => {
      const first = found.is === 'found' ? found.ways[0]?.id : undefined;
      useWays.setState({ found, of: { site, ask }, progress: null, chosen: first ?? null });
    },
    (progress) => useWays.setState({ progress }),
  );
}

export function stopLooking(): void {
  desk.drop();
  useWays.setState({ progress: null });
}

export function chooseWay(id: string): void {
  useWays.setState({ chosen: id });
}

/** Forgets the ways that were found; what is asked stays. */
export function clearWays(): void {
  useWays.setState({ found: null, of: null, chosen: null });
}

/** What the ways that are shown were found for; null once the site or what is asked has changed since. */
export function askedNow({ ask, of }: WaysSession, site: Site): RerouteAsk | null {
  return of !== null && of.site === site && of.ask === ask ? of.ask : null;
}

/** The ways that are shown and the chosen one among them; none while they are of another site. */
export function shownWays({ found, of }: WaysSession, site: Site): readonly Way[] {
  return found?.is === 'found' && of?.site.id === site.id ? found.ways : [];
}
