import type { Point } from '@footmark/geometry';
import { sameValue } from '@footmark/site';
import type { Drawing } from './drawing';
import type { PlacedLabel } from './labels/placedLabel';
import type { Primitive } from './primitive';
import { primitivePoints } from './primitivePoints';

/**
 * What has to be painted anew where `before` was painted and `after` is to be: primitives of either that do not look the same in the other, or
 * have another place in the painting order. What a primitive is of does not count.
 */
export function changedPrimitives(before: Drawing, after: Drawing): readonly Primitive[] {
  const layers = new Map(before.layers.map((layer) => [layer.name, layer.primitives]));
  const changed = after.layers.flatMap(({ name, primitives }) => {
    const old = layers.get(name) ?? [];
    layers.delete(name);
    return changedIn(old, primitives);
  });
  return [...changed, ...[...layers.values()].flat()];
}

/** The same of placed labels, whose order does not show. */
export function changedLabels(
  before: readonly PlacedLabel[],
  after: readonly PlacedLabel[],
): readonly PlacedLabel[] {
  if (before === after) return [];
  const old = new Map(before.map((placed) => [placed.label.id, placed]));
  const changed = after.flatMap((placed) => {
    const last = old.get(placed.label.id);
    if (last === undefined) return [placed];
    old.delete(placed.label.id);
    return looksLikeLabel(last, placed) ? [] : [last, placed];
  });
  return [...changed, ...old.values()];
}

/** Between what begins and ends both lists alike, things are taken for the same by their number, where there are as many. */
function changedIn(before: readonly Primitive[], after: readonly Primitive[]): readonly Primitive[] {
  let start = 0;
  while (start < before.length && start < after.length && alikeAt(before, start, after, start)) start++;
  let [endBefore, endAfter] = [before.length, after.length];
  while (endBefore > start && endAfter > start && alikeAt(before, endBefore - 1, after, endAfter - 1)) {
    endBefore--;
    endAfter--;
  }
  const [old, now] = [before.slice(start, endBefore), after.slice(start, endAfter)];
  if (old.length !== now.length) return [...old, ...now];
  return now.flatMap((primitive, i) => {
    const last = old[i];
    return last === undefined || looksLike(last, primitive) ? [] : [last, primitive];
  });
}

function alikeAt(before: readonly Primitive[], i: number, after: readonly Primitive[], j: number): boolean {
  const [a, b] = [before[i], after[j]];
  return a !== undefined && b !== undefined && looksLike(a, b);
}

function looksLike(a: Primitive, b: Primitive): boolean {
  return a === b || (samePoints(primitivePoints(a), primitivePoints(b)) && sameValue(looksOf(a), looksOf(b)));
}

/** All that shows of a primitive besides where its points lie. */
function looksOf(of: Primitive): readonly unknown[] {
  switch (of.kind) {
    case 'line':
      return [of.kind, of.closed, of.stroke, of.fill];
    case 'circle':
      return [of.kind, of.stroke, of.fill];
    case 'symbol':
      return [of.kind, of.symbol, of.azimuth, of.stroke, of.fill];
    case 'pattern':
      return [of.kind, of.closed, of.pattern, of.spacing, of.reach, of.stroke];
  }
}

function looksLikeLabel(a: PlacedLabel, b: PlacedLabel): boolean {
  return (
    a === b ||
    (a.text === b.text &&
      a.azimuth === b.azimuth &&
      samePoint(a.at, b.at) &&
      a.label.height === b.label.height &&
      a.label.ink === b.label.ink &&
      a.label.weight === b.label.weight &&
      a.label.seat === b.label.seat &&
      samePoints(a.leader ?? [], b.leader ?? []))
  );
}

/** To the last bit: what is within a tolerance again and again moves on unseen. */
function samePoint(a: Point, b: Point | undefined): boolean {
  return a.x === b?.x && a.y === b.y;
}

function samePoints(a: readonly Point[], b: readonly Point[]): boolean {
  return a.length === b.length && a.every((p, i) => samePoint(p, b[i]));
}
