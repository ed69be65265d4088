import { type ByMoved, whileMoved } from '@footmark/dig';
import type { Places } from '@footmark/site';
import { create } from 'zustand';
import { currentFit } from '../fit/fitSession';
import { currentSite, derivedFrom } from '../session/siteSession';
import { diggingFrom } from './digging';

/** What concerns the things that a hand moves, told anew with every move; null while none is moved. */
export const useInMotion = create<{ readonly byMoved: ByMoved | null }>()(() => ({ byMoved: null }));

/** Begins to tell what concerns some things while they are moved: with each of their places, to those who show it. */
export function tellWhileMoved(ids: readonly string[]): (places: Places) => ByMoved {
  const site = currentSite();
  const tell = whileMoved(site, derivedFrom(site), new Set(ids), diggingFrom(site, currentFit().fit));
  return (places) => {
    const byMoved = tell(places);
    useInMotion.setState({ byMoved });
    return byMoved;
  };
}

/** They lie still again. */
export function endOfMotion(): void {
  useInMotion.setState({ byMoved: null });
}
