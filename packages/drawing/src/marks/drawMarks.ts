import { type Mark, observationKinds } from '@footmark/site';
import type { DrawingWords, DrawOptions } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import { symbols } from '../symbols/symbols';
import { PRIORITY, TEXT_MM } from '../textStyle';

/** Draws the marks as they will be painted, in the colour of the service, with what is painted beside them. */
export function drawMarks(
  marks: readonly Mark[],
  words: DrawingWords,
  highlight: DrawOptions['highlight'],
  into: LayerBuilder,
): void {
  for (const { run, reading, label, place } of marks) {
    if (place === null) continue;
    const { symbol } = observationKinds[reading.seen];
    const target = { kind: 'reading', run: run.id, id: reading.id } as const;
    const chosen = highlight?.mark?.run === run.id && highlight.mark.id === reading.id;
    const upright = { kind: 'symbol', at: place.at, azimuth: 0, target } as const;
    into.add('marks', { ...upright, symbol, stroke: { ink: 'sewer', weight: PEN.broad } });
    if (chosen) {
      into.add('marks', { ...upright, symbol: 'mark-chosen', stroke: { ink: 'survey', weight: PEN.medium } });
    }
    into.label('marks', {
      id: `${run.id}/${reading.id}`,
      text: `${label} ${words.observation?.(reading.seen) ?? ''}`.trimEnd(),
      at: place.at,
      height: TEXT_MM.mark,
      ink: 'sewer',
      weight: 'bold',
      priority: PRIORITY.mark + (chosen ? 100 : symbol === 'mark-defect' ? 10 : 0),
      seat: 'around',
      clear: symbols[chosen ? 'mark-chosen' : symbol].clear,
      whenCrowded: 'leader',
      target,
    });
  }
}
