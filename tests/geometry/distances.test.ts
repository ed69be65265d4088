import {
  type Point,
  pointAtAzimuth,
  pointInRing,
  pointToPolyline,
  pointToRing,
  polylineToPolyline,
  polylineToRing,
  ringArea,
  segmentCrossesRing,
  segmentDistance,
} from '@footmark/geometry';
import PointLocation from 'jsts/org/locationtech/jts/algorithm/PointLocation.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import Location from 'jsts/org/locationtech/jts/geom/Location.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import RelateOp from 'jsts/org/locationtech/jts/operation/relate/RelateOp.js';
import { describe, expect, it } from 'vitest';

// Reference: JTS in JavaScript (jsts 2.12), an independent implementation of plane geometry. Shapes are random
// with a fixed seed, a yard in size (80 m), near the origin and a thousand kilometres from it.
const SHAPES = 2000;
/** Metres. Both sides round at about 1e-10 at a thousand kilometres. */
const AGREE_M = 1e-8;

const factory = new GeometryFactory();
const coordinates = (points: readonly Point[]) => points.map((p) => new Coordinate(p.x, p.y));
const jtsPoint = (p: Point) => factory.createPoint(new Coordinate(p.x, p.y));
const jtsLine = (points: readonly Point[]) => factory.createLineString(coordinates(points));
const jtsRing = (ring: readonly Point[]) => coordinates([...ring, ...ring.slice(0, 1)]);
const jtsPolygon = (ring: readonly Point[]) => factory.createPolygon(jtsRing(ring));

/** A linear congruential generator modulo 2^32 (Numerical Recipes constants, from memory): values in [0, 1). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function shapes(seed: number, origin: Point) {
  const random = seeded(seed);
  const point = (): Point => ({ x: origin.x + 80 * random(), y: origin.y + 80 * random() });
  const line = (): readonly Point[] => Array.from({ length: 2 + Math.floor(5 * random()) }, point);
  /** Corners at random radii at even angles about a centre: simple, mostly not convex. */
  const ring = (): readonly Point[] => {
    const centre = point();
    const corners = 3 + Math.floor(9 * random());
    return Array.from({ length: corners }, (_, i) =>
      pointAtAzimuth(centre, (-2 * Math.PI * i) / corners, 1 + 24 * random()),
    );
  };
  return { point, line, ring };
}

describe.each([
  ['near the origin', { x: -40, y: -40 }],
  ['far from it', { x: 1e6, y: -1e6 }],
])('least distances %s agree with a reference library', (_, origin) => {
  it('between segments', () => {
    const { point } = shapes(1, origin);
    for (let i = 0; i < SHAPES; i += 1) {
      const [a, b, c, d] = [point(), point(), point(), point()];
      const expected = DistanceOp.distance(jtsLine([a, b]), jtsLine([c, d]));
      expect(Math.abs(segmentDistance(a, b, c, d).distance - expected)).toBeLessThan(AGREE_M);
    }
  });

  it('from points and lines to lines', () => {
    const { point, line } = shapes(2, origin);
    for (let i = 0; i < SHAPES; i += 1) {
      const [p, first, second] = [point(), line(), line()];
      const fromPoint = DistanceOp.distance(jtsPoint(p), jtsLine(second));
      expect(Math.abs(pointToPolyline(p, second).distance - fromPoint)).toBeLessThan(AGREE_M);
      const fromLine = DistanceOp.distance(jtsLine(first), jtsLine(second));
      expect(Math.abs(polylineToPolyline(first, second).distance - fromLine)).toBeLessThan(AGREE_M);
    }
  });

  it('from points and lines to polygons, and inside them to the edge', () => {
    const { point, line, ring } = shapes(3, origin);
    let inside = 0;
    for (let i = 0; i < SHAPES; i += 1) {
      const [p, path, building] = [point(), line(), ring()];
      const within = pointInRing(p, building) === 'inside';
      inside += within ? 1 : 0;
      const toEdge = DistanceOp.distance(jtsPoint(p), factory.createLinearRing(jtsRing(building)));
      expect(Math.abs(pointToRing(p, building).distance - (within ? -toEdge : toEdge))).toBeLessThan(AGREE_M);
      const fromLine = DistanceOp.distance(jtsLine(path), jtsPolygon(building));
      const clearance = polylineToRing(path, building).distance;
      expect(Math.abs(Math.max(0, clearance) - fromLine)).toBeLessThan(AGREE_M);
    }
    expect(inside).toBeGreaterThan(SHAPES / 50);
  });

  it('as do sides of a ring, areas and crossings', () => {
    const { point, ring } = shapes(4, origin);
    let crossed = 0;
    for (let i = 0; i < SHAPES; i += 1) {
      const [a, b, building] = [point(), point(), ring()];
      const where = PointLocation.locateInRing(new Coordinate(a.x, a.y), jtsRing(building));
      expect(pointInRing(a, building)).toBe(where === Location.INTERIOR ? 'inside' : 'outside');
      const polygon = jtsPolygon(building);
      expect(Math.abs(ringArea(building) - polygon.getArea())).toBeLessThan(1e-6);
      const crosses = RelateOp.relate(jtsLine([a, b]), polygon).matches('T********');
      expect(segmentCrossesRing(a, b, building)).toBe(crosses);
      crossed += crosses ? 1 : 0;
    }
    expect(crossed).toBeGreaterThan(SHAPES / 10);
    expect(crossed).toBeLessThan(SHAPES - SHAPES / 10);
  });
});
