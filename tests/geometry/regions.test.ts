import {
  circleRegionArea,
  differenceOf,
  intersectionArea,
  intersectionOf,
  type Point,
  pointAtAzimuth,
  type Region,
  regionArea,
  ringArea,
  stripRegion,
  unionOf,
} from '@footmark/geometry';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import SnapIfNeededOverlayOp from 'jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js';
import { describe, expect, it } from 'vitest';

// Reference: JTS in JavaScript (jsts 2.12). Circles are polygons of 10,000 sides there; a polygon of n sides in a circle has
// n/(2π)·sin(2π/n) of its area, 6.6e-8 less than all of it.
const SIDES = 10_000;
const SHAPES = 400;

const factory = new GeometryFactory();
const polygon = (ring: readonly Point[]): Geometry =>
  factory.createPolygon([...ring, ...ring.slice(0, 1)].map((p) => new Coordinate(p.x, p.y)));
const circle = (centre: Point, radius: number, sides = SIDES): Geometry =>
  polygon(
    Array.from({ length: sides }, (_, i) => pointAtAzimuth(centre, (-2 * Math.PI * i) / sides, radius)),
  );
const overlay = (a: Geometry, b: Geometry, op: number): Geometry => SnapIfNeededOverlayOp.overlayOp(a, b, op);

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
  const point = (): Point => ({ x: origin.x + 20 * random(), y: origin.y + 20 * random() });
  /** Corners at random radii at even angles about a centre: simple, mostly not convex. */
  const ring = (): readonly Point[] => {
    const centre = point();
    const corners = 3 + Math.floor(9 * random());
    const sense = random() < 0.5 ? -1 : 1;
    return Array.from({ length: corners }, (_, i) =>
      pointAtAzimuth(centre, (sense * 2 * Math.PI * i) / corners, 1 + 12 * random()),
    );
  };
  return { random, point, ring };
}

const signedArea = (region: Region) => region.reduce((sum, ring) => sum + ringArea(ring), 0);

describe.each([
  ['near the origin', { x: -10, y: -10 }, 1e-6],
  ['a thousand kilometres away', { x: 1e6, y: -1e6 }, 1e-5],
])('regions %s', (_, origin, agree) => {
  it('have the areas that jsts has for what lies in both, in either and in one only', () => {
    const { ring } = shapes(811, origin);
    for (let i = 0; i < SHAPES; i += 1) {
      const [a, b] = [ring(), ring()];
      const [ja, jb] = [polygon(a), polygon(b)];
      const both = overlay(ja, jb, OverlayOp.INTERSECTION).getArea();
      expect(Math.abs(intersectionArea([a], [b]) - both)).toBeLessThan(agree);
      expect(Math.abs(signedArea(intersectionOf([a], [b])) - both)).toBeLessThan(agree * 10);
      const either = overlay(ja, jb, OverlayOp.UNION).getArea();
      expect(Math.abs(signedArea(unionOf([[a], [b]])) - either)).toBeLessThan(agree * 10);
      const one = overlay(ja, jb, OverlayOp.DIFFERENCE).getArea();
      expect(Math.abs(signedArea(differenceOf([a], [[b]])) - one)).toBeLessThan(agree * 10);
    }
  }, 120_000);

  it('have the area in a circle that jsts has for one of 10,000 sides', () => {
    const { random, point, ring } = shapes(4970, origin);
    for (let i = 0; i < 40; i += 1) {
      const [centre, radius, corners] = [point(), 1 + 8 * random(), ring()];
      const theirs = overlay(circle(centre, radius), polygon(corners), OverlayOp.INTERSECTION).getArea();
      const ours = circleRegionArea(centre, radius, unionOf([[corners]]));
      const lost = Math.PI * radius ** 2 * (1 - (SIDES / (2 * Math.PI)) * Math.sin((2 * Math.PI) / SIDES));
      expect(ours - theirs).toBeGreaterThan(-agree);
      expect(ours - theirs).toBeLessThan(lost + agree);
    }
  }, 120_000);
});

describe('a strip', () => {
  // DESIGN of the tree rules: a 0.6 m strip centred 2 m from the centre of a 6 m circle takes 6.785 m², 5.999 %
  it('takes as much of a circle as jsts says', () => {
    const strip = stripRegion([-9, 0, 9].map((x) => ({ at: { x, y: 2 }, left: 0.3, right: 0.3 })));
    const ours = circleRegionArea({ x: 0, y: 0 }, 6, strip);
    expect(ours).toBeCloseTo(6.785, 3);
    const theirs = overlay(
      circle({ x: 0, y: 0 }, 6),
      polygon(strip[0] ?? []),
      OverlayOp.INTERSECTION,
    ).getArea();
    expect(Math.abs(ours - theirs)).toBeLessThan(1e-5);
  });

  it('is the buffer that jsts makes with flat ends and mitred corners', () => {
    const random = seeded(652);
    const parameters = new BufferParameters();
    parameters.setEndCapStyle(BufferParameters.CAP_FLAT);
    parameters.setJoinStyle(BufferParameters.JOIN_MITRE);
    parameters.setMitreLimit(2);
    for (let i = 0; i < 100; i += 1) {
      let [heading, here] = [0, { x: 0, y: 0 }];
      const points = Array.from({ length: 6 }, () => {
        heading += (random() - 0.5) * (Math.PI / 2);
        here = pointAtAzimuth(here, heading, 4 + 3 * random());
        return here;
      });
      const half = 0.2 + 1.3 * random();
      const ours = stripRegion(points.map((at) => ({ at, left: half, right: half })));
      const line = factory.createLineString(points.map((p) => new Coordinate(p.x, p.y)));
      const theirs: Geometry = BufferOp.bufferOp(line, half, parameters);
      expect(ours).toHaveLength(1);
      expect(Math.abs(regionArea(ours) - theirs.getArea())).toBeLessThan(1e-6);
      const apart = overlay(polygon(ours[0] ?? []), theirs, OverlayOp.SYMDIFFERENCE).getArea();
      expect(apart).toBeLessThan(1e-6);
    }
  }, 60_000);

  it('along a line that folds and crosses itself is the union of its legs’ strips', () => {
    const { random, point } = shapes(17, { x: 0, y: 0 });
    for (let i = 0; i < 100; i += 1) {
      const points = Array.from({ length: 3 + Math.floor(4 * random()) }, point);
      const half = 0.3 + 2 * random();
      const legs = points.slice(1).map((to, k) => {
        const strip = stripRegion([points[k] ?? to, to].map((at) => ({ at, left: half, right: half })));
        return polygon(strip[0] ?? []);
      });
      const whole = stripRegion(points.map((at) => ({ at, left: half, right: half })));
      const union = legs.reduce((sum, leg) => overlay(sum, leg, OverlayOp.UNION));
      const reached = regionArea(whole) - union.getArea();
      // only the outer corners come on top, the square end of a fold the largest of them
      expect(reached).toBeGreaterThan(-1e-6);
      expect(reached).toBeLessThan(legs.length * 2 * half * half);
    }
  }, 60_000);
});
