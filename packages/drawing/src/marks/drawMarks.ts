import { distance, type Point } from '@footmark/geometry';
import { type Derived, type Mark, observationKinds } from '@footmark/site';
import type { DrawingWords, DrawOptions } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { SymbolName } from '../symbols/symbolShape';
import { symbols } from '../symbols/symbols';
import { PRIORITY, TEXT_MM } from '../textStyle';

/** A landmark this near (m) to a thing of the drain is that thing, within what a counter and a tape agree to. */
const SAME_THING_M = 0.3;
/** Marks nearer than this (mm) to each other are labelled with their letter and number only. */
const CROWD_MM = 7;

/** Draws the marks as they will be painted, in the colour of the service, with what is painted beside them. */
export function drawMarks(
  { marks, features }: Derived,
  words: DrawingWords,
  highlight: DrawOptions['highlight'],
  into: LayerBuilder,
): void {
  const drain = [...features.values()]
    .filter((f) => f.spec.layer === 'drain' && f.spec.shape === 'point')
    .flatMap((f) => f.points);
  for (const mark of marks) {
    const { run, reading, label, place } = mark;
    if (place === null) continue;
    const symbol = symbolOf(mark, place.at, drain);
    const target = { kind: 'reading', run: run.id, id: reading.id } as const;
    const chosen = highlight?.mark?.run === run.id && highlight.mark.id === reading.id;
    const upright = { kind: 'symbol', at: place.at, azimuth: 0, target } as const;
    into.add('marks', { ...upright, symbol, stroke: { ink: 'sewer', weight: PEN.broad } });
    if (chosen) {
      into.add('marks', { ...upright, symbol: 'mark-chosen', stroke: { ink: 'survey', weight: PEN.medium } });
    }
    const defect = symbol === 'mark-defect';
    into.label('marks', {
      id: `${run.id}/${reading.id}`,
      text: `${label} ${words.observation?.(reading.seen) ?? ''}`.trimEnd(),
      at: place.at,
      height: defect || chosen ? TEXT_MM.mark : TEXT_MM.landmark,
      ink: 'sewer',
      weight: defect || chosen ? 'bold' : 'regular',
      priority: chosen ? PRIORITY.chosenMark : defect ? PRIORITY.defect : PRIORITY.landmark,
      seat: 'around',
      clear: symbols[chosen ? 'mark-chosen' : symbol].clear,
      ...(chosen ? { whenCrowded: 'always' } : { whenCrowded: 'leader', brief: label }),
      crowd: { group: 'marks', apartMm: CROWD_MM },
      target,
    });
  }
}

/** The kind's own; a landmark on a thing of the drain is a ring round that thing's symbol, which stays readable. */
function symbolOf({ reading }: Mark, at: Point, drain: readonly Point[]): SymbolName {
  const { symbol } = observationKinds[reading.seen];
  if (symbol !== 'mark-landmark') return symbol;
  return drain.some((p) => distance(p, at) < SAME_THING_M) ? 'mark-landmark-around' : symbol;
}
