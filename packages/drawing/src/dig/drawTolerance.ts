import { toleranceZone } from '@footmark/dig';
import { stripRegion } from '@footmark/geometry';
import type { Derived, Site } from '@footmark/site';
import type { LayerBuilder } from '../layerBuilder';
import { services } from '../services';
import { fillRing } from './ringsOf';

const BAND = 0.12;

/** Faint bands along services, as wide as the digging there is by hand. */
export function drawTolerance(site: Site, { features }: Derived, into: LayerBuilder): void {
  const beyond = toleranceZone(site);
  for (const { feature, outline } of features.values()) {
    if (feature.kind !== 'service' || outline.length < 2) continue;
    const half = (feature.fields.diameter ?? 0) / 2 + beyond;
    const band = stripRegion(outline.map((at) => ({ at, left: half, right: half })));
    const { carries } = feature.fields;
    const ink = carries === undefined ? 'ink' : services[carries].ink;
    into.add('excavation', {
      kind: 'line',
      points: fillRing(band),
      closed: true,
      fill: { ink, opacity: BAND },
    });
  }
}
