// How far water keeps from a sewer, against the codes that are named beside each check; and drains turned and mirrored.

import { INCH_M } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { square, thing } from '../../packages/site/src/testing/yard';
import { inFeet, spot } from './digSite';
import { drain, type Levels, topDepth } from './drainSite';

describe('water beside a sewer', () => {
  const outside = (4 * (1 + (2 * 0.12) / 3.975)) / 2 / 12;

  /** A water pipe of 1 in, this far (ft) from the sewer edge to edge, its bottom so many inches over the sewer's top. */
  function beside(apart: number, above: number | null, fields: object = {}, levels = topDepth(40)) {
    const y = outside + apart + 0.5 / 12;
    const depth = above === null ? {} : { depth: (40 - above - 1) * INCH_M };
    const water = thing('w', 'service', [spot(0, y), spot(50, y)], {
      carries: 'water',
      diameter: INCH_M,
      ...depth,
      ...fields,
    });
    const result = drain(
      [
        [0, 0, levels],
        [50, 0, levels],
      ],
      { features: [water] },
    );
    const [one] = result.check.water;
    if (one === undefined) throw new Error('no water');
    return { ...result, one };
  }

  // IPC 603.2: 5 ft apart; exception 1 (from memory): the water's bottom 12 in over the sewer's top
  it.each([
    [4, 14, 'by-exception'],
    [4, 12, 'by-exception'],
    [4, 11, 'misses'],
    [4, 0, 'misses'],
    [4, -14, 'misses'],
    [6, 0, 'meets'],
    [5, 0, 'meets'],
  ] as const)('%d ft apart and %d in above: %s', (apart, above, verdict) => {
    const { one, codes } = beside(apart, above);
    expect(inFeet(one.distance)).toBeCloseTo(apart, 6);
    expect(one.verdict).toBe(verdict);
    expect(codes.includes('water-too-near')).toBe(verdict === 'misses');
    if (verdict !== 'meets') expect((one.above ?? 0) / INCH_M).toBeCloseTo(above, 6);
  });

  it('says what is not known of the depths that decide', () => {
    expect(beside(4, null).one).toMatchObject({ verdict: 'cannot-tell', missing: ['service-depth'] });
    expect(beside(4, 14, {}, {}).one).toMatchObject({ verdict: 'cannot-tell', missing: ['pipe-level'] });
    expect(beside(4, null).codes).toContain('water-depth-not-known');
    const unsized = { diameter: undefined };
    expect(beside(4, 12, unsized).one).toMatchObject({
      verdict: 'cannot-tell',
      missing: ['service-diameter'],
    });
    expect(beside(4, 20, unsized).one.verdict).toBe('by-exception');
  });

  it('is judged by the sewer out of doors', () => {
    const house = square('house', 'building', -3, -3, 6);
    const water = thing('w', 'service', [spot(0, 4), spot(50, 4)], {
      carries: 'water',
      diameter: INCH_M,
      depth: 20 * INCH_M,
    });
    const levels = [topDepth(40), topDepth(40)] as const;
    const through = (to: number) =>
      drain(
        [
          [0, 0, levels[0]],
          [to, 0, levels[1]],
        ],
        { features: [house, water] },
      ).check.water[0];
    expect(through(50)).toMatchObject({ verdict: 'by-exception' });
    expect(through(9)).toMatchObject({ verdict: 'cannot-tell', missing: ['ground'] });
  });

  // Ten States Standards, Water Works 8.8.2 and 8.8.3 (numbers of sections from memory): mains 10 ft apart, crossings 18 in
  it('is asked for more of a main', () => {
    const main = { diameter: 6 * INCH_M, depth: 10 * INCH_M };
    const one = beside(8, 0, main).one;
    expect(one).toMatchObject({ isMain: true, rule: 'waterMain', verdict: 'by-exception' });
    expect((one.above ?? 0) / INCH_M).toBeCloseTo(40 - 10 - 6, 6);
    expect(beside(8, 0, { ...main, depth: 20 * INCH_M }).one.verdict).toBe('misses');
  });

  it('that crosses is told as crossing, and judged by height alone', () => {
    const cross = (depth: number, fields: object = {}) => {
      const water = thing('w', 'service', [spot(25, -20), spot(25, 20)], {
        carries: 'water',
        diameter: INCH_M,
        depth: depth * INCH_M,
        ...fields,
      });
      return drain(
        [
          [0, 0, topDepth(40)],
          [50, 0, topDepth(40)],
        ],
        { features: [water] },
      ).check.water[0];
    };
    expect(cross(27)).toMatchObject({ crosses: true, verdict: 'by-exception', sure: false });
    expect(cross(30)).toMatchObject({ crosses: true, verdict: 'misses' });
    // below the sewer: a main may cross there by 8.8.3, a service not by exception 1
    const under = 40 + 4.3 + 19;
    expect(cross(under)?.verdict).toBe('misses');
    expect(cross(under, { diameter: 6 * INCH_M })?.verdict).toBe('by-exception');
    expect(cross(under - 3, { diameter: 6 * INCH_M })?.verdict).toBe('misses');
  });
});

describe('turned and mirrored', () => {
  const build = (to: (x: number, y: number) => readonly [number, number]) => {
    const at = (x: number, y: number, levels: Levels = {}) => [...to(x, y), levels] as const;
    return drain(
      [at(0, 0, topDepth(30)), at(40, 0), at(40, 60, topDepth(9)), at(110, 130, topDepth(50)), at(170, 130)],
      {
        features: [
          thing('c', 'cleanout', [spot(...to(0.5, 0))]),
          thing('t', 'tap', [spot(...to(170, 130))]),
          thing('w', 'service', [spot(...to(-5, 3)), spot(...to(200, 40))], { carries: 'water', depth: 0.5 }),
        ],
      },
    );
  };
  const said = ({ check, codes }: ReturnType<typeof build>) => ({
    codes,
    cleanouts: check.cleanouts.map(({ reason, station, by }) => ({
      reason,
      station: station.toFixed(6),
      by,
    })),
    least: check.cover.least?.cover.toFixed(6),
    tap: check.tap?.depth?.depth.toFixed(6),
    water: check.water.map((w) => [w.verdict, w.distance.toFixed(6), w.above?.toFixed(6), w.crosses]),
  });
  const plain = said(build((x, y) => [x, y]));

  it.each([
    ['turned', (x: number, y: number) => [x * 0.6 - y * 0.8 + 30, x * 0.8 + y * 0.6 - 70] as const],
    ['mirrored', (x: number, y: number) => [-x, y] as const],
  ])('the same is found of a drain that is %s', (_, to) => {
    expect(plain.codes.length).toBeGreaterThan(2);
    expect(said(build(to))).toEqual(plain);
  });
});
