// What is dug out: handbook formulas by hand, and layers that jsts (2.12) makes.

import { type Point, pointAtAzimuth } from '@footmark/geometry';
import { ruleOf } from '@footmark/site';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import { describe, expect, it } from 'vitest';
import { pipe, push, thing, typed } from '../../packages/site/src/testing/yard';
import { dug, trench } from './digSite';

const straight = { paths: [pipe('p', [typed(0, 0), typed(30, 0)])] };
const dig = (from: number, to: number, facts: object = {}) =>
  ({ ...trench(0, 0), from, to, ...facts }) as ReturnType<typeof trench>;

/** A linear congruential generator modulo 2^32 (Numerical Recipes constants, from memory): values in [0, 1). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

describe('the volume of a dig', () => {
  it('with upright sides is length by width by depth', () => {
    const digs = [dig(5, 25, { depth: 2, bottomWidth: 0.6, protection: 'shield' })];
    expect(dug({ things: straight, digging: { digs } }).one.volume).toBeCloseTo(20 * 0.6 * 2, 9);
  });

  // the obelisk of handbooks (from memory): h/6·[(2a + a′)·b + (2a′ + a)·b′], bottom a × b, top a′ × b′
  it('of a pit with sides cut back is the obelisk of handbooks', () => {
    const things = {
      ...straight,
      features: [thing('head', 'cleanout', [typed(0, 0)])],
      runs: [push({ path: 'p', entry: 'head' }, [10])],
    };
    const pit = { is: 'pit', id: 'pit', name: '', note: '', at: { run: 'run', reading: 'r1' } } as const;
    const digs = [{ ...pit, length: 3, bottomWidth: 2, depth: 1.8 }];
    const [a, b, h] = [3, 2, 1.8];
    const [top, side] = [a + 2 * 1.5 * h, b + 2 * 1.5 * h];
    const obelisk = (h / 6) * ((2 * a + top) * b + (2 * top + a) * side);
    expect(dug({ things, digging: { soil: 'c', digs } }).one.volume).toBeCloseTo(obelisk, 9);
  });

  // the box behind the shield, and above it the obelisk
  it('behind a shield is straight below and cut back above it', () => {
    const facts = { depth: 2.5, bottomWidth: 1, protection: 'shield', shieldHeight: 1.4572 };
    const { one, site } = dug({ things: straight, digging: { soil: 'b', digs: [dig(5, 25, facts)] } });
    // 18 in is 0.4572 m: 1 m straight, 1.5 m cut back 1 to 1
    expect(ruleOf(site, 'shieldAbove').value).toBeCloseTo(0.4572, 9);
    const [a, b, h] = [20, 1, 1.5];
    const [top, side] = [a + 2 * h, b + 2 * h];
    const obelisk = (h / 6) * ((2 * a + top) * b + (2 * top + a) * side);
    expect(one.volume).toBeCloseTo(20 * 1 * 1 + obelisk, 9);
  });

  // a trench whose depth passes the straight part's height: straight below, ∫ (d − u)·(w + s·(d − u)) above it
  it('behind a shield along a depth that passes its height', () => {
    const level = (x: number, depth: number) => ({
      spot: typed(x, 0),
      level: { is: 'depth-to-invert', depth } as const,
    });
    const paths = [pipe('p', [level(0, 1), level(30, 2.5)])];
    const facts = { bottomWidth: 0.8, protection: 'shield', shieldHeight: 1.6 + 0.4572 };
    const { one, site } = dug({ things: { paths }, digging: { soil: 'b', digs: [dig(0, 30, facts)] } });
    const bedding = ruleOf(site, 'beddingDepth').value;
    const [d1, d2, u, w] = [1 + bedding, 2.5 + bedding, 1.6, 0.8];
    const met = (30 * (u - d1)) / (d2 - d1);
    const below = w * (((d1 + u) / 2) * met + u * (30 - met));
    const deep = d2 - u;
    const above = (30 - met) * ((w * deep) / 2 + deep ** 2 / 3);
    const end = (w * deep * deep) / 2 + (2 * deep ** 3) / 3;
    expect(one.volume).toBeCloseTo(below + above + end, 8);
  });

  // ∫ d·(w + s·d) along a depth from d₁ to d₂ is L·[w·(d₁ + d₂)/2 + s·(d₁² + d₁d₂ + d₂²)/3]; an end adds w·s·d²/2 + 2·s²·d³/3
  it('along a depth that changes evenly is exact', () => {
    const level = (x: number, depth: number) => ({
      spot: typed(x, 0),
      level: { is: 'depth-to-invert', depth } as const,
    });
    const paths = [pipe('p', [level(0, 1), level(30, 2.5)])];
    const { one, site } = dug({
      things: { paths },
      digging: { soil: 'b', digs: [dig(0, 30, { bottomWidth: 0.8 })] },
    });
    const bedding = ruleOf(site, 'beddingDepth').value;
    const [d1, d2, w, s] = [1 + bedding, 2.5 + bedding, 0.8, 1];
    const run = 30 * ((w * (d1 + d2)) / 2 + (s * (d1 ** 2 + d1 * d2 + d2 ** 2)) / 3);
    const end = (d: number) => (w * s * d * d) / 2 + (2 * s * s * d ** 3) / 3;
    expect(one.volume).toBeCloseTo(run + end(d1) + end(d2), 8);
  });

  it('round corners is that of layers, each a buffer that jsts makes', () => {
    const random = seeded(1926);
    const factory = new GeometryFactory();
    const parameters = new BufferParameters();
    parameters.setEndCapStyle(BufferParameters.CAP_FLAT);
    parameters.setJoinStyle(BufferParameters.JOIN_MITRE);
    parameters.setMitreLimit(2);
    const layers = 40;
    for (let i = 0; i < 20; i += 1) {
      let [heading, here]: [number, Point] = [6.28 * random(), { x: 0, y: 0 }];
      const points = Array.from({ length: 4 }, () => {
        heading += (random() - 0.5) * (Math.PI / 2);
        here = pointAtAzimuth(here, heading, 9 + 5 * random());
        return here;
      });
      const [depth, width] = [0.5 + 1.5 * random(), 0.4 + random()];
      const paths = [
        pipe(
          'p',
          points.map((p) => typed(p.x, p.y)),
        ),
      ];
      const digs = [dig(0, 999, { depth, bottomWidth: width })];
      const { one } = dug({ things: { paths }, digging: { soil: 'b', digs } });
      let sum = 0;
      for (let k = 0; k < layers; k += 1) {
        const grown = (depth * (k + 0.5)) / layers;
        const [first, second, third, last] = points as [Point, Point, Point, Point];
        const extended = [beyond(second, first, grown), second, third, beyond(third, last, grown)];
        const line = factory.createLineString(extended.map((p) => new Coordinate(p.x, p.y)));
        sum += BufferOp.bufferOp(line, width / 2 + grown, parameters).getArea() * (depth / layers);
      }
      // the middle of a layer stands for all of it: off by the second derivative of the area, 8·depth² at the most here, /24/layers²
      expect(Math.abs((one.volume ?? 0) - sum)).toBeLessThan((8 * depth ** 3) / 24 / layers ** 2 + 1e-6);
    }
  });

  it('where a pipe folds back counts the ground once', () => {
    const paths = [pipe('p', [typed(0, 0), typed(10, 0), typed(10, 0.8), typed(0, 0.8)])];
    const digs = [dig(0, 99, { depth: 1, bottomWidth: 1, protection: 'shield' })];
    const { one } = dug({ things: { paths }, digging: { digs } });
    // from -0.5 to 1.3 across, from 0 to 10.5 along: nothing between the legs is left
    expect(one.volume).toBeCloseTo(1.8 * 10.5, 9);
    expect(one.top?.area).toBeCloseTo(1.8 * 10.5, 9);
  });
});

function beyond(from: Point, end: Point, by: number): Point {
  const length = Math.hypot(end.x - from.x, end.y - from.y);
  return { x: end.x + ((end.x - from.x) / length) * by, y: end.y + ((end.y - from.y) / length) * by };
}

describe('the spoil', () => {
  const facts = { depth: 1.5, bottomWidth: 0.6 };

  it('is loose, in a heap as long as the dig that holds it all', () => {
    const { one, site } = dug({ things: straight, digging: { digs: [dig(5, 25, facts)] } });
    const { spoil } = one;
    const swell = ruleOf(site, 'soilSwell').value;
    expect(spoil?.volume).toBeCloseTo((one.volume ?? 0) * swell, 9);
    expect(((spoil?.width ?? 0) * (spoil?.height ?? 0) * 20) / 2).toBeCloseTo(spoil?.volume ?? 0, 9);
    expect((spoil?.width ?? 0) / 2 / (spoil?.height ?? 1)).toBeCloseTo(ruleOf(site, 'spoilSlope').value, 9);
  });

  // 1926.651(j)(2): at least 2 ft (0.61 m) from the edge
  it('stays 2 ft back from the edge of the top', () => {
    const { one } = dug({ things: straight, digging: { soil: 'b', digs: [dig(5, 25, facts)] } });
    const edge = 0.3 + 1.5;
    const left = (one.spoil?.left.outline ?? []).flat().map((p) => p.y);
    expect(Math.min(...left)).toBeCloseTo(edge + 2 * 0.3048, 9);
    expect(Math.max(...left)).toBeCloseTo(edge + 2 * 0.3048 + (one.spoil?.width ?? 0), 9);
    const right = (one.spoil?.right.outline ?? []).flat().map((p) => p.y);
    expect(Math.max(...right)).toBeCloseTo(-edge - 2 * 0.3048, 9);
    expect(one.findings.find((f) => f.code === 'spoil-kept-back')).toMatchObject({
      rule: 'spoilSetback',
      values: { setback: 2 * 0.3048, side: 'left' },
    });
  });

  it('never lies in the dig or within the set-back, on the inside of a bend either', () => {
    const paths = [pipe('p', [typed(0, 0), typed(10, 0), typed(10, 10)])];
    const { one } = dug({ things: { paths }, digging: { soil: 'b', digs: [dig(0, 20, facts)] } });
    const inside = (one.spoil?.left.outline ?? []).flat();
    expect(inside.length).toBeGreaterThan(3);
    for (const p of inside) expect(Math.min(Math.abs(p.y), Math.abs(p.x - 10))).toBeGreaterThan(1.8 + 0.6);
  });
});
