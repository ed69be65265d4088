import { type Derived, derive, fitRuns, type RunsFit, type Site } from '@footmark/site';

/** What came of weighing a site; `failed` when the computation broke down, which is a fault of the program and not of the site. */
export type Weighed = { readonly fit: RunsFit; readonly failed: false } | { readonly failed: true };

/** Weighs all that is known of a site's runs; `derived` when it is known already. Never throws. */
export function weigh(site: Site, derived?: Derived): Weighed {
  try {
    const fit = fitRuns(site, derived ?? derive(site));
    return fit === null ? { failed: true } : { fit, failed: false };
  } catch {
    return { failed: true };
  }
}
