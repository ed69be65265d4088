import type { Derived } from '@footmark/site';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';

const LINE: Stroke = { ink: 'survey', weight: PEN.fine };
/** Nearer than this (m) found and computed are one on any paper. */
const SAME_PLACE_M = 0.005;

/** From where the computation has the sonde, a dot, to where the receiver found it; the locate's own symbol is drawn with the features. */
export function drawLocates({ locates }: Derived, into: LayerBuilder): void {
  for (const { feature, found, computed, distance } of locates) {
    if (distance < SAME_PLACE_M) continue;
    const target = { kind: 'feature', id: feature } as const;
    into.add(
      'survey',
      { kind: 'line', points: [computed, found], closed: false, stroke: LINE, target },
      { kind: 'symbol', at: computed, symbol: 'sonde-computed', azimuth: 0, stroke: LINE, target },
    );
  }
}
