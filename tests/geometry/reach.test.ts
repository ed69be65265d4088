import {
  add,
  cross,
  distance,
  type KnownPoint,
  type Point,
  pipeReach,
  pointAtAzimuth,
  pointInRing,
  polylineLength,
  type Reach,
  reachOf,
  ringArea,
  rotate,
  subtract,
  withinPipeReach,
} from '@footmark/geometry';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import type Polygon from 'jsts/org/locationtech/jts/geom/Polygon.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { describe, expect, it } from 'vitest';

const FOOT = 0.3048;
const at = (x: number, y: number): Point => ({ x, y });
const known = (x: number, y: number, cable: number): KnownPoint => ({ at: at(x, y), cable });

function reach(knowns: readonly KnownPoint[], tolerance = 0, maxSagitta?: number): Reach {
  const found = reachOf(knowns, tolerance, maxSagitta);
  if (!found.ok) throw new Error(found.code);
  return found.value;
}

// Reference: JTS in JavaScript (jsts 2.12), an independent implementation of plane geometry.
const factory = new GeometryFactory();
const polygon = (ring: readonly Point[]): Polygon =>
  factory.createPolygon([...ring, ...ring.slice(0, 1)].map((p) => new Coordinate(p.x, p.y)));

/** A linear congruential generator modulo 2^32 (Numerical Recipes constants, from memory): values in [0, 1). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/**
 * Two to six known points in a yard of 40 m and one feature about its middle, with up to `slack` metres more cable to it than the
 * straight line.
 */
function knownsInYard(random: () => number, slack: number): readonly KnownPoint[] {
  const place = () => at(40 * random(), 40 * random());
  const feature = at(12 + 16 * random(), 12 + 16 * random());
  return Array.from({ length: 2 + Math.floor(5 * random()) }, () => {
    const from = place();
    return { at: from, cable: distance(from, feature) + slack * random() };
  });
}

/** True when the point is within the cable of every known point, told from the distances alone. */
const inAll = (p: Point, knowns: readonly KnownPoint[]) => knowns.every((k) => distance(p, k.at) <= k.cable);

/** The area that all discs have in common, by strips across the smallest disc: in each the discs leave an interval of y. */
function areaByStrips(knowns: readonly KnownPoint[], strips: number): number {
  const smallest = knowns.reduce((p, q) => (q.cable < p.cable ? q : p));
  const width = (2 * smallest.cable) / strips;
  let sum = 0;
  for (let i = 0; i < strips; i += 1) {
    const x = smallest.at.x - smallest.cable + (i + 0.5) * width;
    const half = (k: KnownPoint) => Math.sqrt(Math.max(0, k.cable ** 2 - (x - k.at.x) ** 2));
    if (knowns.some((k) => Math.abs(x - k.at.x) > k.cable)) continue;
    const top = Math.min(...knowns.map((k) => k.at.y + half(k)));
    const bottom = Math.max(...knowns.map((k) => k.at.y - half(k)));
    sum += Math.max(0, top - bottom) * width;
  }
  return sum;
}

/**
 * The least that each cable must be longer, min over p of max(|p − Kᵢ| − aᵢ): a convex function, by ternary search in y within one
 * in x. Below 0 when the discs overlap.
 */
function lengtheningBySearch(knowns: readonly KnownPoint[]): number {
  const ternary = (f: (t: number) => number, from: number, to: number) => {
    let [low, high] = [from, to];
    for (let i = 0; i < 90; i += 1) {
      const [s, t] = [low + (high - low) / 3, high - (high - low) / 3];
      if (f(s) < f(t)) high = t;
      else low = s;
    }
    return f((low + high) / 2);
  };
  const lack = (p: Point) => Math.max(...knowns.map((k) => distance(p, k.at) - k.cable));
  return ternary((x) => ternary((y) => lack(at(x, y)), -10, 50), -10, 50);
}

describe('the lens between two known points', () => {
  it('40 ft apart, mid-run of 41 ft of cable, is 4.5 ft to either side and 6.015 ft²', () => {
    // Computed for the design document; by hand ½√(41² − 40²) = 4.5 and 2r²·acos(d/2r) − (d/2)·√(4r² − d²).
    const lens = reach([known(0, 0, 20.5 * FOOT), known(40 * FOOT, 0, 20.5 * FOOT)]);
    if (lens.kind !== 'lens') throw new Error(lens.kind);
    expect(lens.halfWidth / FOOT).toBeCloseTo(4.5, 10);
    expect(lens.area / FOOT ** 2).toBeCloseTo(6.015, 3);
    expect(lens.area / FOOT ** 2).toBeCloseTo(2 * 20.5 ** 2 * Math.acos(40 / 41) - 20 * 9, 9);
    expect(lens.short).toBe(0);
  });

  it('of two unit circles takes half of one when they are 0.8079455 apart', () => {
    // Weisstein, "Circle-Circle Intersection", MathWorld: 0.8079455065990345 (OEIS A133741). From memory.
    expect(reach([known(0, 0, 1), known(0.8079455065990345, 0, 1)]).area).toBeCloseTo(Math.PI / 2, 13);
  });

  it("is as wide as the smaller disc once that one's centre is past the crossings", () => {
    const past = reach([known(0, 0, 10), known(8, 0, 3)]);
    expect(past).toMatchObject({ kind: 'lens', halfWidth: 3 });
    // the widest by sampling: the offset of the points of the plane that are in both
    let widest = 0;
    for (let x = 4; x <= 12; x += 0.01) {
      for (let y = 0; y <= 4; y += 0.01) {
        if (inAll(at(x, y), [known(0, 0, 10), known(8, 0, 3)])) widest = Math.max(widest, y);
      }
    }
    expect(Math.abs(widest - 3)).toBeLessThan(0.011);
  });
});

describe('the reach from three and more known points', () => {
  it("is a Reuleaux triangle for three at each other's distance: (π − √3)/2 of its square", () => {
    const cells = reach([known(0, 0, 7), known(7, 0, 7), known(3.5, 3.5 * Math.sqrt(3), 7)]);
    expect(cells.kind).toBe('cells');
    expect(cells.area).toBeCloseTo(((Math.PI - Math.sqrt(3)) / 2) * 49, 12);
  });

  it('has 1 + π/3 − √3 of area for unit discs on the corners of the unit square', () => {
    // The four quarter circles in a square, a textbook problem; 0.3151 of it lies in all four. From memory, and by strips.
    const corners = [known(0, 0, 1), known(1, 0, 1), known(1, 1, 1), known(0, 1, 1)];
    const cells = reach(corners);
    expect(cells.arcs.length).toBe(4);
    expect(cells.area).toBeCloseTo(1 + Math.PI / 3 - Math.sqrt(3), 13);
    expect(cells.area).toBeCloseTo(areaByStrips(corners, 20000), 6);
  });

  it('keeps both arcs of a disc that others cut on two sides', () => {
    const knowns = [known(0, 0, 2), known(10, 0, 11), known(-10, 0, 11)];
    const cells = reach(knowns);
    expect(cells.arcs.map((arc) => arc.known)).toEqual([0, 1, 0, 2]);
    expect(cells.area).toBeCloseTo(areaByStrips(knowns, 200000), 5);
  });
});

describe.each([
  ['wide', 12],
  ['narrow', 0.3],
])('%s reaches in a yard', (_, slack) => {
  const random = seeded(slack * 10);
  const yards = Array.from({ length: 300 }, () => knownsInYard(random, slack));

  it('are of each kind', () => {
    expect(new Set(yards.map((knowns) => reach(knowns).kind)).size).toBeGreaterThanOrEqual(slack > 1 ? 3 : 2);
  });

  it('have the area that strips of the plane add up to', () => {
    for (const knowns of yards.slice(0, 100)) {
      const { cable } = knowns.reduce((p, q) => (q.cable < p.cable ? q : p));
      const width = (2 * cable) / 4000;
      // an end of the region across a strip: its height is under √(8·cable·width), counted wrong at both ends at the most
      const stated = 2 * width * Math.sqrt(8 * cable * width);
      expect(Math.abs(reach(knowns).area - areaByStrips(knowns, 4000))).toBeLessThan(stated);
    }
  });

  it('have the area that a reference library finds in many-sided discs', () => {
    // A disc of 720 corners lies at most r·(1 − cos(π/720)) within the round one.
    for (const knowns of yards.slice(0, 30)) {
      const discs = knowns.map((k) =>
        polygon(Array.from({ length: 720 }, (_, i) => pointAtAzimuth(k.at, (-i * Math.PI) / 360, k.cable))),
      );
      const common = discs.reduce((p, q) => OverlayOp.intersection(p, q));
      const { area, outline, arcs } = reach(knowns, 0, 1e-4);
      const perimeter = arcs.reduce((sum, arc) => sum + arc.radius * arc.span, 0);
      const inset = Math.max(...knowns.map((k) => k.cable)) * (1 - Math.cos(Math.PI / 720));
      expect(area - common.getArea()).toBeGreaterThan(-1e-9);
      expect(area - common.getArea()).toBeLessThan(perimeter * inset + 1e-9);
      expect(area - polygon(outline).getArea()).toBeGreaterThan(-1e-9);
      expect(area - polygon(outline).getArea()).toBeLessThan(perimeter * 1e-4 + 1e-9);
    }
  });

  it('hold the points within all cables and no others', () => {
    const sagitta = 1e-3;
    const seen = { inside: 0, outside: 0, edge: 0 };
    for (const knowns of yards) {
      const { outline, arcs } = reach(knowns, 0, sagitta);
      if (outline.length < 3) continue;
      const [xs, ys] = [outline.map((p) => p.x), outline.map((p) => p.y)];
      const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
      const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - bottom];
      for (let i = 0; i < 40; i += 1) {
        const p = at(left + wide * (1.4 * random() - 0.2), bottom + high * (1.4 * random() - 0.2));
        const fromRim = Math.min(...arcs.map((arc) => Math.abs(distance(p, arc.at) - arc.radius)));
        const where = fromRim <= 2 * sagitta ? 'edge' : pointInRing(p, outline);
        if (where !== 'edge') expect(inAll(p, knowns)).toBe(where === 'inside');
        seen[where] += 1;
      }
    }
    expect(seen.inside).toBeGreaterThan(2000);
    expect(seen.outside).toBeGreaterThan(2000);
  });

  it('are outlined counter-clockwise, by points on a rim and in all discs', () => {
    for (const knowns of yards) {
      const { outline, area } = reach(knowns);
      expect(ringArea(outline)).toBeGreaterThanOrEqual(0);
      expect(ringArea(outline)).toBeLessThanOrEqual(area + 1e-12);
      const lacks = outline.map((p) => Math.max(...knowns.map((k) => distance(p, k.at) - k.cable)));
      expect(Math.max(...lacks.map(Math.abs))).toBeLessThan(1e-9);
    }
  });

  it('do not care for order, turning, mirroring, size or how far away the origin is', () => {
    for (const knowns of yards.slice(0, 100)) {
      const original = reach(knowns);
      const relative = (other: Reach, k: number) => other.area / k ** 2 / original.area - 1;
      const width = (r: Reach) => ('halfWidth' in r ? r.halfWidth : 0);
      const swapped = reach(knowns.toReversed());
      expect(Math.abs(relative(swapped, 1))).toBeLessThan(1e-12);
      expect(new Set(swapped.arcs.map((arc) => knowns.length - 1 - arc.known))).toEqual(
        new Set(original.arcs.map((arc) => arc.known)),
      );
      const moves: readonly (readonly [number, number, (p: Point) => Point])[] = [
        [1, 1e-6, (p) => rotate(p, 2.345, at(7, -3))],
        [1, 1e-6, (p) => at(-p.x, p.y)],
        [1, 1e-4, (p) => add(p, at(1e6, -1e6))],
        ...[1e-3, 1e-1, 1e3, 1e6].map((k) => [k, 1e-6, (p: Point) => at(p.x * k, p.y * k)] as const),
      ];
      for (const [k, agree, move] of moves) {
        const moved = reach(knowns.map(({ at: p, cable }) => ({ at: move(p), cable: cable * k })));
        expect(moved.kind).toBe(original.kind);
        expect(Math.abs(relative(moved, k))).toBeLessThan(agree);
        expect(Math.abs(width(moved) / k - width(original))).toBeLessThan(1e-6);
      }
    }
  });
});

describe('cables that contradict each other', () => {
  it('are found exactly where a search of the whole plane finds no place', () => {
    const random = seeded(99);
    const seen = { met: 0, apart: 0, 'no-common-place': 0 };
    for (let i = 0; i < 120; i += 1) {
      // some with cables that are short at random, some with all short alike, which pairs bear better than trios
      const [slack, less] = i % 3 === 0 ? [4, 1.9] : [0.1, 0.3];
      const knowns = knownsInYard(random, slack).map((k) => ({ ...k, cable: Math.max(0, k.cable - less) }));
      const lacking = lengtheningBySearch(knowns);
      const found = reachOf(knowns);
      expect(found.ok).toBe(lacking < 5e-5);
      seen[found.ok ? 'met' : found.code] += 1;
      if (found.ok) continue;
      const { gap = 0, each = gap / 2, first = -1, second = -1, third = -1 } = found.values ?? {};
      // the whole set lacks more where a trio does than the worst pair alone
      expect(each).toBeLessThan(lacking + 1e-6);
      const named = [first, second, third].map((index) => knowns[index]).filter((k) => k !== undefined);
      if (found.code === 'no-common-place') expect(Math.abs(each - lacking)).toBeLessThan(1e-6);
      expect(Math.abs(lengtheningBySearch(named) - each)).toBeLessThan(1e-6);
      // lengthened by what is lacking, all have one place in common, and the tolerance lets them
      const met = reach(knowns, 2 * lacking + 1e-6);
      expect(met.short).toBeCloseTo(2 * lacking, 5);
      const [p] = met.outline;
      if (p === undefined) throw new Error('no outline');
      expect(Math.max(...knowns.map((k) => distance(p, k.at) - k.cable))).toBeLessThan(lacking + 1e-6);
    }
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(5);
  });
});

describe('the reach of a pipe', () => {
  it('of 41 ft of cable between points 40 ft apart is 4.5 ft to either side', () => {
    // Computed for the design document: ½√(41² − 40²); the area of an ellipse is π times its semi-axes.
    const found = pipeReach(at(0, 0), at(40 * FOOT, 0), 41 * FOOT);
    if (!found.ok) throw new Error(found.code);
    expect(found.value.halfWidth / FOOT).toBeCloseTo(4.5, 10);
    expect(found.value.semiMajor / FOOT).toBeCloseTo(20.5, 12);
    expect(found.value.area / FOOT ** 2).toBeCloseTo(Math.PI * 20.5 * 4.5, 9);
  });

  it('holds every bent pipe of that length, and its edge is reached by one with a single bend', () => {
    const random = seeded(5);
    let [tried, widest] = [0, 0];
    for (let i = 0; i < 300; i += 1) {
      const [a, b] = [at(40 * random(), 40 * random()), at(40 * random(), 40 * random())];
      const line = [
        a,
        ...Array.from({ length: 1 + Math.floor(4 * random()) }, () => at(40 * random(), 40 * random())),
        b,
      ];
      const length = polylineLength(line);
      const found = pipeReach(a, b, length);
      if (!found.ok) throw new Error(found.code);
      const { halfWidth, outline } = found.value;
      const across = (p: Point) => Math.abs(cross(subtract(b, a), subtract(p, a))) / distance(a, b);
      for (const p of line) {
        expect(withinPipeReach(p, found.value)).toBe(true);
        expect(across(p)).toBeLessThanOrEqual(halfWidth + 1e-9);
        tried += 1;
      }
      const strings = outline.map((p) => distance(a, p) + distance(p, b) - length);
      expect(Math.max(...strings.map(Math.abs))).toBeLessThan(1e-9);
      widest = Math.max(widest, ...outline.map((p) => across(p) / halfWidth));
    }
    expect(tried).toBeGreaterThan(1000);
    expect(widest).toBeGreaterThan(1 - 1e-5);
  });

  it('has as much area as points of the plane within the string, counted, and as a reference library finds in its outline', () => {
    // 160,000 places on a grid of 0.05 m. A cell is miscounted only on the edge: under (perimeter/cell + 8)·√2 cells of it.
    const [a, b, cable, cell] = [at(7, 9), at(13, 5), 11, 0.05];
    const found = pipeReach(a, b, cable, 0, 1e-4);
    if (!found.ok) throw new Error(found.code);
    let cells = 0;
    for (let x = cell / 2; x < 20; x += cell) {
      for (let y = cell / 2; y < 20; y += cell) {
        const p = at(x, y);
        const within = distance(a, p) + distance(p, b) <= cable;
        cells += within ? 1 : 0;
        if (within !== withinPipeReach(p, found.value)) throw new Error(`at ${x}, ${y}`);
      }
    }
    const perimeter = 2 * Math.PI * found.value.semiMajor;
    expect(Math.abs(cells * cell ** 2 - found.value.area)).toBeLessThan(
      (perimeter / cell + 8) * Math.SQRT2 * cell ** 2,
    );
    const short = found.value.area - polygon(found.value.outline).getArea();
    expect(short).toBeGreaterThan(0);
    expect(short).toBeLessThan(perimeter * 1e-4);
  });
});
