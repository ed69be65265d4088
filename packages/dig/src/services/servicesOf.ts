import type { Derived, Site } from '@footmark/site';
import type { DigOutline } from '../clearances/digOutline';
import { type DigInZone, digsInZones, type PathInZone, pathsInZones } from './handDig';
import { type OneCallState, oneCallState } from './oneCallState';
import { sayOfServices } from './sayOfServices';
import { type ServiceCrossing, serviceCrossings } from './serviceCrossings';
import type { ServiceFinding } from './serviceFinding';

/** What other services mean to pipes and digs. */
export type Services = {
  /** Path by path, by station. */
  readonly crossings: readonly ServiceCrossing[];
  readonly paths: readonly PathInZone[];
  readonly digs: readonly DigInZone[];
  readonly oneCall: OneCallState;
  readonly findings: readonly ServiceFinding[];
};

/** `today`: an ISO day, which the ticket is held against. */
export function servicesOf(
  site: Site,
  derived: Derived,
  outlines: readonly DigOutline[],
  today: string,
): Services {
  const found = {
    crossings: [...derived.paths.values()].flatMap((on) => serviceCrossings(site, derived, on)),
    paths: pathsInZones(site, derived),
    digs: digsInZones(site, derived, outlines),
    oneCall: oneCallState(site.digging.oneCall, today),
  };
  return { ...found, findings: sayOfServices(site, derived, found) };
}
