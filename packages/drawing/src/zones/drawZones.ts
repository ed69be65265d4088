import { ellipseOutline, type Point } from '@footmark/geometry';
import type { Mark, RunsFit, SearchZone, Site } from '@footmark/site';
import type { DrawOptions } from '../drawOptions';
import type { LayerBuilder } from '../layerBuilder';
import { PEN } from '../lineTypes';
import { isChosen } from '../marks/isChosen';
import type { Fill, Stroke } from '../primitive';
import { proposedPaint } from '../proposedPaint';
import { PRIORITY, TEXT_MM } from '../textStyle';
import { holeCorners } from './holeCorners';

/** Of the chosen mark, and of the others, which are many. */
const CHOSEN: Readonly<{ stroke: Stroke; fill: Fill }> = {
  stroke: { ink: 'sewer', weight: PEN.medium },
  fill: { ink: 'sewer', opacity: 0.09 },
};
const FAINT: Stroke = { ink: 'sewer', weight: PEN.thin, opacity: 0.35 };

const HOLE = proposedPaint(1.1, { weight: PEN.medium, dash: [2.4, 1.4] });

/** The search zones of all marks, faint, and of the chosen one clear with the hole that is sure to find it. */
export function drawZones(
  marks: readonly Mark[],
  fit: RunsFit,
  { words = {}, highlight }: DrawOptions,
  units: Site['units'],
  into: LayerBuilder,
): void {
  for (const mark of marks) {
    const zone = fit.marks.get(mark.reading.id)?.zone;
    if (mark.place === null || zone === undefined || !Number.isFinite(zone.semiMajor)) continue;
    const { at, flow } = mark.place;
    const ellipse = { kind: 'line', points: zoneOutline(at, zone), closed: true } as const;
    if (!isChosen(mark, highlight)) {
      into.add('zones', { ...ellipse, stroke: FAINT });
      continue;
    }
    const corners = holeCorners(at, flow, zone.hole);
    const rectangle = { kind: 'line', points: corners, closed: true } as const;
    into.add('zones', { ...ellipse, ...CHOSEN });
    into.add('zones', ...HOLE.map((stroke) => ({ ...rectangle, stroke })));
    const text = words.hole?.(zone.hole, units) ?? '';
    if (text === '') continue;
    into.label('zones', {
      id: `${mark.run.id}/${mark.reading.id}/hole`,
      text,
      at: upperRight(corners),
      height: TEXT_MM.tie,
      ink: 'ink',
      weight: 'bold',
      priority: PRIORITY.hole,
      seat: 'around',
      clear: 0.6,
      whenCrowded: 'leader',
      target: { kind: 'reading', run: mark.run.id, id: mark.reading.id },
    });
  }
}

/** The 95 % ellipse about a mark: the azimuth of its longer axis is clockwise from +y, an outline's angle counter-clockwise from +x. */
export function zoneOutline(at: Point, { semiMajor, semiMinor, azimuth }: SearchZone): readonly Point[] {
  return ellipseOutline(at, semiMajor, semiMinor, Math.PI / 2 - azimuth);
}

function upperRight(corners: readonly Point[]): Point {
  return corners.reduce((best, p) => (p.x + p.y > best.x + best.y ? p : best));
}
