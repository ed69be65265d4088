import { type NothingAsked, type RerouteAsk, requestOf, type Way, waysOf } from '@footmark/reroute';
import { type FoundRoutes, findRoutes } from '@footmark/route';
import { derive, type Site } from '@footmark/site';

/** What is looked for: on which state of a site, and the day on which tickets hold. */
export type WaysAsked = { readonly site: Site; readonly ask: RerouteAsk; readonly today: string };

/** All ways that were found, and what the search for new routes came to; `failed` when the computation broke down. */
export type WaysFound =
  | {
      readonly is: 'found';
      readonly ways: readonly Way[];
      readonly routes: FoundRoutes;
    }
  | { readonly is: 'nothing'; readonly why: NothingAsked }
  | { readonly is: 'failed' };

/** Of all that is done, what has begun once the site is derived, and the search; the rest is trying the ways. */
const BEGUN = 0.1;
const SEARCH = 0.6;

/** Looks for routes and tries every way on the site. Never throws. */
export function lookForWays(
  { site, ask, today }: WaysAsked,
  onProgress?: (share: number) => void,
): WaysFound {
  try {
    const derived = derive(site);
    const rerouting = requestOf(site, derived, ask);
    if (!rerouting.ok) return { is: 'nothing', why: rerouting.code };
    onProgress?.(BEGUN);
    const searched = (share: number) => onProgress?.(BEGUN + SEARCH * share);
    const found = findRoutes(rerouting.value.request, { onProgress: searched });
    if (found.is === 'stopped') return { is: 'failed' };
    const routes = found.is === 'found' ? found.routes : [];
    return { is: 'found', ways: waysOf(site, derived, ask, rerouting.value, routes, today), routes: found };
  } catch {
    return { is: 'failed' };
  }
}
