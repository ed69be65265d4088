import { GAP } from '../page/measures';
import type { Box, PaperPoint } from '../page/page';
import type { SheetSetting } from '../setting';
import type { LaidPlan, PlanPages } from './laidPlan';
import type { PlanFrame } from './planFrame';
import type { PlanView } from './planView';
import { windowEdges, windowItems } from './planWindows';
import { mmPerMetreOf } from './scales';

/** Less than this (mm) below a plan is given to it. */
const LEAST_REST_MM = 48;
const LOWEST_PLAN_MM = 78;

/** A plan that has room on one page; `need`: the height (mm) that it takes. */
export function onePage(
  { whole, frame, panel, body }: LaidPlan,
  need: number,
  setting: SheetSetting,
): PlanPages {
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
    pages: [[...items, ...windowEdges(box, {}, setting), ...shownPanel.paint(at)]],
    rest: left < LEAST_REST_MM ? null : rest,
    denominator: frame.denominator,
    drawing: whole,
    details,
    legendFollows: !hasLegend,
  };
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
