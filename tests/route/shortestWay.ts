// How short any way around the obstacles could be, were there no bends: each made wider by jsts (2.12), and Dijkstra over the corners that see
// each other. jsts makes round corners with chords, inside the true ones: the way is never longer than the true one.

import type { Point } from '@footmark/geometry';
import type { Obstacle, RouteRequest } from '@footmark/route';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js';

/** Metres: what the checker lets pass. */
const TOLERANCE = 1e-3;
/** Metres between two places of a straight end that are gone to; the way to one between them is shorter by half of it at most. */
const SPACING = 0.05;
const QUADRANT = 16;

/**
 * Metres; null where even that is barred. Where a straight runs exactly through a corner it may be shorter than any way, and never longer than
 * the shortest.
 */
export function shortestWay(request: RouteRequest): number | null {
  const rings = barred(request);
  const targets = request.ends.flatMap(({ at }) => ('x' in at ? [at] : spread(at.from, at.to)));
  const slack = TOLERANCE + (targets.length > request.ends.length ? SPACING / 2 : 0);
  const corners: Corner[] = [{ at: request.start.at, ring: null, index: 0 }];
  for (const ring of rings) for (const [index, at] of ring.entries()) corners.push({ at, ring, index });
  const ends = targets.map((at): Corner => ({ at, ring: null, index: 0 }));
  const all = [...corners, ...ends];
  const reached = new Map<Corner, number>(all.map((c, i) => [c, i === 0 ? 0 : Infinity]));
  const open = new Set(all);
  while (open.size > 0) {
    const [from, length] = nearest(open, reached);
    if (length === Infinity) return null;
    if (ends.includes(from)) return length - slack;
    open.delete(from);
    for (const to of open) {
      const through = length + Math.hypot(to.at.x - from.at.x, to.at.y - from.at.y);
      if (through < (reached.get(to) ?? 0) && sees(from, to, rings)) reached.set(to, through);
    }
  }
  return null;
}

type Ring = readonly Point[];
type Corner = { readonly at: Point; readonly ring: Ring | null; readonly index: number };

function nearest(open: ReadonlySet<Corner>, reached: ReadonlyMap<Corner, number>): [Corner, number] {
  let best: [Corner, number] | null = null;
  for (const corner of open) {
    const length = reached.get(corner) ?? Infinity;
    if (best === null || length < best[1]) best = [corner, length];
  }
  if (best === null) throw new Error('nothing is open');
  return best;
}

function sees(a: Corner, b: Corner, rings: readonly Ring[]): boolean {
  if (a.ring !== null && a.ring === b.ring) {
    const apart = Math.abs(a.index - b.index);
    if (apart === 1 || apart === a.ring.length - 1) return true;
  }
  const middle = { x: (a.at.x + b.at.x) / 2, y: (a.at.y + b.at.y) / 2 };
  let inside = false;
  for (const ring of rings) {
    let from = ring.at(-1);
    for (const to of ring) {
      if (from !== undefined) {
        if (crosses(a.at, b.at, from, to)) return false;
        if (isLeftOf(middle, from, to)) inside = !inside;
      }
      from = to;
    }
  }
  return !inside;
}

/** Whether the inner parts of two segments cross. */
function crosses(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  const [c1, d1, a1, b1] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  const apart = (s: number, t: number) => Math.abs(s) > 1e-9 && Math.abs(t) > 1e-9 && s > 0 !== t > 0;
  return apart(c1, d1) && apart(a1, b1);
}

/** Whether a ray from the point towards +x meets the edge. */
function isLeftOf(p: Point, a: Point, b: Point): boolean {
  if (a.y > p.y === b.y > p.y) return false;
  return p.x < a.x + ((p.y - a.y) * (b.x - a.x)) / (b.y - a.y);
}

const factory = new GeometryFactory();

/** The outlines of all that the centre line may not enter, what the free ends may let it enter taken off. */
function barred(request: RouteRequest): readonly Ring[] {
  const { start, ends, freeEnds, diameter } = request;
  const free = [start.at, ...ends.map((e) => e.at)].map((at) =>
    // chords cut corners: wide enough that they do not
    wider(
      lineOf('x' in at ? [at] : [at.from, at.to]),
      (freeEnds + TOLERANCE) / Math.cos(Math.PI / 4 / QUADRANT),
    ),
  );
  const wide = request.obstacles.map((o) => {
    const by = o.clearance + diameter / 2 - TOLERANCE;
    return free.reduce((left, zone) => OverlayOp.difference(left, zone), widened(o, by));
  });
  return ringsOf(UnaryUnionOp.union(factory.createGeometryCollection(wide)));
}

function widened({ shape }: Obstacle, by: number): Geometry {
  switch (shape.is) {
    case 'circle':
      return wider(lineOf([shape.centre]), shape.radius + by);
    case 'line':
      return wider(lineOf(shape.points), shape.halfWidth + by);
    case 'ring':
      return wider(factory.createPolygon(coordinates([...shape.points, ...shape.points.slice(0, 1)])), by);
  }
}

function wider(geometry: Geometry, by: number): Geometry {
  return BufferOp.bufferOp(geometry, by, QUADRANT);
}

function lineOf(points: readonly Point[]): Geometry {
  const made = coordinates(points);
  return made.length === 1 ? factory.createPoint(made[0]) : factory.createLineString(made);
}

function coordinates(points: readonly Point[]): Coordinate[] {
  return points.map((p) => new Coordinate(p.x, p.y));
}

function ringsOf(union: Geometry): readonly Ring[] {
  const rings: Ring[] = [];
  for (let i = 0; i < union.getNumGeometries(); i++) {
    const polygon: ReturnType<GeometryFactory['createPolygon']> = union.getGeometryN(i) as never;
    const lines = [polygon.getExteriorRing()];
    for (let k = 0; k < polygon.getNumInteriorRing(); k++) lines.push(polygon.getInteriorRingN(k));
    for (const line of lines) {
      // the first point comes again as the last
      rings.push(
        line
          .getCoordinates()
          .slice(1)
          .map(({ x, y }: Coordinate) => ({ x, y })),
      );
    }
  }
  return rings.filter((ring) => ring.length > 2);
}

function spread(from: Point, to: Point): readonly Point[] {
  const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / SPACING);
  return Array.from({ length: steps + 1 }, (_, i) => ({
    x: from.x + (i / steps) * (to.x - from.x),
    y: from.y + (i / steps) * (to.y - from.y),
  }));
}
