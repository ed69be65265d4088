import type { Bounds, Drawing, LayerName } from '@footmark/drawing';
import { fail, ok, type Result } from '@footmark/geometry';
import { GUTTER_MM } from '../flow/flowSections';
import { GAP, LINE } from '../page/measures';
import type { Box, Item, PaperPoint } from '../page/page';
import { bodyBox } from '../page/pageFrame';
import type { SheetSetting } from '../setting';
import { comesInto } from './comesInto';
import { corePoints } from './corePoints';
import { type Detail, detailsFor, withDetails } from './details';
import { keyPlan } from './keyPlan';
import { MATCH_MM, matchLines } from './matchLines';
import { mergeTexts, SAME_MM } from './mergeTexts';
import { type PanelPlace, panelPlace } from './panelPlace';
import { placeTexts } from './placeTexts';
import { type PlanFrame, planFrame, roomFor } from './planFrame';
import { titled } from './planPanel';
import type { PlanView } from './planView';
import { planWindow } from './planWindow';
import { mmPerMetreOf } from './scales';
import { type Edge, MOST_TILES, neighboursOf, tilesOver } from './tiles';
import { turnDrawing } from './turnDrawing';

/**
 * Pages with a plan: what is on each, what of the last one is left bare, at what scale, the plan as it is turned, what of it asks for a detail, and whether
 * its legend has found no room and is to follow.
 */
export type PlanPages = Readonly<{
  pages: readonly (readonly Item[])[];
  rest: Box | null;
  denominator: number | null;
  drawing: Drawing;
  details: readonly Detail[];
  legendFollows: boolean;
}>;

/** Paper (mm) about what must be seen whole: room for its outer texts. */
const AIR_MM = 6;
/** Less than this (mm) below a plan is given to it. */
const LEAST_REST_MM = 48;
const LOWEST_PLAN_MM = 78;
/** A plan that is this much too large still fits, far within its air. */
const ROUNDING_MM = 0.01;

/** The plan on as many pages as its scale asks for, each with north, scale, legend and what must be known first. */
export function planPages(drawing: Drawing, setting: SheetSetting): Result<PlanPages, 'too-many-sheets'> {
  const { options, site } = setting;
  const body = bodyBox(setting);
  const panel = panelPlace(drawing, body, setting);
  const { room } = panel;
  const inner = { width: room.width - 2 * AIR_MM, height: room.height - 2 * AIR_MM };
  const frame = planFrame(corePoints(drawing), inner, options.scale, site.units);
  if (frame === null) return ok({ ...NOTHING, drawing });
  const turned = turnDrawing(drawing, frame.turn);
  const whole = mergeTexts(turned, mmPerMetreOf(frame.denominator), { within: SAME_MM, always: false });
  const need = roomFor(frame);
  const fits = need.width <= inner.width + ROUNDING_MM && need.height <= inner.height + ROUNDING_MM;
  const laid = { whole, frame, panel, body };
  return fits ? ok(onePage(laid, need.height + 2 * AIR_MM, setting)) : manyPages(laid, setting);
}

const NOTHING = { pages: [], rest: null, denominator: null, details: [], legendFollows: false } as const;

type Laid = Readonly<{ whole: Drawing; frame: PlanFrame; panel: PanelPlace; body: Box }>;

function onePage({ whole, frame, panel, body }: Laid, need: number, setting: SheetSetting): PlanPages {
  const { room, beside } = panel;
  const { block: shownPanel, hasLegend } = panel.make({ drawing: whole, frame, key: null }, setting);
  const below = beside ? 0 : shownPanel.height + GAP.large;
  const low = Math.max(LOWEST_PLAN_MM, need, beside ? shownPanel.height : 0);
  const left = body.height - low - below;
  const height = left < LEAST_REST_MM ? body.height - below : low;
  const box: Box = { x: body.x, y: body.y, width: room.width, height };
  const { items, details } = windowItems(
    whole,
    viewOf(frame, box),
    { body, before: 0, isOnly: true },
    setting,
  );
  const at: PaperPoint = beside
    ? { x: box.x + box.width + GAP.large, y: box.y }
    : { x: box.x, y: box.y + height + GAP.medium };
  const down = height + below + GAP.medium;
  const rest = { ...body, y: body.y + down, height: body.height - down };
  return {
    pages: [[...items, ...border(box, {}, setting), ...shownPanel.paint(at)]],
    rest: left < LEAST_REST_MM ? null : rest,
    denominator: frame.denominator,
    drawing: whole,
    details,
    legendFollows: !hasLegend,
  };
}

function manyPages(
  { whole, frame, panel, body }: Laid,
  setting: SheetSetting,
): Result<PlanPages, 'too-many-sheets'> {
  const { room, beside } = panel;
  const k = mmPerMetreOf(frame.denominator);
  const box: Box = {
    x: body.x + MATCH_MM,
    y: body.y + MATCH_MM,
    width: room.width - 2 * MATCH_MM,
    height: room.height - 2 * MATCH_MM - (beside ? 0 : KEY_ROW_MM),
  };
  const size = { width: box.width / k, height: box.height / k };
  const telling = whole.layers
    .filter((layer) => TELLING.has(layer.name))
    .flatMap((layer) => layer.primitives);
  const tiles = tilesOver(frame.bounds, size, (piece) => !telling.some((p) => comesInto(p, piece)));
  if (tiles === null || tiles.length > MOST_TILES) return fail('too-many-sheets');
  const details: Detail[] = [];
  let legendFollows = false;
  const pages = tiles.map((tile) => {
    const { corner } = tile;
    const view: PlanView = { box, corner, mmPerMetre: k };
    const shown = inView(whole, {
      minX: corner.x,
      minY: corner.y,
      maxX: corner.x + size.width,
      maxY: corner.y + size.height,
    });
    const window = windowItems(whole, view, { body, before: details.length, isOnly: false }, setting);
    details.push(...window.details);
    const key = (width: number) =>
      titled(
        setting.words.sheet.heading('key-plan'),
        keyPlan(whole, tiles, size, tile, width, setting),
        width,
        setting,
      );
    const explained = panel.make({ drawing: shown, frame, key }, setting);
    legendFollows ||= !explained.hasLegend;
    const neighbours = neighboursOf(tile, tiles);
    const at: PaperPoint = beside
      ? { x: body.x + room.width + GAP.large, y: body.y }
      : { x: body.x, y: box.y + box.height + MATCH_MM + GAP.medium };
    return [
      ...window.items,
      ...border(box, neighbours, setting),
      ...matchLines(box, neighbours, setting),
      ...explained.block.paint(at),
    ];
  });
  return ok({
    pages,
    rest: null,
    denominator: frame.denominator,
    drawing: whole,
    details,
    legendFollows,
  });
}

/** A key plan below a plan is higher than what stands beside it by so much at most. */
const KEY_ROW_MM = 16;

/** A plan in its window, and the details that crowded points ask for: they are lettered on from `before`. */
function windowItems(
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
  const framed = withDetails(drawing, found, setting.words.sheet.detailName);
  const { placed } = found.length === 0 ? first : placeTexts(framed, view, lettering);
  return { items: [planWindow(framed, placed, view, setting)], details: found };
}

/** The window's edges, but for those that a match line takes. */
function border(
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

/** The plan in the middle of its window. */
function viewOf({ bounds, denominator }: PlanFrame, box: Box): PlanView {
  const mmPerMetre = mmPerMetreOf(denominator);
  return {
    box,
    mmPerMetre,
    corner: {
      x: (bounds.minX + bounds.maxX - box.width / mmPerMetre) / 2,
      y: (bounds.minY + bounds.maxY - box.height / mmPerMetre) / 2,
    },
  };
}

/** What of a drawing comes near a piece of plan. */
function inView(drawing: Drawing, piece: Bounds): Drawing {
  return {
    ...drawing,
    layers: drawing.layers.map((layer) => ({
      ...layer,
      primitives: layer.primitives.filter((p) => comesInto(p, piece)),
    })),
  };
}

/** A piece of plan with none of these on it is left out. */
const TELLING: ReadonlySet<LayerName> = new Set([
  'land',
  'buildings',
  'structures',
  'services',
  'trees',
  'excavation',
  'pipe',
  'drain',
  'ties',
  'marks',
]);
