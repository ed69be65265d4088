import type { Drawing } from '@footmark/drawing';
import type { Box, Item } from '../page/page';
import type { Detail } from './details';
import type { PanelPlace } from './panelPlace';
import type { PlanFrame } from './planFrame';

/** A plan as it is turned, how it lies, and the room of its pages. */
export type LaidPlan = Readonly<{ whole: Drawing; frame: PlanFrame; panel: PanelPlace; body: Box }>;

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
