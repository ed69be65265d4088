import type { Drawing } from '@footmark/drawing';
import { GUTTER_MM } from '../flow/flowSections';
import { LINE } from '../page/measures';
import type { Box, Item, PaperPoint } from '../page/page';
import type { SheetSetting } from '../setting';
import { detailsFor } from './details';
import { placeTexts } from './placeTexts';
import { type PlanView, shownBounds } from './planView';
import { planWindow } from './planWindow';
import type { Edge } from './tiles';
import { withDetails } from './withDetails';

/** A plan in its window, and the details that crowded points ask for: they are lettered on from `before`. */
export function windowItems(
  drawing: Drawing,
  view: PlanView,
  asked: Readonly<{ body: Box; before: number; isOnly: boolean }>,
  setting: SheetSetting,
) {
  const { lettering, site } = setting;
  const first = placeTexts(drawing, view, lettering);
  const half = (asked.body.width - GUTTER_MM) / 2;
  const details = (widths: readonly number[]) =>
    detailsFor(first.missing, 1000 / view.mmPerMetre, site.units, { widths, before: asked.before });
  const several = details([half, asked.body.width]);
  // one alone has the whole width
  const found = several.length === 1 && asked.isOnly ? details([asked.body.width]) : several;
  const framed = withDetails(drawing, found, {
    nameOf: setting.words.sheet.detailName,
    shown: shownBounds(view),
  });
  const { placed } = found.length === 0 ? first : placeTexts(framed, view, lettering);
  return { items: [planWindow(framed, placed, view, setting)], details: found };
}

/** The window's edges, but for those that a match line takes. */
export function windowEdges(
  { x, y, width, height }: Box,
  taken: Readonly<Partial<Record<Edge, unknown>>>,
  { inks }: SheetSetting,
): readonly Item[] {
  const [right, low] = [x + width, y + height];
  const edges: readonly (readonly [Edge, PaperPoint, PaperPoint])[] = [
    ['upper', { x, y }, { x: right, y }],
    ['right', { x: right, y }, { x: right, y: low }],
    ['lower', { x: right, y: low }, { x, y: low }],
    ['left', { x, y: low }, { x, y }],
  ];
  const lines = edges.flatMap(([edge, from, to]) => (taken[edge] == null ? [[from, to]] : []));
  return [{ is: 'lines', lines, closed: false, pen: { colour: inks.ink, width: LINE.fine } }];
}
