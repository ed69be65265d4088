import { distance, flattenPath, type Point, pathLine } from '@footmark/geometry';
import type { Derived, FittedPath, Path, RunsFit } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import { SAGITTA_M } from '../pipe/drawPath';
import { pipePens } from '../pipe/pipePens';
import type { Stroke } from '../primitive';
import { fittedLabel } from './fittedLabel';

/** Moves up to this (m) are not drawn: paint does not show them. */
const LEAST_MOVE_M = 0.01;
/** A long dash, as nothing else has, with an open circle at each point. */
const DASH: readonly number[] = [7, 1.6];

/**
 * Where the evidence puts the lines and marks, beside where they are shown. Nothing while there is no evidence, nor when all is shown as it
 * was fitted.
 */
export function drawFitted(derived: Derived, fit: RunsFit, words: DrawingWords, into: LayerBuilder): void {
  if (fit.status !== 'fitted' || (fit.taken && fit.pending === 0)) return;
  for (const fitted of fit.paths) {
    const path = derived.paths.get(fitted.id)?.path;
    if (path === undefined || fitted.points.every((p) => p.moved <= LEAST_MOVE_M)) continue;
    const ink = pipePens[path.state].beside;
    const stroke: Stroke = { ink, weight: PEN.medium };
    const target = { kind: 'path', id: path.id } as const;
    const points = lineOfFitted(fitted, path);
    into.add('fitted', { kind: 'line', points, closed: false, stroke: { ...stroke, dash: DASH }, target });
    for (const { at } of fitted.points) {
      into.add('fitted', { kind: 'symbol', at, symbol: 'fitted-point', azimuth: 0, stroke, target });
    }
    into.label('fitted', ...fittedLabel(path.id, points, ink, words, target));
  }
  drawFittedMarks(derived, fit, into);
}

/** The fitted points as the pipe that they would make, with its bends; straight from point to point where there is none. */
export function lineOfFitted({ points }: FittedPath, path: Path): readonly Point[] {
  const radii = new Map(path.vertices.map((v) => [v.id, v.bendRadius]));
  const line = pathLine(
    points.map(({ at, vertex }) => ({
      point: at,
      bendRadius: radii.get(vertex ?? '') ?? path.bendRadius,
    })),
  );
  return line.ok ? flattenPath(line.value, SAGITTA_M) : points.map((p) => p.at);
}

/** A small open mark where the evidence has it, joined to the mark that is shown. */
function drawFittedMarks({ marks }: Derived, fit: RunsFit, into: LayerBuilder): void {
  const stroke: Stroke = { ink: 'sewer', weight: PEN.fine };
  for (const { run, reading, place } of marks) {
    const fitted = fit.marks.get(reading.id)?.fitted;
    if (place === null || fitted == null || distance(place.at, fitted.at) <= LEAST_MOVE_M) continue;
    const target = { kind: 'reading', run: run.id, id: reading.id } as const;
    into.add(
      'fitted',
      { kind: 'line', points: [place.at, fitted.at], closed: false, stroke, target },
      { kind: 'symbol', at: fitted.at, symbol: 'mark-fitted', azimuth: 0, stroke, target },
    );
  }
}
