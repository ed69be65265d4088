import { type Bounds, boundsOf, type Drawing } from '@footmark/drawing';
import { fail, ok, type Point, type Result } from '@footmark/geometry';
import { GAP, LINE } from '../page/measures';
import type { Box, Item } from '../page/page';
import { bodyBox, cornersOf } from '../page/pageFrame';
import type { SheetSetting } from '../setting';
import { stacked, type TextBlock } from '../text/textBlock';
import { corePoints } from './corePoints';
import { keyPlan } from './keyPlan';
import { MATCH_MM, matchLines } from './matchLines';
import { paintLabels } from './paintLabels';
import { paintPrimitives } from './paintPrimitives';
import { type PlanFrame, planFrame, roomFor } from './planFrame';
import { beside, diggingPanel, legendPanel, scaleBlock, titled } from './planPanel';
import type { PlanView } from './planView';
import { mmPerMetreOf } from './scales';
import { MOST_TILES, neighboursOf, tilesOver } from './tiles';
import { pointsOf, turnDrawing } from './turnDrawing';

/** Pages with a plan: what is on each, and what of the last one is left bare. */
export type PlanPages = Readonly<{
  pages: readonly (readonly Item[])[];
  rest: Box | null;
  denominator: number | null;
}>;

/** Beside a plan, mm. */
const PANEL_MM = 58;
/** Paper (mm) about what must be seen whole: room for its outer texts. */
const AIR_MM = 7;
/** Less than this (mm) below a plan is given to it. */
const LEAST_REST_MM = 48;
const LOWEST_PLAN_MM = 90;

/** The plan on as many pages as its scale asks for, each with north, scale, legend and what must be known first. */
export function planPages(drawing: Drawing, setting: SheetSetting): Result<PlanPages, 'too-many-sheets'> {
  const { options, site } = setting;
  const body = bodyBox(setting);
  const core = corePoints(drawing);
  const turned = body.width > body.height;
  // the legend of all gives the panel its size before the plan has a scale
  const room = turned
    ? { width: body.width - PANEL_MM - GAP.large, height: body.height }
    : {
        width: body.width,
        height:
          body.height -
          panelRow({ drawing, frame: NO_FRAME, key: null }, body.width, setting).height -
          GAP.large,
      };
  const inner = { width: room.width - 2 * AIR_MM, height: room.height - 2 * AIR_MM };
  const frame = planFrame(core, inner, options.scale, site.units);
  if (frame === null) return ok({ pages: [], rest: null, denominator: null });
  const whole = turnDrawing(drawing, frame.turn);
  const need = roomFor(frame);
  const fits = need.width <= inner.width + ROUNDING_MM && need.height <= inner.height + ROUNDING_MM;
  const laid = { whole, frame, room, turned, body };
  return fits ? ok(onePage(laid, need.height + 2 * AIR_MM, setting)) : manyPages(laid, setting);
}

const ROUNDING_MM = 1e-6;
const NO_FRAME: PlanFrame = { turn: 0, denominator: 100, bounds: { minX: 0, minY: 0, maxX: 0, maxY: 0 } };

type Laid = Readonly<{
  whole: Drawing;
  frame: PlanFrame;
  room: Readonly<{ width: number; height: number }>;
  turned: boolean;
  body: Box;
}>;

function onePage({ whole, frame, room, turned, body }: Laid, need: number, setting: SheetSetting): PlanPages {
  const panel = { drawing: whole, frame, key: null };
  const column = panelColumn(panel, setting);
  const least = turned ? Math.max(need, column.height) : need;
  const low = Math.max(LOWEST_PLAN_MM, least);
  const below = body.height - low - (turned ? 0 : body.height - room.height);
  const height = below < LEAST_REST_MM ? room.height : Math.min(low, room.height);
  const box: Box = { x: body.x, y: body.y, width: room.width, height };
  const items = [
    ...windowItems(whole, viewOf(frame, box), setting),
    ...border(box, setting),
    ...(turned
      ? column.paint({ x: box.x + box.width + GAP.large, y: box.y })
      : panelRow(panel, body.width, setting).paint({ x: box.x, y: box.y + height + GAP.medium })),
  ];
  const down = turned ? height : height + (body.height - room.height);
  const rest = { ...body, y: body.y + down + GAP.large, height: body.height - down - GAP.large };
  return {
    pages: [items],
    rest: rest.height < LEAST_REST_MM - GAP.large ? null : rest,
    denominator: frame.denominator,
  };
}

function manyPages(
  { whole, frame, room, turned, body }: Laid,
  setting: SheetSetting,
): Result<PlanPages, 'too-many-sheets'> {
  const k = mmPerMetreOf(frame.denominator);
  const keyRoom = turned ? 0 : KEY_ROW_MM;
  const box: Box = {
    x: body.x + MATCH_MM,
    y: body.y + MATCH_MM,
    width: room.width - 2 * MATCH_MM,
    height: room.height - 2 * MATCH_MM - keyRoom,
  };
  const size = { width: box.width / k, height: box.height / k };
  const core = corePoints(whole);
  const tiles = tilesOver(
    frame.bounds,
    size,
    (piece) => !core.some((p) => isIn(p, piece)) && !crosses(whole, piece),
  );
  if (tiles.length > MOST_TILES) return fail('too-many-sheets');
  const pages = tiles.map((tile) => {
    const view: PlanView = { box, corner: tile.corner, mmPerMetre: k };
    const shown = inView(whole, {
      minX: tile.corner.x,
      minY: tile.corner.y,
      maxX: tile.corner.x + size.width,
      maxY: tile.corner.y + size.height,
    });
    const key = (width: number) =>
      titled(
        setting.words.sheet.heading('key-plan'),
        keyPlan(whole, tiles, size, tile, width, setting),
        width,
        setting,
      );
    const panel = { drawing: shown, frame, key };
    return [
      ...windowItems(whole, view, setting),
      ...border(box, setting),
      ...matchLines(box, neighboursOf(tile, tiles), setting),
      ...(turned
        ? panelColumn(panel, setting).paint({ x: body.x + room.width + GAP.large, y: body.y })
        : panelRow(panel, body.width, setting).paint({
            x: body.x,
            y: box.y + box.height + MATCH_MM + GAP.medium,
          })),
    ];
  });
  return ok({ pages, rest: null, denominator: frame.denominator });
}

/** A key plan in a row may be higher than the legend beside it. */
const KEY_ROW_MM = 16;

function windowItems(drawing: Drawing, view: PlanView, setting: SheetSetting): readonly Item[] {
  const { inks, lettering } = setting;
  const primitives = drawing.layers.flatMap((l) => l.primitives);
  return [
    {
      is: 'window',
      box: view.box,
      items: [...paintPrimitives(primitives, view, inks), ...paintLabels(drawing, view, inks, lettering)],
    },
  ];
}

function border(box: Box, { inks }: SheetSetting): readonly Item[] {
  return [
    { is: 'lines', lines: [cornersOf(box)], closed: true, pen: { colour: inks.ink, width: LINE.fine } },
  ];
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

type Panel = Readonly<{ drawing: Drawing; frame: PlanFrame; key: ((width: number) => TextBlock) | null }>;

function panelColumn({ drawing, frame, key }: Panel, setting: SheetSetting): TextBlock {
  return stacked(
    [
      scaleBlock(frame, PANEL_MM, setting),
      ...(key === null ? [] : [key(PANEL_MM)]),
      legendPanel(drawing, PANEL_MM, setting),
      diggingPanel(PANEL_MM, setting),
    ],
    GAP.large,
  );
}

/** Of what stands below a plan, mm: the scale, and the key plan where there is one. */
const FOOT = { scale: 56, key: 44 } as const;

function panelRow({ drawing, frame, key }: Panel, width: number, setting: SheetSetting): TextBlock {
  const left = FOOT.scale + GAP.large;
  const right = key === null ? 0 : FOOT.key + GAP.large;
  const digging = diggingPanel(width - left - right, setting);
  const first = beside([
    { block: scaleBlock(frame, FOOT.scale, setting), x: 0 },
    { block: digging, x: left },
    ...(key === null ? [] : [{ block: key(FOOT.key), x: width - FOOT.key }]),
  ]);
  return stacked([first, legendPanel(drawing, width, setting)], GAP.medium);
}

function isIn({ x, y }: Point, { minX, minY, maxX, maxY }: Bounds): boolean {
  return x >= minX && x <= maxX && y >= minY && y <= maxY;
}

/** What of a drawing comes near a piece of plan. */
function inView(drawing: Drawing, piece: Bounds): Drawing {
  return {
    ...drawing,
    layers: drawing.layers.map((layer) => ({
      ...layer,
      primitives: layer.primitives.filter((p) => {
        const b = boundsOf(pointsOf(p));
        return (
          b !== null &&
          b.minX <= piece.maxX &&
          b.maxX >= piece.minX &&
          b.minY <= piece.maxY &&
          b.maxY >= piece.minY
        );
      }),
    })),
  };
}

/** Whether the pipe or a tape's point comes by, also where no corner of it lies. */
function crosses(drawing: Drawing, piece: Bounds): boolean {
  return inView({ ...drawing, layers: drawing.layers.filter((l) => l.name === 'pipe') }, piece).layers.some(
    (l) => l.primitives.length > 0,
  );
}
