import type { Drawing } from '@footmark/drawing';
import { ok, type Result } from '@footmark/geometry';
import { bodyBox } from '../page/pageFrame';
import type { SheetSetting } from '../setting';
import { corePoints } from './corePoints';
import type { PlanPages } from './laidPlan';
import { manyPages } from './manyPages';
import { mergeTexts, SAME_MM } from './mergeTexts';
import { onePage } from './onePage';
import { panelPlace } from './panelPlace';
import { planFrame, roomFor } from './planFrame';
import { mmPerMetreOf } from './scales';
import { turnDrawing } from './turnDrawing';

/** Paper (mm) about what must be seen whole: room for its outer texts. */
const AIR_MM = 6;
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
