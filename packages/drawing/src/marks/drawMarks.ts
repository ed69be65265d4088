import { type Derived, observationKinds, type Site } from '@footmark/site';
import type { DrawingWords, Highlight } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import { symbols } from '../symbols/symbols';
import { PRIORITY, TEXT_MM } from '../textStyle';
import { drawOffset } from './drawOffset';
import { isChosen } from './isChosen';
import { markSymbol } from './markSymbol';

/** Marks nearer than this (mm) to each other are labelled with their letter and number only. */
const CROWD_MM = 7;

/** Draws the marks as they will be painted, in the colour of the service, with what is painted beside them. */
export function drawMarks(
  { marks, features }: Derived,
  words: DrawingWords,
  highlight: Highlight | undefined,
  units: Site['units'],
  into: LayerBuilder,
): void {
  const drain = [...features.values()]
    .filter((f) => f.spec.layer === 'drain' && f.spec.shape === 'point')
    .flatMap((f) => f.points);
  for (const mark of marks) {
    const { run, reading, label, place } = mark;
    if (place === null) continue;
    const at = place.paint?.at ?? place.at;
    const symbol = markSymbol(mark, at, drain);
    const target = { kind: 'reading', run: run.id, id: reading.id } as const;
    const chosen = isChosen(mark, highlight);
    const upright = { kind: 'symbol', at, azimuth: 0, target } as const;
    drawOffset(mark, chosen, units, into);
    into.add('marks', { ...upright, symbol, stroke: { ink: 'sewer', weight: PEN.broad } });
    if (chosen) {
      into.add('marks', { ...upright, symbol: 'mark-chosen', stroke: { ink: 'survey', weight: PEN.medium } });
    }
    const defect = observationKinds[reading.seen].group === 'defect';
    into.label('marks', {
      id: `${run.id}/${reading.id}`,
      text: `${label} ${words.observation?.(reading.seen) ?? ''}`.trimEnd(),
      at,
      height: defect || chosen ? TEXT_MM.mark : TEXT_MM.landmark,
      ink: 'sewer',
      weight: defect || chosen ? 'bold' : 'regular',
      priority: chosen ? PRIORITY.chosenMark : defect ? PRIORITY.defect : PRIORITY.landmark,
      seat: 'around',
      clear: Math.max(symbols[symbol].clear, chosen ? symbols['mark-chosen'].clear : 0),
      ...(chosen ? { whenCrowded: 'always' } : { whenCrowded: 'leader', brief: label }),
      crowd: { group: 'marks', apartMm: CROWD_MM },
      target,
    });
  }
}
