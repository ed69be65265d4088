import {
  type Drawing,
  type Label,
  labelObstacles,
  type Obstacle,
  type PlacedLabel,
  placeLabels,
} from '@footmark/drawing';
import type { Lettering } from '../font/sheetFonts';
import type { Inks } from '../page/inks';
import { EM_PER_CAPITAL, LINE } from '../page/measures';
import type { Item, PaperPoint } from '../page/page';
import { cleanText } from '../text/cleanText';
import { type PlanView, shownBounds, toPaper } from './planView';

/** The edge of a window is walled with discs of this radius (mm), so that no text crosses it. */
const EDGE_MM = 1;

/** Of a text's mask, mm beyond its ends. */
const MASK_MM = 0.35;
/** Of a mask, to the height of capitals. */
const MASK_HEIGHT = 1.5;
/** On its line a text covers that; elsewhere what lies below shines through a little. */
const MASK_OPACITY = 0.82;

/** A drawing's texts in their places in a view, each over a mask that lifts it off what lies below. */
export function paintLabels(
  drawing: Drawing,
  view: PlanView,
  inks: Inks,
  lettering: Lettering,
): readonly Item[] {
  const placed = placedIn(drawing, view, lettering);
  return [
    ...placed.flatMap(({ label, leader }) => {
      if (leader === undefined) return [];
      const lines = [leader.map((p) => toPaper(view, p))];
      return [
        { is: 'lines', lines, closed: false, pen: { colour: inks[label.ink], width: LINE.thin } } as const,
      ];
    }),
    ...placed.map((p) => maskOf(p, view, inks, lettering)),
    ...placed.map((p) => textOf(p, view, inks)),
  ];
}

function placedIn(drawing: Drawing, view: PlanView, lettering: Lettering): readonly PlacedLabel[] {
  const shown = shownBounds(view);
  const isShown = ({ x, y }: PaperPoint) =>
    x >= shown.minX && x <= shown.maxX && y >= shown.minY && y <= shown.maxY;
  const labels = drawing.layers
    .flatMap((layer) => layer.labels)
    .filter((label) => isShown(label.at))
    .map((label) => cleanLabel(label, lettering));
  const obstacles = [...labelObstacles(drawing, view.mmPerMetre), ...edgeOf(view)];
  const setting = {
    mmPerMetre: view.mmPerMetre,
    measureText: (text: string, height: number, weight: Label['weight']) =>
      lettering.widthOf(text, height * EM_PER_CAPITAL, weight),
  };
  return placeLabels(labels, obstacles, setting).filter((p) => isShown(p.at));
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

/** From the reading direction to a turn on the page, clockwise. */
function turnOf({ azimuth }: PlacedLabel): number {
  return azimuth - Math.PI / 2;
}

function maskOf(placed: PlacedLabel, view: PlanView, inks: Inks, { widthOf }: Lettering): Item {
  const { label, text } = placed;
  const centre = toPaper(view, placed.at);
  const half = {
    x: widthOf(text, label.height * EM_PER_CAPITAL, label.weight) / 2 + MASK_MM,
    y: (label.height * MASK_HEIGHT) / 2,
  };
  const [cos, sin] = [Math.cos(turnOf(placed)), Math.sin(turnOf(placed))];
  const corner = (x: number, y: number) => ({
    x: centre.x + x * cos - y * sin,
    y: centre.y + x * sin + y * cos,
  });
  const ring = [
    corner(-half.x, -half.y),
    corner(half.x, -half.y),
    corner(half.x, half.y),
    corner(-half.x, half.y),
  ];
  const opacity = label.seat === 'on-line' ? {} : { opacity: MASK_OPACITY };
  return { is: 'lines', lines: [ring], closed: true, tint: { colour: inks.paper, ...opacity } };
}

function textOf(placed: PlacedLabel, view: PlanView, inks: Inks): Item {
  const { label, text } = placed;
  const turn = turnOf(placed);
  const centre = toPaper(view, placed.at);
  // from the middle of the capitals down to the base line
  const down = label.height / 2;
  return {
    is: 'text',
    at: { x: centre.x - down * Math.sin(turn), y: centre.y + down * Math.cos(turn) },
    text,
    size: label.height * EM_PER_CAPITAL,
    weight: label.weight,
    colour: inks[label.ink],
    anchor: 'middle',
    turn,
  };
}
