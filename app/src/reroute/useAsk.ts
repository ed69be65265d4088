import type { RerouteAsk } from '@footmark/reroute';
import { useEffect } from 'react';
import { useSite } from '../session/siteSession';
import { askOn, useWays } from './waysSession';

/** What is asked on the open site; null on a site without a pipe. */
export function useAsk(): RerouteAsk | null {
  const site = useSite();
  const { siteId, ask } = useWays();
  useEffect(() => void askOn(site), [site]);
  return siteId === site.id ? ask : null;
}
