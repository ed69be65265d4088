import { recall, remember } from '../session/onDevice';

const KEY = 'footmark-has-sites';

/**
 * Whether sites that were on this device are gone without anybody having deleted them: the browser has cleared what it stored.
 * `count`: the sites and those in the bin now; `purged`: how many of the bin have just gone for good.
 */
export function sitesCleared(count: number, purged: number): boolean {
  const had = recall(KEY) === 'yes';
  if (count > 0) remember(KEY, 'yes');
  else if (purged > 0) remember(KEY, 'no');
  return had && count === 0 && purged === 0;
}

/** They are known to be gone. */
export function forgetCleared(): void {
  remember(KEY, 'no');
}
