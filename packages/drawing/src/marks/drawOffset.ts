import { azimuthBetween, distance, midpoint } from '@footmark/geometry';
import { formatLength, type Mark, type Site } from '@footmark/site';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';

const ARROW: Stroke = { ink: 'sewer', weight: PEN.medium };
/** Share of the way to the place that the arrow's line goes: its head stands there, clear of the open mark. */
const HEAD_SHARE = 0.8;

/**
 * An offset mark: the place itself as an open mark, and from the paint an arrow toward it with the distance to its middle. That is how
 * locators mark what cannot be painted on (common practice, no source).
 */
export function drawOffset(mark: Mark, chosen: boolean, units: Site['units'], into: LayerBuilder): void {
  const { place, run, reading } = mark;
  const paint = place?.paint?.at;
  if (place === null || paint === undefined) return;
  const target = { kind: 'reading', run: run.id, id: reading.id } as const;
  const azimuth = azimuthBetween(paint, place.at);
  const head = {
    x: paint.x + HEAD_SHARE * (place.at.x - paint.x),
    y: paint.y + HEAD_SHARE * (place.at.y - paint.y),
  };
  into.add(
    'marks',
    { kind: 'line', points: [paint, place.at], closed: false, stroke: ARROW, target },
    { kind: 'symbol', at: head, symbol: 'flow-arrow', azimuth, stroke: ARROW, target },
    { kind: 'symbol', at: place.at, symbol: 'mark-open', azimuth: 0, stroke: ARROW, target },
  );
  const away = distance(paint, place.at);
  into.label('marks', {
    id: `${run.id}/${reading.id}/offset`,
    text: formatLength(away, units.length),
    at: midpoint(paint, place.at),
    height: TEXT_MM.tie,
    ink: 'sewer',
    weight: 'bold',
    priority: PRIORITY.offset,
    seat: 'along',
    along: { azimuth, span: away },
    clear: 0.4,
    whenCrowded: chosen ? 'leader' : 'leave-out',
    target,
  });
}
