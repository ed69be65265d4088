import { type EdgeClearance, type Excavation, footingOf } from '@footmark/dig';
import { ringArea, stripRegion } from '@footmark/geometry';
import { type Derived, ruleValue, type Site } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';

const LINE: Stroke = { ink: 'warning', weight: PEN.thin, dash: [4, 1, 1, 1] };
/** Buildings further than this (m) from the top, and than what their footings bear on, are left alone. */
const NEAR_M = 5;

/**
 * How near to a building the bottom of a dig may come: the line at which what bears on the ground from its footing is as deep as the dig.
 * None for a footing as deep as the dig, or where its depth is not known.
 */
export function drawFootingLines(
  site: Site,
  derived: Derived,
  { dig, depth }: Excavation,
  clearances: readonly EdgeClearance[],
  words: DrawingWords,
  into: LayerBuilder,
): void {
  if (depth === null) return;
  const influence = ruleValue(site, 'footingInfluence');
  for (const { of, feature: id, distance } of clearances) {
    if (of.is !== 'outline' || of.dig !== dig.id) continue;
    const building = derived.features.get(id);
    const feature = building?.feature;
    if (building === undefined || feature?.kind !== 'building') continue;
    const reach = influence * (depth.most - footingOf(site, feature).depth);
    if (reach <= 0 || distance > Math.max(reach, NEAR_M)) continue;
    const walls = [...building.outline, ...building.outline.slice(0, 1)];
    const [round] = stripRegion(walls.map((at) => ({ at, left: reach, right: reach }))).toSorted(
      (a, b) => ringArea(b) - ringArea(a),
    );
    if (round === undefined) continue;
    const target = { kind: 'feature', id } as const;
    into.add('excavation', { kind: 'line', points: round, closed: true, stroke: LINE });
    const text = words.footingLine?.(influence, reach, site.units) ?? '';
    const [at, ...elsewhere] = round;
    if (text === '' || at === undefined) continue;
    into.label('excavation', {
      id: `${dig.id}/footing/${id}`,
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
