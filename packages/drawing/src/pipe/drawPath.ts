import { flattenPath, locate, slicePath, stationOfVertex } from '@footmark/geometry';
import type { DerivedPath, Site } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { lineLetters } from '../lineLetters';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import { symbols } from '../symbols/symbols';
import { PRIORITY, TEXT_MM } from '../textStyle';
import { pipePens } from './pipePens';
import { stationText, tickSpacing } from './stationText';
import { stretchLabels } from './stretchLabels';

/** Greatest distance (m) of a drawn bend from its arc: a hundredth of a millimetre at 1:100. */
export const SAGITTA_M = 0.001;

const FLOW_SPACING_MM = 32;
const STATIONS_APART_MM = 14;
const MOST_TICKS = 2000;

/** Draws a pipe: bends as arcs, each leg with the pen of how it is known, flow, letters, stretches and stations. */
export function drawPath(
  of: DerivedPath,
  units: Site['units'],
  words: DrawingWords,
  dimensions: boolean,
  into: LayerBuilder,
): void {
  const target = { kind: 'path', id: of.path.id } as const;
  const pens = pipePens[of.path.state];
  for (const leg of legsKnownAlike(of)) {
    const points = slicePath(of.line, leg.from, leg.to, SAGITTA_M);
    for (const stroke of leg.measured ? pens.measured : pens.assumed) {
      into.add('pipe', { kind: 'line', points, closed: false, stroke, target });
    }
  }
  const ink = pens.beside;
  const whole = flattenPath(of.line, SAGITTA_M);
  into.add('pipe', {
    kind: 'pattern',
    points: whole,
    closed: false,
    pattern: 'flow',
    spacing: FLOW_SPACING_MM,
    stroke: { ink, weight: PEN.fine },
    target,
  });
  drawPipeChanges(of, { ink, weight: PEN.medium }, into);
  into.label('pipe', ...stretchLabels(of, units, words));
  into.label('pipe', ...lineLetters({ id: of.path.id, points: of.points, letters: 'SS', ink, target }));
  if (dimensions) drawStations(of, units, { ink, weight: PEN.fine }, into);
}

type KnownLeg = Readonly<{ from: number; to: number; measured: boolean }>;

/** Stations between which the pipe is known alike; a leg is measured when the vertex at its end is. */
function legsKnownAlike(of: DerivedPath): readonly KnownLeg[] {
  const legs: KnownLeg[] = [];
  for (let i = 1; i < of.points.length; i += 1) {
    const measured = of.measured[i] ?? false;
    const to = stationOfVertex(of.line, i);
    const last = legs.at(-1);
    if (last?.measured === measured) legs[legs.length - 1] = { ...last, to };
    else legs.push({ from: last?.to ?? 0, to, measured });
  }
  return legs;
}

/** A double bar across the pipe where it becomes another. */
function drawPipeChanges(of: DerivedPath, stroke: Stroke, into: LayerBuilder): void {
  for (const { from } of of.path.stretches) {
    if (from <= 0 || from >= of.length) continue;
    const { point: at, azimuth } = locate(of.line, from);
    const target = { kind: 'path', id: of.path.id } as const;
    into.add('pipe', { kind: 'symbol', at, symbol: 'pipe-change', azimuth, stroke, target });
  }
}

function drawStations(of: DerivedPath, units: Site['units'], stroke: Stroke, into: LayerBuilder): void {
  const target = { kind: 'path', id: of.path.id } as const;
  const spacing = tickSpacing(units);
  const count = Math.min(MOST_TICKS, Math.floor(of.length / spacing + 1e-9));
  for (let k = 0; k <= count; k += 1) {
    const station = k * spacing;
    const { point: at, azimuth } = locate(of.line, station);
    into.add('pipe', { kind: 'symbol', at, symbol: 'station-tick', azimuth, stroke, target });
    into.label('pipe', {
      id: `${of.path.id}/station/${k}`,
      text: stationText(station, units),
      at,
      height: TEXT_MM.small,
      ink: stroke.ink,
      weight: 'regular',
      // fulls of five ticks first, so that zooming out keeps the round ones
      priority: PRIORITY.station + (k % 10 === 0 ? 10 : k % 5 === 0 ? 5 : k % 2 === 0 ? 2 : 0),
      seat: 'around',
      clear: symbols['station-tick'].clear,
      whenCrowded: 'leave-out',
      repeat: { group: `${of.path.id}/station`, apartMm: STATIONS_APART_MM },
      target,
    });
  }
}
