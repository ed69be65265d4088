// How far water keeps from a sewer, against the codes that are named beside each check; and drains turned and mirrored.

import { clearances } from '@footmark/dig';
import { derive, INCH_M, type Path, type PipeMaterial, type SiteRules, wallShares } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { square, thing } from '../../packages/site/src/testing/yard';
import { inFeet, spot } from './digSite';
import { drain, type Facts, four, type Levels, topDepth } from './drainSite';

const of = (material: PipeMaterial): Facts => ({ stretches: [{ ...four, material }] });
const clay = of('clay');

/** A water pipe of 1 in, this far (ft) from a clay sewer edge to edge, its bottom so many inches over the sewer's top. */
function beside(
  apart: number,
  above: number | null,
  fields: object = {},
  levels = topDepth(40),
  facts: Facts = clay,
) {
  const material = facts.stretches?.[0]?.material ?? 'clay';
  const outside = (4 * (1 + 2 * wallShares[material].value)) / 2 / 12;
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
    { features: [water], ...facts },
  );
  const [one] = result.check.water;
  if (one === undefined) throw new Error('no water');
  return { ...result, one };
}

describe('water beside a sewer', () => {
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

  // by hand: 3 in is 76.2 mm, and within a tenth of a millimetre that is rounding
  it.each([
    [76.15, true],
    [76, false],
  ])('of %d mm is a main or not wherever it is asked', (mm, isMain) => {
    const { site, one } = beside(8, 0, { diameter: mm / 1000 });
    const listed = clearances(site, derive(site)).find((c) => c.feature === 'w' && c.of.is === 'path');
    const rule = isMain ? 'waterMain' : 'waterService';
    expect([one.rule, listed?.rule]).toEqual([rule, rule]);
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
        { features: [water], ...clay },
      ).check.water[0];
    };
    expect(cross(27)).toMatchObject({ crosses: true, verdict: 'by-exception', sure: false });
    expect(cross(30)).toMatchObject({ crosses: true, verdict: 'misses' });
    // below the sewer: a main may cross there by 8.8.3, a service not by exception 1
    const under = 40 + 4 * (1 + 2 * wallShares.clay.value) + 19;
    expect(cross(under)?.verdict).toBe('misses');
    expect(cross(under, { diameter: 6 * INCH_M })?.verdict).toBe('by-exception');
    expect(cross(under - 3, { diameter: 6 * INCH_M })?.verdict).toBe('misses');
  });
});

describe('what the sewer is made of', () => {
  const by = (material: PipeMaterial, set: SiteRules['set'], apart: number, above: number | null) => {
    const facts: Facts = { ...of(material), rules: { set }, state: 'proposed' };
    const { one, findings } = beside(apart, above, {}, topDepth(40), facts);
    return { one, said: findings.filter((f) => f.code.startsWith('water-')) };
  };

  // IPC 603.2 exception 2: in one trench with a sewer of a material of Table 702.2 (which ones those are: from memory)
  it.each(['plastic', 'cast-iron'] as const)('%s may lie in one trench with water by the IPC', (material) => {
    for (const above of [0, null]) {
      const { one, said } = by(material, 'us-ipc', 1, above);
      expect(one).toMatchObject({ verdict: 'by-exception', by: 'material', sure: true });
      expect(said).toMatchObject([{ code: 'water-allowed', severity: 'note', rule: 'waterListed' }]);
    }
  });

  it('clay may not, nor may anybody tell of a material that is not known', () => {
    expect(by('clay', 'us-ipc', 4, 0).said).toMatchObject([
      {
        code: 'water-too-near',
        severity: 'must',
        rule: 'waterService',
        values: { shelf: false, sleeve: null },
      },
    ]);
    expect(by('unknown', 'us-ipc', 4, 0)).toMatchObject({
      one: { verdict: 'cannot-tell', missing: ['pipe-material'] },
      said: [{ code: 'water-depth-not-known', severity: 'should' }],
    });
  });

  // UPC Table 721.1 (from memory): 1 ft; 609.2 and 720.1: of clay only 12 in below the water, which lies on a shelf
  it('decides by the UPC', () => {
    expect(by('plastic', 'us-upc', 3, 0).one).toMatchObject({ verdict: 'by-exception', by: 'material' });
    expect(by('plastic', 'us-upc', 0.5, 0).said).toMatchObject([
      { code: 'water-too-near', rule: 'waterListed', values: { asked: expect.closeTo(0.3048, 9) } },
    ]);
    expect(by('clay', 'us-upc', 1, 11).said).toMatchObject([
      { code: 'water-too-near', severity: 'must', rule: 'waterShelf', values: { shelf: true } },
    ]);
    expect(by('clay', 'us-upc', 1, 14).said).toMatchObject([
      { code: 'water-allowed', rule: 'waterShelf', values: { by: 'height' } },
    ]);
  });

  // by hand: a service is less than 3 in thick, so its outside may be 1.5 in nearer than its middle line. UPC, 1 ft: 13.5 in to the middle
  // line are enough of any service, 12.2 in are not of one of 2.9 in
  it('cannot tell of water that may be so thick that it is too near', () => {
    const unsized = (inches: number, material: PipeMaterial, above: number | null) => {
      // as far as a line without thickness
      const facts: Facts = { ...of(material), rules: { set: 'us-upc' } };
      return beside((inches - 0.5) / 12, above, { diameter: undefined }, topDepth(40), facts).one;
    };
    expect(unsized(12.2, 'plastic', 0)).toMatchObject({
      rule: 'waterListed',
      verdict: 'cannot-tell',
      by: null,
      sure: false,
      missing: ['service-diameter'],
    });
    expect(unsized(12.2, 'plastic', null).missing).toEqual(['service-depth', 'service-diameter']);
    expect(unsized(12.2, 'unknown', 0).missing).toEqual(['service-diameter', 'pipe-material']);
    expect(unsized(13.6, 'plastic', 0)).toMatchObject({
      verdict: 'by-exception',
      by: 'material',
      sure: true,
    });
    expect(unsized(11.9, 'plastic', 0)).toMatchObject({ rule: 'waterListed', verdict: 'misses' });
    // surely allowed by the height of any service: a foot and three inches above
    expect(unsized(12.2, 'plastic', 16)).toMatchObject({ verdict: 'by-exception', by: 'height', sure: true });
  });

  // Ten States Standards 8.8.2 knows of no such exception
  it('allows nothing beside a main', () => {
    const main = { diameter: 6 * INCH_M, depth: 40 * INCH_M };
    const { one } = beside(8, 0, main, topDepth(40), of('plastic'));
    expect(one).toMatchObject({ isMain: true, verdict: 'misses' });
  });
});

describe('what is said where water may lie so near', () => {
  // IPC 603.2 exception 1 (from memory), STANDARDS check: 4 ft apart and 14 in above pass
  it('names the exception', () => {
    const { findings } = beside(4, 14);
    expect(findings.filter((f) => f.code.startsWith('water-'))).toMatchObject([
      {
        code: 'water-allowed',
        rule: 'waterAbove',
        values: { by: 'height', distance: expect.closeTo(4 * 0.3048, 6) },
      },
    ]);
  });

  // 10 NYCRR 75-A.5: 10 ft from the house sewer to any water line
  it('tells of a planned sewer that other codes want further off', () => {
    const codes = (apart: number, state: Path['state']) =>
      beside(apart, 0, {}, topDepth(40), { ...clay, state }).codes.filter((c) => c.startsWith('water-'));
    expect(codes(9, 'proposed')).toEqual(['water-nearer-than-elsewhere']);
    expect(codes(10, 'proposed')).toEqual([]);
    expect(codes(9, 'existing')).toEqual([]);
  });

  // IPC 603.2 (from memory): a crossing water pipe is sleeved to 5 ft on each side
  it('offers the sleeve of a crossing', () => {
    const water = thing('w', 'service', [spot(25, -20), spot(25, 20)], {
      carries: 'water',
      diameter: INCH_M,
      depth: 1.2,
    });
    const places = [
      [0, 0, topDepth(40)],
      [50, 0, topDepth(40)],
    ] as const;
    expect(drain(places, { features: [water], ...clay }).findings).toContainEqual(
      expect.objectContaining({
        code: 'water-too-near',
        // 10 NYCRR 75-A.5: 18 in below where it crosses so
        values: expect.objectContaining({
          sleeve: expect.closeTo(5 * 0.3048, 9),
          passBelow: expect.closeTo(18 * INCH_M, 9),
        }),
      }),
    );
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
