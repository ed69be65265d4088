import { locate, type Point, slicePath } from '@footmark/geometry';
import type { Derived, Site } from '@footmark/site';
import type { DrawingWords } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import type { Stroke } from '../primitive';
import { PRIORITY, TEXT_MM } from '../textStyle';
import { SAGITTA_M } from './drawPath';
import { longestStraight } from './longestStraight';

/** A broad pale band under the pipe, stronger where more than one run has been. */
const BAND = { ink: 'sewer', weight: 4 } as const;
const SEEN = { once: 0.16, again: 0.3 } as const;
/** Strokes across the pipe where nobody has looked, this far apart (mm). */
const UNSEEN: Stroke = { ink: 'warning', weight: PEN.medium };
const UNSEEN_SPACING_MM = 2.2;

/** Draws where cameras have been, and what no camera has seen: that is a gap only where there is something that one has. */
export function drawCoverage(
  derived: Derived,
  units: Site['units'],
  words: DrawingWords,
  into: LayerBuilder,
): void {
  for (const [path, stretches] of derived.lookedAt) {
    for (const { from, to, runs } of stretches) {
      const run = runs.at(-1);
      if (run === undefined) continue;
      into.add('coverage', {
        kind: 'line',
        points: pointsOf(derived, path, from, to),
        closed: false,
        stroke: { ...BAND, opacity: runs.length > 1 ? SEEN.again : SEEN.once },
        target: { kind: 'run', id: run },
      });
    }
  }
  if (derived.coverage.length === 0) return;
  for (const { path, from, to } of derived.unseen) drawGap(derived, path, from, to, units, words, into);
}

function drawGap(
  derived: Derived,
  path: string,
  from: number,
  to: number,
  units: Site['units'],
  words: DrawingWords,
  into: LayerBuilder,
): void {
  const on = derived.paths.get(path);
  if (on === undefined) return;
  const target = { kind: 'path', id: path } as const;
  into.add('coverage', {
    kind: 'pattern',
    points: pointsOf(derived, path, from, to),
    closed: false,
    pattern: 'unseen',
    spacing: UNSEEN_SPACING_MM,
    stroke: UNSEEN,
    target,
  });
  const straight = longestStraight(on.line, from, to);
  if (straight === null) return;
  const { point, azimuth } = locate(on.line, (straight.from + straight.to) / 2);
  into.label('coverage', {
    id: `${path}/unseen/${from.toFixed(3)}`,
    text: words.unseen?.(to - from, units) || '?',
    brief: '?',
    at: point,
    height: TEXT_MM.main,
    ink: 'warning',
    weight: 'bold',
    priority: PRIORITY.unseen,
    seat: 'on-line',
    along: { azimuth, span: straight.to - straight.from },
    clear: 0,
    whenCrowded: 'leave-out',
    target,
  });
}

function pointsOf({ paths }: Derived, path: string, from: number, to: number): readonly Point[] {
  const on = paths.get(path);
  return on === undefined ? [] : slicePath(on.line, from, to, SAGITTA_M);
}
