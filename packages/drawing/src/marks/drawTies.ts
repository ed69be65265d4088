import { azimuthBetween, midpoint } from '@footmark/geometry';
import { formatLength, type Mark, type Site, type Tie } from '@footmark/site';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';

const TAPE: Stroke = { ink: 'survey', weight: PEN.medium };
const CHECK: Stroke = { ink: 'survey', weight: PEN.fine, dash: [2.4, 1.2] };

/** Draws the tapes of one mark from their reference points, the check dashed, each with its distance along it. */
export function drawTies(mark: Mark, units: Site['units'], into: LayerBuilder): void {
  const { place, run, reading } = mark;
  if (place?.ties == null) return;
  const { pair, check } = place.ties;
  const target = { kind: 'reading', run: run.id, id: reading.id } as const;
  const draw = ({ from, distance }: Tie, stroke: Stroke) => {
    const azimuth = azimuthBetween(from.at, place.at);
    into.add(
      'ties',
      { kind: 'line', points: [from.at, place.at], closed: false, stroke, target },
      { kind: 'symbol', at: from.at, symbol: 'tie-end', azimuth: 0, stroke: TAPE, target },
    );
    into.label('ties', {
      id: `${run.id}/${reading.id}/tie/${from.key}`,
      text: formatLength(distance, units.length),
      at: midpoint(from.at, place.at),
      height: TEXT_MM.tie,
      ink: 'survey',
      weight: 'bold',
      priority: PRIORITY.tie,
      seat: 'on-line',
      along: { azimuth, span: distance },
      clear: 0,
      whenCrowded: 'always',
      target,
    });
  };
  for (const tie of pair) draw(tie, TAPE);
  if (check !== null) draw(check, CHECK);
}
