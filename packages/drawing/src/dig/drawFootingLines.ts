import { type Excavation, footingOf, footingReach, standsOnFootings } from '@footmark/dig';
import { polylineToRing, ringArea, stripRegion } from '@footmark/geometry';
import { type Derived, ruleValue, type Site } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';

const LINE: Stroke = { ink: 'warning', weight: PEN.thin, dash: [4, 1, 1, 1] };

/**
 * How near to what stands on footings the bottom of a dig may come before it goes below what bears on the ground from them. None for a footing as
 * deep as the dig, or where its depth is not known; nor of what is further from the bottom than things near it are, and than that.
 */
export function drawFootingLines(
  site: Site,
  derived: Derived,
  { dig, depth, sides, bottom }: Excavation,
  words: DrawingWords,
  into: LayerBuilder,
): void {
  const [ring = []] = bottom?.outline ?? [];
  const [corner] = ring;
  if (depth === null || corner === undefined) return;
  const nearby = ruleValue(site, 'nearby');
  for (const { feature, outline } of derived.features.values()) {
    if (!standsOnFootings(feature) || outline.length < 3) continue;
    const { reach, by } = footingReach(site, sides, depth.most - footingOf(site, feature).depth);
    if (reach <= 0) continue;
    if (polylineToRing([...ring, corner], outline).distance > Math.max(reach, nearby)) continue;
    const walls = [...outline, ...outline.slice(0, 1)];
    const [round] = stripRegion(walls.map((at) => ({ at, left: reach, right: reach }))).toSorted(
      (a, b) => ringArea(b) - ringArea(a),
    );
    if (round === undefined) continue;
    const target = { kind: 'feature', id: feature.id } as const;
    into.add('excavation', { kind: 'line', points: round, closed: true, stroke: LINE });
    const influence = by === 'influence' ? ruleValue(site, 'footingInfluence') : null;
    const text = words.footingLine?.(influence, reach, site.units) ?? '';
    const [at, ...elsewhere] = round;
    if (text === '' || at === undefined) continue;
    into.label('excavation', {
      id: `${dig.id}/footing/${feature.id}`,
      text,
      at,
      elsewhere,
      height: TEXT_MM.small,
      ink: 'warning',
      weight: 'regular',
      priority: PRIORITY.excavation,
      seat: 'centre',
      clear: 0,
      whenCrowded: 'leave-out',
      target,
    });
  }
}
