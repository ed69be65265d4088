import type { Point } from '@footmark/geometry';
import type { DrawOptions } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';

/** Certain, so solid; long dashes and dots where it bounds the pipe and not the mark. */
const MARK: Stroke = { ink: 'ink', weight: PEN.fine };
const PIPE: Stroke = { ink: 'ink', weight: PEN.thin, dash: [6, 1.2, 0.6, 1.2] };

/**
 * What the chosen mark, and the pipe on the way to it, cannot lie outside of. Cable from one point alone says only how long it is: that
 * circle is not drawn.
 */
export function drawReach({ reach, words = {} }: DrawOptions, into: LayerBuilder): void {
  if (reach === undefined || reach.knowns.length < 2) return;
  for (const pipe of reach.pipes) {
    into.add('zones', { kind: 'line', points: pipe.reach.outline, closed: true, stroke: PIPE });
  }
  const { outline = [] } = reach.region ?? {};
  if (outline.length < 2) return;
  into.add('zones', { kind: 'line', points: outline, closed: true, stroke: MARK });
  if (words.reach === undefined || words.reach === '') return;
  into.label('zones', {
    id: 'reach',
    text: words.reach,
    at: highest(outline),
    height: TEXT_MM.small,
    ink: 'ink',
    weight: 'regular',
    priority: PRIORITY.reach,
    seat: 'around',
    clear: 0.6,
    whenCrowded: 'leave-out',
  });
}

function highest(outline: readonly Point[]): Point {
  return outline.reduce((best, p) => (p.y > best.y ? p : best));
}
