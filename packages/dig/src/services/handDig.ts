import { distance, polylineLength } from '@footmark/geometry';
import { type Derived, type DerivedFeature, ruleValue, type Site } from '@footmark/site';
import { toleranceZone } from '../clearances/clearanceRule';
import type { DigOutline } from '../clearances/digOutline';
import { clearanceTo } from '../clearances/edgeClearance';
import { halfWidthOf } from '../clearances/face';
import { pathLegs } from '../clearances/pathLegs';
import { type NearStretch, stretchesNear } from '../clearances/stretchesNear';
import { outlineSubject } from '../clearances/subject';

/** Where a trench along a path would be in the tolerance zone of a service or main (plan m), and how much of it in all. */
export type PathInZone = {
  readonly path: string;
  readonly feature: string;
  readonly stretches: readonly NearStretch[];
  readonly length: number;
};

/** A dig that reaches into the tolerance zone of a service or main. Metres. */
export type DigInZone = {
  readonly dig: string;
  readonly feature: string;
  readonly kind: 'service' | 'main';
  /** From the top edge to the outside of the service, negative where it runs through the dig. */
  readonly distance: number;
  readonly at: { readonly x: number; readonly y: number };
  /** Of a trench: the length along it, at the ground, that is dug by hand; null for a pit, and where only what lies outside of a bend is in the zone. */
  readonly handDig: number | null;
  /** Of a trench: how long it is in all, at the ground; null for a pit. */
  readonly length: number | null;
  /** How deep the dig is is not known all along, and it may reach further. */
  readonly atLeast: boolean;
  /** From the bottom of the dig down to the top of the service, negative when the dig goes deeper; null where a depth is not known. */
  readonly below: number | null;
};

/** The services and mains of a site. */
export function servicesIn({ features }: Derived): readonly DerivedFeature[] {
  return [...features.values()].filter(
    ({ feature }) => feature.kind === 'service' || feature.kind === 'main',
  );
}

/** Half of the tolerance zone's whole width (m): half the service and the rule's width beyond its outside. */
export function zoneHalfWidth(site: Site, service: DerivedFeature): number {
  return halfWidthOf(service) + toleranceZone(site);
}

/** For each path and service, as a trench of the rule's bottom width would have it. */
export function pathsInZones(site: Site, derived: Derived): readonly PathInZone[] {
  const halfWidth = ruleValue(site, 'bottomWidth') / 2;
  const services = servicesIn(derived);
  return [...derived.paths.values()].flatMap((on) => {
    const legs = pathLegs(on);
    return services.flatMap((service) => {
      const stretches = stretchesNear(legs, halfWidth, service.outline, zoneHalfWidth(site, service));
      if (stretches.length === 0) return [];
      return [{ path: on.path.id, feature: service.feature.id, stretches, length: lengthOf(stretches) }];
    });
  });
}

/** For each dig and each service in whose zone it is; a dig in several pieces by the nearest of them. */
export function digsInZones(
  site: Site,
  derived: Derived,
  outlines: readonly DigOutline[],
): readonly DigInZone[] {
  const zone = toleranceZone(site);
  const required = { byRule: new Map(), mainDiameter: Infinity, nearby: zone, widest: zone };
  const found = new Map<string, DigInZone>();
  for (const outline of outlines) {
    const subject = outlineSubject(outline);
    if (subject === null) continue;
    for (const service of servicesIn(derived)) {
      const { feature } = service;
      if (feature.kind !== 'service' && feature.kind !== 'main') continue;
      const near = clearanceTo(subject, service, required);
      const key = `${outline.id} ${feature.id}`;
      if (near === null || near.distance >= (found.get(key)?.distance ?? Infinity)) continue;
      const { depth } = feature.fields;
      found.set(key, {
        dig: outline.id,
        feature: feature.id,
        kind: feature.kind,
        distance: near.distance,
        at: near.at,
        handDig: alongTrench(outline, service.outline, zoneHalfWidth(site, service)),
        length: outline.along === null ? null : polylineLength(outline.along.line),
        atLeast: outline.depth === null,
        below: depth === undefined || outline.depth === null ? null : depth - outline.depth,
      });
    }
  }
  return [...found.values()];
}

function alongTrench(
  { along }: DigOutline,
  service: DerivedFeature['outline'],
  reach: number,
): number | null {
  if (along === null) return null;
  const { line: points, halfWidth } = along;
  const stations = [0];
  for (const [i, p] of points.slice(1).entries())
    stations.push((stations[i] ?? 0) + distance(points[i] ?? p, p));
  const length = lengthOf(stretchesNear({ points, stations }, halfWidth, service, reach));
  return length > 0 ? length : null;
}

function lengthOf(stretches: readonly NearStretch[]): number {
  return stretches.reduce((sum, { from, to }) => sum + to - from, 0);
}
