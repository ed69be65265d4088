import { type InTheWay, standsInTheWay } from '@footmark/dig';
import type { RunsFit, Site } from '@footmark/site';
import { useFit } from '../fit/fitSession';
import { today } from '../runs/today';
import { derivedFrom, useSite } from '../session/siteSession';

const diggingOf = new WeakMap<Site, { readonly fit: RunsFit | null; readonly inTheWay: InTheWay }>();

/** What stands in the way, computed once for each state of a site and each fit of it. */
export function diggingFrom(site: Site, fit: RunsFit | null): InTheWay {
  const known = diggingOf.get(site);
  if (known !== undefined && known.fit === fit) return known.inTheWay;
  const inTheWay = standsInTheWay(site, derivedFrom(site), fit, today());
  diggingOf.set(site, { fit, inTheWay });
  return inTheWay;
}

/** What stands in the way on the open site. */
export function useDigging(): InTheWay {
  const site = useSite();
  const { fit } = useFit();
  return diggingFrom(site, fit);
}
