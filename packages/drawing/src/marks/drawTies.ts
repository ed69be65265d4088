import { azimuthBetween, distance as distanceBetween, midpoint, type Point } from '@footmark/geometry';
import {
  type Derived,
  formatLength,
  type Mark,
  type Site,
  type Target,
  type Tie,
  type Ties,
} from '@footmark/site';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import type { SymbolName } from '../symbols/symbolShape';
import { PRIORITY, TEXT_MM } from '../textStyle';

const TAPE: Stroke = { ink: 'survey', weight: PEN.medium };
/** A length stands about this far (mm) from its mark: near enough to be on a phone's view of it. */
const FROM_MARK_MM = 30;
/** A tape from a point feature starts at the very same coordinates; below this (m) is rounding. */
const SAME_POINT_M = 1e-4;
const CHECK: Stroke = { ink: 'survey', weight: PEN.fine, dash: [2.4, 1.2] };

/** Paint on the ground, and the tapes that it is found by. `id`: what its labels' ids begin with. */
export type TapedPaint = {
  readonly id: string;
  readonly target: Target;
  readonly at: Point;
  readonly ties: Ties;
};

/** Draws the tapes of one mark's paint. */
export function drawMarkTies(
  { place, run, reading }: Mark,
  features: Derived['features'],
  units: Site['units'],
  into: LayerBuilder,
): void {
  const { at, ties } = place?.paint ?? place ?? { at: null, ties: null };
  if (at === null || ties === null) return;
  const target = { kind: 'reading', run: run.id, id: reading.id } as const;
  drawTies({ id: `${run.id}/${reading.id}`, target, at, ties }, features, units, into);
}

/** Draws tapes from their reference points to paint, the check dashed, each with its distance along it. */
export function drawTies(
  { id, target, at, ties: { pair, check } }: TapedPaint,
  features: Derived['features'],
  units: Site['units'],
  into: LayerBuilder,
): void {
  const draw = ({ from, distance }: Tie, stroke: Stroke) => {
    const azimuth = azimuthBetween(from.at, at);
    into.add(
      'ties',
      { kind: 'line', points: [from.at, at], closed: false, stroke, target },
      { kind: 'symbol', at: from.at, symbol: endSymbol(from.at, features), azimuth: 0, stroke: TAPE, target },
    );
    into.label('ties', {
      id: `${id}/tie/${from.key}`,
      text: formatLength(distance, units.length),
      at: midpoint(from.at, at),
      height: TEXT_MM.tie,
      ink: 'survey',
      weight: 'bold',
      priority: PRIORITY.tie,
      seat: 'on-line',
      along: { azimuth, span: distance, fromEndMm: FROM_MARK_MM },
      clear: 0,
      whenCrowded: 'always',
      target,
    });
  };
  for (const tie of pair) draw(tie, TAPE);
  if (check !== null) draw(check, CHECK);
}

/** A ring round the symbol of the feature that is the reference point, or a symbol of its own. */
function endSymbol(at: Point, features: Derived['features']): SymbolName {
  for (const { spec, points } of features.values()) {
    if (spec.shape !== 'point') continue;
    if (points.some((p) => distanceBetween(p, at) < SAME_POINT_M)) return 'tie-end-around';
  }
  return 'tie-end';
}
