import type { Point } from '@footmark/geometry';
import type { FeatureKind, Ref, Spot } from '@footmark/site';

/** What is being drawn: a feature of a kind, or a pipe. */
export type Subject = { readonly what: 'feature'; readonly kind: FeatureKind } | { readonly what: 'path' };

/** One point of a draft: how it is placed and, for a pipe's end on another pipe's leg, where that leg is to get a junction. */
export type DraftPoint = { readonly spot: Spot; readonly junction?: Junction };

/** A place on the leg of a path behind the vertex `after` where a branch comes in. */
export type Junction = { readonly path: string; readonly after: string; readonly at: Point };

/** A tool in the hand: so far there is one, which puts down points until its subject has enough. */
export type Tool = {
  readonly subject: Subject;
  readonly shape: 'point' | 'line' | 'area';
  readonly points: readonly DraftPoint[];
};

export type ToolEvent =
  | { readonly type: 'place'; readonly point: DraftPoint }
  | { readonly type: 'back' }
  | { readonly type: 'replace-last'; readonly point: DraftPoint };

/** Fewest points that a subject of this shape can be finished with. */
export const FEWEST_POINTS = { point: 1, line: 2, area: 3 } as const;

export function startTool(subject: Subject, shape: Tool['shape']): Tool {
  return { subject, shape, points: [] };
}

/** The tool after an event. Pure: knows no canvas, no component and no site. */
export function toolAfter(tool: Tool, event: ToolEvent): Tool {
  switch (event.type) {
    case 'place':
      return { ...tool, points: [...tool.points, event.point] };
    case 'back':
      return { ...tool, points: tool.points.slice(0, -1) };
    case 'replace-last':
      return { ...tool, points: [...tool.points.slice(0, -1), event.point] };
  }
}

/** Whether the draft can become a thing now. */
export function isReady(tool: Tool): boolean {
  return tool.points.length >= FEWEST_POINTS[tool.shape];
}

/** Whether the draft is done without asking: a point has one. */
export function isComplete(tool: Tool): boolean {
  return tool.shape === 'point' && tool.points.length === 1;
}

/** Where a tap landed: on a known point, on a leg of a path, or on bare ground. */
export type Landing =
  | { readonly on: 'point'; readonly ref: Ref; readonly at: Point }
  | { readonly on: 'leg'; readonly junction: Junction; readonly at: Point }
  | { readonly on: 'ground'; readonly at: Point };

/** The draft point that a landing makes. Features stand by themselves; pipes hold on to what they touch. */
export function pointFromLanding(tool: Tool, landing: Landing): DraftPoint {
  const finger: Spot = { by: 'finger', x: landing.at.x, y: landing.at.y };
  if (landing.on === 'point') return { spot: { by: 'at', point: landing.ref } };
  if (landing.on === 'leg' && tool.subject.what === 'path') {
    return { spot: finger, junction: landing.junction };
  }
  return { spot: finger };
}
