import type { Point } from '@footmark/geometry';
import type { FeatureKind, Ref, Spot, Target } from '@footmark/site';

/**
 * What is being drawn: a feature of a kind, or a pipe. `fields`: what is known of the feature already; `from`: what it is drawn for, which
 * is in hand again afterwards.
 */
export type Subject =
  | {
      readonly what: 'feature';
      readonly kind: FeatureKind;
      readonly fields?: Readonly<Record<string, unknown>>;
      readonly from?: Target;
    }
  | { readonly what: 'path' };

/** One point of a draft: how it is placed and, for a pipe's end on another pipe's leg, where that leg is to get a junction. */
export type DraftPoint = { readonly spot: Spot; readonly junction?: Junction };

/** A place on the leg of a path behind the vertex `after` where a branch comes in. */
export type Junction = { readonly path: string; readonly after: string; readonly at: Point };

/** Puts down points until its subject has enough. */
export type DrawTool = {
  readonly is: 'draw';
  readonly subject: Subject;
  readonly shape: 'point' | 'line' | 'area';
  readonly points: readonly DraftPoint[];
};

/** Reads lengths and directions off the plan, from tap to tap. */
export type MeasureTool = { readonly is: 'measure'; readonly points: readonly Point[] };

/** The tool in the hand. */
export type Tool = DrawTool | MeasureTool;

/** Fewest points that a subject of this shape can be finished with. */
export const FEWEST_POINTS = { point: 1, line: 2, area: 3 } as const;

export function startDraw(subject: Subject, shape: DrawTool['shape']): DrawTool {
  return { is: 'draw', subject, shape, points: [] };
}

/** The tool with one point more. */
export function withPoint(tool: DrawTool, point: DraftPoint): DrawTool {
  return { ...tool, points: [...tool.points, point] };
}

/** The tool without its last point. */
export function withoutLast<T extends Tool>(tool: T): T {
  return { ...tool, points: tool.points.slice(0, -1) };
}

/** Whether the draft can become a thing now. */
export function isReady(tool: DrawTool): boolean {
  return tool.points.length >= FEWEST_POINTS[tool.shape];
}

/** Whether the draft is done without asking: a point has one. */
export function isComplete(tool: DrawTool): boolean {
  return tool.shape === 'point' && tool.points.length === 1;
}

/** Where a press landed, and why there. All but `point` and `middle` are places by eye. */
export type Landing =
  | { readonly on: 'point'; readonly ref: Ref; readonly at: Point }
  | { readonly on: 'middle'; readonly from: Ref; readonly to: Ref; readonly at: Point }
  | { readonly on: 'start'; readonly at: Point }
  | { readonly on: 'pipe'; readonly junction: Junction; readonly at: Point }
  | { readonly on: 'square'; readonly from: Ref; readonly to: Ref; readonly at: Point }
  | { readonly on: 'line'; readonly from: Ref; readonly to: Ref; readonly at: Point }
  | { readonly on: 'extension'; readonly from: Ref; readonly to: Ref; readonly at: Point }
  /** `degrees` of turn from the leg before, right positive; null for the first leg, which lies with the sheet. */
  | { readonly on: 'angle'; readonly degrees: number | null; readonly at: Point }
  | { readonly on: 'ground'; readonly at: Point };

/** The draft point that a landing makes: known points and middles are held on to, the rest is put there by eye. */
export function pointFromLanding(landing: Landing): DraftPoint {
  const finger: Spot = { by: 'finger', x: landing.at.x, y: landing.at.y };
  switch (landing.on) {
    case 'point':
      return { spot: { by: 'at', point: landing.ref } };
    case 'middle':
      return { spot: { by: 'between', from: landing.from, to: landing.to, fraction: 0.5 } };
    case 'pipe':
      return { spot: finger, junction: landing.junction };
    default:
      return { spot: finger };
  }
}
