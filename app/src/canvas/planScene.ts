import {
  type Drawing,
  draw,
  drawInTheWay,
  type Highlight,
  type Label,
  type LayerName,
  labelObstacles,
  type MeasureText,
  type PlacedLabel,
  placeLabels,
} from '@footmark/drawing';
import {
  type Derived,
  type MarkReach,
  type RunsFit,
  reachOfMark,
  type Site,
  type Target,
} from '@footmark/site';
import { digInView, type InHand } from './digInView';
import { drawingWords } from './drawingWords';

/** The drawing of a site, with the ties of the chosen mark or set-out point, and the zone and hole of a mark, without the layers that are hidden. */
export function drawingOf(
  site: Site,
  derived: Derived,
  selected: Target | null,
  fit: RunsFit | null,
  hidden: ReadonlySet<LayerName>,
): Drawing {
  const reach = hidden.has('zones') ? null : reachOfChosen(site, derived, selected);
  const drawing = draw(site, derived, {
    words: drawingWords,
    highlight: highlightOf(selected),
    ...(fit === null ? {} : { fit }),
    ...(reach === null ? {} : { reach }),
  });
  return withoutLayers(drawing, hidden);
}

/** What is to be dug on a site and what stands in its way, as far as it is shown, to be joined to that; null where that is nothing. */
export function inTheWayOf(
  site: Site,
  derived: Derived,
  fit: RunsFit | null,
  inHand: InHand,
  hidden: ReadonlySet<LayerName>,
): Drawing | null {
  const dig = digInView(site, fit, inHand, hidden);
  if (dig === null) return null;
  const highlight = highlightOf(inHand.selected);
  return withoutLayers(drawInTheWay(site, derived, { words: drawingWords, highlight, dig }), hidden);
}

export function withoutLayers(drawing: Drawing, hidden: ReadonlySet<LayerName>): Drawing {
  if (hidden.size === 0) return drawing;
  return { ...drawing, layers: drawing.layers.filter((layer) => !hidden.has(layer.name)) };
}

function highlightOf(selected: Target | null): Highlight {
  switch (selected?.kind) {
    case 'reading':
      return { mark: { run: selected.run, id: selected.id } };
    case 'feature':
      return { feature: selected.id };
    case 'path':
      return { path: selected.id };
    case 'dig':
      return { dig: selected.id };
    case 'set-out':
      return { setOut: { path: selected.path, number: selected.number } };
    default:
      return {};
  }
}

function reachOfChosen(site: Site, derived: Derived, selected: Target | null): MarkReach | null {
  if (selected?.kind !== 'reading') return null;
  const mark = derived.marks.find((m) => m.run.id === selected.run && m.reading.id === selected.id);
  return mark === undefined ? null : reachOfMark(site, derived, mark);
}

/** Labels of all layers placed for a scale. */
export function labelsAt(
  drawing: Drawing,
  mmPerMetre: number,
  measureText: MeasureText,
): readonly PlacedLabel[] {
  const labels: Label[] = drawing.layers.flatMap((layer) => layer.labels);
  return placeLabels(labels, labelObstacles(drawing, mmPerMetre), { mmPerMetre, measureText });
}
