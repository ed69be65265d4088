import {
  type Drawing,
  type Label,
  labelObstacles,
  type Obstacle,
  type PlacedLabel,
  placeLabels,
} from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import type { Lettering } from '../font/sheetFonts';
import { EM_PER_CAPITAL } from '../page/measures';
import { cleanText } from '../text/cleanText';
import { type PlanView, shownBounds } from './planView';

/** The edge of a window is walled with discs of this radius (mm), so that no text crosses it. */
const EDGE_MM = 1;

/** The texts of a view in their places, and those of painted points that found none. */
export type PlacedTexts = Readonly<{ placed: readonly PlacedLabel[]; missing: readonly Label[] }>;

/** A drawing's texts in a view: what is anchored in it, none across its edge. */
export function placeTexts(drawing: Drawing, view: PlanView, lettering: Lettering): PlacedTexts {
  const shown = shownBounds(view);
  const isShown = ({ x, y }: Point) =>
    x >= shown.minX && x <= shown.maxX && y >= shown.minY && y <= shown.maxY;
  const labels = drawing.layers
    .flatMap((layer) => layer.labels)
    .filter((label) => isShown(label.at))
    .map((label) => cleanLabel(label, lettering));
  const obstacles = [...labelObstacles(drawing, view.mmPerMetre), ...edgeOf(view)];
  const placed = placeLabels(labels, obstacles, {
    mmPerMetre: view.mmPerMetre,
    measureText: (text, height, weight) => lettering.widthOf(text, height * EM_PER_CAPITAL, weight),
  }).filter((p) => isShown(p.at));
  const there = new Set(placed.map((p) => p.label.id));
  const painted = new Set(paintedLabels(drawing).map((label) => label.id));
  return { placed, missing: labels.filter((label) => painted.has(label.id) && !there.has(label.id)) };
}

/** What is written beside each point that is painted on the ground. */
export function paintedLabels({ layers }: Drawing): readonly Label[] {
  const marks = layers.find((layer) => layer.name === 'marks')?.labels ?? [];
  return marks.filter((label) => label.seat === 'around');
}

function cleanLabel(label: Label, lettering: Lettering): Label {
  const { text, brief } = label;
  return {
    ...label,
    text: cleanText(text, lettering),
    ...(brief === undefined ? {} : { brief: cleanText(brief, lettering) }),
  };
}

function edgeOf(view: PlanView): readonly Obstacle[] {
  const { minX, minY, maxX, maxY } = shownBounds(view);
  const step = (2 * EDGE_MM) / view.mmPerMetre;
  const disc = (x: number, y: number): Obstacle => ({ kind: 'disc', at: { x, y }, radiusMm: EDGE_MM });
  const discs: Obstacle[] = [];
  for (let x = minX; x <= maxX; x += step) discs.push(disc(x, minY), disc(x, maxY));
  for (let y = minY; y <= maxY; y += step) discs.push(disc(minX, y), disc(maxX, y));
  return discs;
}
