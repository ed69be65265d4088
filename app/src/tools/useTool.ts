import type { Point } from '@footmark/geometry';
import { freeName, kindSpec, type LegSpot, takenNames } from '@footmark/site';
import { currentSite, derivedFrom, edit } from '../session/siteSession';
import { select, take, useWorkbench } from '../session/workbench';
import { words } from '../words';
import { finishFeature, finishPath } from './finishDraft';
import { newId } from './newId';
import {
  type DraftPoint,
  type DrawTool,
  FEWEST_POINTS,
  isComplete,
  isReady,
  type Subject,
  startDraw,
  withoutLast,
  withPoint,
} from './tool';

/** Takes the drawing tool for a subject in hand. */
export function startDrawing(subject: Subject): void {
  take(startDraw(subject, subject.what === 'path' ? 'line' : kindSpec(subject.kind).shape));
}

/** Takes the measure in hand, or puts it down. */
export function toggleMeasure(): void {
  const { tool } = useWorkbench.getState();
  take(tool?.is === 'measure' ? null : { is: 'measure', points: [] });
}

/** Puts a point into the draft; a point feature is finished by it. */
export function placeInTool(point: DraftPoint): void {
  const { tool } = useWorkbench.getState();
  if (tool?.is !== 'draw') return;
  const next = withPoint(tool, point);
  useWorkbench.setState({ tool: next });
  if (isComplete(next)) finishDrawing();
}

/** Puts a point down with the measure in hand. */
export function measureAt(at: Point): void {
  const { tool } = useWorkbench.getState();
  if (tool?.is === 'measure') useWorkbench.setState({ tool: { ...tool, points: [...tool.points, at] } });
}

/** Takes back the last point of what is in hand; with none left, puts the tool down. */
export function stepBack(): void {
  const { tool } = useWorkbench.getState();
  if (tool === null) return;
  if (tool.points.length === 0) take(null);
  else useWorkbench.setState({ tool: withoutLast(tool) });
}

/**
 * Makes the draft a thing of the site and selects it. Does nothing while points are missing. With `closing` the draft's last point
 * is not a corner: that leg is kept as the closing course of the outline.
 */
export function finishDrawing(closing?: LegSpot): void {
  const { tool } = useWorkbench.getState();
  if (tool?.is !== 'draw' || !isReady(tool)) return;
  const id = newId(tool.subject.what === 'path' ? 'p' : 'f');
  const name = nameFor(tool);
  const { subject } = tool;
  if (subject.what === 'feature') {
    const added = edit(`Add ${words.featureKindName(subject.kind).toLowerCase()}`, (site) =>
      finishFeature(site, subject.kind, tool, id, name, closing),
    );
    if (!added) return;
    take(null);
    select(subject.from ?? { kind: 'feature', id });
    return;
  }
  const drawn = edit('Draw a pipe', (site) => finishPath(site, tool, id, name, derivedFrom(currentSite())));
  if (!drawn) return;
  take(null);
  select({ kind: 'path', id });
}

/** Puts the draft away; what it was drawn for is in hand again. */
export function cancelDrawing(): void {
  const { tool } = useWorkbench.getState();
  const from = tool?.is === 'draw' && tool.subject.what === 'feature' ? tool.subject.from : undefined;
  take(null);
  if (from !== undefined) select(from);
}

/** How many points are still missing before the draft can be finished. */
export function missingPoints(tool: DrawTool): number {
  return Math.max(0, FEWEST_POINTS[tool.shape] - tool.points.length);
}

/** 'Cleanout', then 'Cleanout 2' and so on: a name to start with, so that ties can be read. */
function nameFor(tool: DrawTool): string {
  const site = currentSite();
  const base =
    tool.subject.what === 'path'
      ? site.paths.length === 0
        ? 'Lateral'
        : 'Branch'
      : words.featureKindName(tool.subject.kind);
  return freeName(takenNames(site), base);
}
