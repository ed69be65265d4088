import { type InTheWay, standsInTheWay } from '@footmark/dig';
import type { RunsFit, Site } from '@footmark/site';
import { useFit } from '../fit/fitSession';
import { LastSites } from '../session/lastSites';
import { derivedFrom, useSite } from '../session/siteSession';
import { today } from '../session/today';

type Known = { readonly fit: RunsFit | null; readonly day: string; readonly inTheWay: InTheWay };

const diggingOf = new LastSites<Known>();

/** What stands in the way, computed once for each of the last states of a site, each fit of it and each day: tickets run out. */
export function diggingFrom(site: Site, fit: RunsFit | null): InTheWay {
  const known = diggingOf.get(site);
  const day = today();
  if (known !== undefined && known.fit === fit && known.day === day) return known.inTheWay;
  const inTheWay = standsInTheWay(site, derivedFrom(site), fit, day);
  diggingOf.set(site, { fit, day, inTheWay });
  return inTheWay;
}

/** What stands in the way on the open site. */
export function useDigging(): InTheWay {
  const site = useSite();
  const { fit } = useFit();
  return diggingFrom(site, fit);
}
