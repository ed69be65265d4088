import type { Point } from '@footmark/geometry';
import type { Drawing, LayerName } from '../drawing';
import { expandPattern } from '../pattern';
import type { Primitive } from '../primitive';
import { symbols } from '../symbols/symbols';
import type { Obstacle } from './placedLabel';

/** Texts may stand on lines of these, as on all lines that are not opaque: foliage is pale. */
const PALE: ReadonlySet<LayerName> = new Set(['trees']);

/** The tapes of a mark are read off the plan: a text on one is as bad as a text on this many plain lines. */
const TIE_WEIGHT = 4;

/** Half the pen (mm) that a disc of true size is drawn with. */
const RIM_MM = 0.3;

/**
 * What the labels of a drawing keep off at a scale: symbols, trunks and other filled discs, flow arrows; and, where they can,
 * drawn lines. Layers that are hidden are left out of `drawing` by the caller.
 */
export function labelObstacles(drawing: Drawing, mmPerMetre: number): readonly Obstacle[] {
  return drawing.layers.flatMap(({ name, primitives }) =>
    primitives.flatMap((p) => obstaclesOf(p, name, mmPerMetre)),
  );
}

function obstaclesOf(of: Primitive, layer: LayerName, mmPerMetre: number): readonly Obstacle[] {
  switch (of.kind) {
    case 'symbol':
      return [{ kind: 'disc', at: of.at, radiusMm: symbols[of.symbol].clear }];
    case 'circle':
      if (of.fill === undefined) return [];
      return [{ kind: 'disc', at: of.centre, radiusMm: of.radius * mmPerMetre + RIM_MM }];
    case 'pattern':
      if (of.pattern === 'flow') {
        return expandPattern(of, mmPerMetre).flatMap((p) => obstaclesOf(p, layer, mmPerMetre));
      }
      return of.pattern === 'unseen' || of.pattern === 'slope' ? [] : strokesOf(of.points, of.closed, 1);
    case 'line':
      if (PALE.has(layer) || of.stroke === undefined || of.stroke.opacity !== undefined) return [];
      return strokesOf(of.points, of.closed, layer === 'ties' ? TIE_WEIGHT : 1);
  }
}

function strokesOf(points: readonly Point[], closed: boolean, weight: number): readonly Obstacle[] {
  const count = closed ? points.length : points.length - 1;
  return points.slice(0, Math.max(0, count)).flatMap((from, i): readonly Obstacle[] => {
    const to = points[(i + 1) % points.length];
    return to === undefined ? [] : [{ kind: 'stroke', from, to, weight }];
  });
}
