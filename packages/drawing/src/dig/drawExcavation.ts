import { cutBack, type Excavation, type SpoilHeap } from '@footmark/dig';
import { azimuthBetween, type Point, pointAtAzimuth } from '@footmark/geometry';
import type { Units } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import { placesInArea } from '../features/placesInArea';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Fill, Stroke } from '../primitive';
import { proposedPaint } from '../proposedPaint';
import { PRIORITY, TEXT_MM } from '../textStyle';
import { fillRing, ringsOf } from './ringsOf';

const TOP = proposedPaint(1.1, { weight: PEN.medium, dash: [2.4, 1.4] });
const BOTTOM: Stroke = { ink: 'ink', weight: PEN.thin };
const SLOPE: Stroke = { ink: 'ink', weight: PEN.thin };
const SLOPE_SPACING_MM = 1.8;
/** Share of the way down a slope that its ticks take at most, so that they do not reach the bottom's outline. */
const SLOPE_SHARE = 0.75;
const HEAP: Stroke = { ink: 'faint', weight: PEN.thin, dash: [1.2, 1.2] };
const HEAP_FILL: Fill = { ink: 'faint', opacity: 0.5, hatch: 'diagonal' };
const LADDER: Stroke = { ink: 'ink', weight: PEN.fine };
const CHOSEN_FILL: Fill = { ink: 'proposed', opacity: 0.3 };

/** Draws a planned dig; of one whose depth is not known what it takes at least, of one without a place nothing. */
export function drawExcavation(
  of: Excavation,
  chosen: boolean,
  words: DrawingWords,
  units: Units,
  into: LayerBuilder,
): void {
  const { dig, bottom, ground, top, sides, spoil, depth, egress } = of;
  const target = { kind: 'dig', id: dig.id } as const;
  if (bottom === null) return;
  if (spoil !== null && spoil.side !== 'away') {
    drawHeap(spoil[spoil.side], into);
    nameHeap(dig.id, spoil[spoil.side], words.spoil?.(spoil.volume, units) ?? '', into);
  }
  for (const ring of ringsOf(bottom.outline)) {
    into.add('excavation', { ...ring, stroke: BOTTOM, target });
  }
  const outline = ground?.outline ?? bottom.outline;
  if (chosen) {
    into.add('excavation', { kind: 'line', points: fillRing(outline), closed: true, fill: CHOSEN_FILL });
  }
  for (const ring of ringsOf(outline)) {
    into.add('excavation', ...TOP.map((stroke) => ({ ...ring, stroke, target })));
    const reach = SLOPE_SHARE * cutBack(sides, depth?.least ?? 0);
    if (top === null || reach <= 0) continue;
    // the ring goes with the dig on its left, and ornaments stand to the right
    const points = ring.points.toReversed();
    into.add('excavation', {
      kind: 'pattern',
      pattern: 'slope',
      points,
      closed: true,
      spacing: SLOPE_SPACING_MM,
      reach,
      stroke: SLOPE,
    });
  }
  // a way out leans half way up the side without the heap, where the pipe does not cover it
  for (const { at, station } of egress) {
    const azimuth = azimuthAt(of.line, station) + (spoil?.side === 'right' ? -Math.PI / 2 : Math.PI / 2);
    const leaning = pointAtAzimuth(at, azimuth, bottom.width / 2 + cutBack(sides, depth?.least ?? 0) / 2);
    into.add('excavation', {
      kind: 'symbol',
      at: leaning,
      symbol: 'ladder',
      azimuth,
      stroke: LADDER,
      target,
    });
  }
  nameExcavation(of, chosen, words, units, into);
}

function drawHeap({ outline }: SpoilHeap, into: LayerBuilder): void {
  into.add('excavation', { kind: 'line', points: fillRing(outline), closed: true, fill: HEAP_FILL });
  into.add('excavation', ...ringsOf(outline).map((ring) => ({ ...ring, stroke: HEAP })));
}

function nameHeap(dig: string, { outline }: SpoilHeap, text: string, into: LayerBuilder): void {
  const [ring] = outline;
  if (text === '' || ring === undefined) return;
  const [at, ...elsewhere] = placesInArea(ring);
  into.label('excavation', {
    id: `${dig}/spoil`,
    text,
    at,
    elsewhere,
    height: TEXT_MM.small,
    ink: 'ink',
    weight: 'regular',
    priority: PRIORITY.excavation - 1,
    seat: 'centre',
    clear: 0,
    whenCrowded: 'leave-out',
    target: { kind: 'dig', id: dig },
  });
}

function nameExcavation(
  of: Excavation,
  chosen: boolean,
  words: DrawingWords,
  units: Units,
  into: LayerBuilder,
): void {
  const text = words.excavation?.(of, 'full', units) ?? '';
  const brief = words.excavation?.(of, 'brief', units) ?? '';
  const at = upperRight((of.top ?? of.bottom)?.outline.flat() ?? []);
  if (text === '' || at === null) return;
  into.label('excavation', {
    id: `${of.dig.id}/excavation`,
    text,
    brief,
    at,
    height: TEXT_MM.tie,
    ink: 'ink',
    weight: chosen ? 'bold' : 'regular',
    priority: chosen ? PRIORITY.hole : PRIORITY.excavation,
    seat: 'around',
    clear: 0.8,
    whenCrowded: 'leader',
    target: { kind: 'dig', id: of.dig.id },
  });
}

/** Direction of the dig's line at a station of it. */
function azimuthAt(line: Excavation['line'], station: number): number {
  const i = line.findIndex((p, k) => k > 0 && p.station >= station);
  const [from, to] = [line[Math.max(0, i - 1)], line[Math.max(1, i)]];
  return from === undefined || to === undefined ? 0 : azimuthBetween(from.at, to.at);
}

function upperRight(points: readonly Point[]): Point | null {
  return points.reduce<Point | null>(
    (best, p) => (best === null || p.x + p.y > best.x + best.y ? p : best),
    null,
  );
}
