// How wide, how deep and how large a dig is, and what holds its sides: 29 CFR 1926 Subpart P and arithmetic by hand.

import { regionBox } from '@footmark/geometry';
import { type Dig, ruleOf, type Soil } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { pipe, push, thing, typed } from '../../packages/site/src/testing/yard';
import { codesOf, digSite, dug, feet, found, inFeet, spot, trench } from './digSite';

const straight = { paths: [pipe('p', [spot(0, 0), spot(100, 0)])] };
const deep = (depth: number, bottom: number) => ({ depth: feet(depth), bottomWidth: feet(bottom) });

describe('the top of a trench', () => {
  // 1926 Subpart P App B, Table B-1: A 3/4:1, B 1:1, C 1-1/2:1, stable rock vertical. 652(b)(1)(i): 1-1/2:1 where nobody classified
  // the soil. Widths: ratio × depth to each side of the bottom, by hand.
  it.each<[Soil, number, number, number]>([
    ['a', 6, 2, 11],
    ['b', 6, 2, 14],
    ['c', 6, 2, 20],
    ['not-chosen', 6, 2, 20],
    ['rock', 6, 2, 2],
    ['a', 8, 3, 15],
    ['b', 8, 3, 19],
    ['c', 8, 3, 27],
  ])('in soil %s, %d ft deep with a %d ft bottom, is %d ft wide', (soil, depth, bottom, width) => {
    const { one } = dug({ things: straight, digging: { soil, digs: [trench(10, 40, deep(depth, bottom))] } });
    expect(inFeet(one.top?.width ?? 0)).toBeCloseTo(width, 9);
    const { minX, maxX, minY, maxY } = regionBox(one.top?.outline ?? []);
    expect(inFeet(maxY - minY)).toBeCloseTo(width, 6);
    // the ends are cut back as the sides are
    expect(inFeet(maxX - minX)).toBeCloseTo(30 + width - bottom, 6);
    expect(one.top?.length).toBeCloseTo(maxX - minX, 6);
    expect(one.top?.area).toBeCloseTo((maxX - minX) * (maxY - minY), 6);
  });

  // Table B-1 gives the angles from the horizontal as well: 53, 45 and 34 degrees
  it.each<[Soil, number]>([
    ['a', 53],
    ['b', 45],
    ['c', 34],
  ])('in soil %s is cut back to %d degrees', (soil, degrees) => {
    const { one } = dug({ things: straight, digging: { soil, digs: [trench(10, 40, deep(6, 2))] } });
    expect((Math.atan(1 / one.sides.slope) * 180) / Math.PI).toBeCloseTo(degrees, 0);
  });

  it('is as wide as the bottom with a shield, which the dig may have of its own', () => {
    const digs = [trench(10, 40, { ...deep(6, 2), protection: 'shield' })];
    const { one } = dug({ things: straight, digging: { soil: 'c', digs } });
    expect(inFeet(one.top?.width ?? 0)).toBeCloseTo(2, 9);
    expect(found(one, 'shield-reaches-ground')?.values).toMatchObject({ depth: feet(6) });
    expect(codesOf(one)).not.toContain('shield-stands-above');
    expect(codesOf(one)).not.toContain('soil-not-chosen');
  });

  // App B figures: the lower part may stand straight behind a shield that reaches 18 in above it, the ground above is cut back as the soil
  // is (B read, A and C from memory). 8 ft deep with a 3 ft bottom and a shield of 5.5 ft: 4 ft straight, 4 ft cut back
  it.each<[Soil, number]>([
    ['a', 9],
    ['b', 11],
    ['c', 15],
  ])('above a shield in soil %s is %d ft wide', (soil, width) => {
    const digs = [trench(10, 40, { ...deep(8, 3), protection: 'shield', shieldHeight: feet(5.5) })];
    const { one } = dug({ things: straight, digging: { soil, digs } });
    expect(inFeet(one.top?.width ?? 0)).toBeCloseTo(width, 9);
    const { minX, maxX, minY, maxY } = regionBox(one.top?.outline ?? []);
    expect(inFeet(maxY - minY)).toBeCloseTo(width, 6);
    expect(inFeet(maxX - minX)).toBeCloseTo(30 + width - 3, 6);
    const said = found(one, 'shield-stands-above');
    expect(said).toMatchObject({ severity: 'note', rule: 'shieldAbove', values: { slope: one.sides.slope } });
    expect(inFeet(said?.values.upright ?? 0)).toBeCloseTo(4, 9);
    expect(codesOf(one)).not.toContain('shield-reaches-ground');
  });

  it('is as wide as the bottom where the shield reaches high enough, and no shield means nothing', () => {
    const digs = [trench(10, 40, { ...deep(8, 3), protection: 'shield', shieldHeight: feet(9.5) })];
    const { one } = dug({ things: straight, digging: { soil: 'c', digs } });
    expect(inFeet(one.top?.width ?? 0)).toBeCloseTo(3, 9);
    const sloped = [trench(10, 40, { ...deep(8, 3), protection: 'slope', shieldHeight: feet(5.5) })];
    const cut = dug({ things: straight, digging: { soil: 'b', digs: sloped } }).one;
    expect(inFeet(cut.top?.width ?? 0)).toBeCloseTo(19, 9);
  });

  // App A: previously disturbed soil is not Type A (from memory)
  it('counts soil A that was dug before as B, and says so', () => {
    const digging = { soil: 'a', disturbed: true, digs: [trench(10, 40, deep(6, 2))] } as const;
    const { one, site } = dug({ things: straight, digging: { ...digging, digs: [...digging.digs] } });
    expect(inFeet(one.top?.width ?? 0)).toBeCloseTo(14, 9);
    expect(one.sides).toMatchObject({ chosen: 'a', as: 'b' });
    const said = found(one, 'disturbed-soil-is-not');
    expect(said).toMatchObject({
      severity: 'must',
      rule: 'slopeDisturbed',
      values: { chosen: 'a', as: 'b' },
    });
    expect(ruleOf(site, 'slopeDisturbed').row.basis).toBe('memory');
    const gentler = dug({ things: straight, digging: { ...digging, soil: 'c', digs: [...digging.digs] } });
    expect(inFeet(gentler.one.top?.width ?? 0)).toBeCloseTo(20, 9);
    expect(codesOf(gentler.one)).not.toContain('disturbed-soil-is-not');
  });

  it('says when nobody chose the soil, and follows a slope that was changed on the site', () => {
    const digging = { soil: 'not-chosen', digs: [trench(10, 40, deep(6, 2))] } as const;
    const { one } = dug({ things: straight, digging: { ...digging, digs: [...digging.digs] } });
    expect(found(one, 'soil-not-chosen')).toMatchObject({ rule: 'slopeUnknown', values: { slope: 1.5 } });
    const changed = [{ rule: 'slopeUnknown', value: 2, who: 'lead', why: 'sand' }] as const;
    const own = dug({
      things: straight,
      digging: { ...digging, digs: [...digging.digs] },
      rules: { changed: [...changed] },
    });
    expect(inFeet(own.one.top?.width ?? 0)).toBeCloseTo(2 + 2 * 2 * 6, 9);
  });
});

describe('how deep asks for what', () => {
  const at = (depth: number, facts: Partial<Dig> = {}) =>
    dug({
      things: straight,
      digging: { soil: 'b', digs: [trench(0, 50, { ...deep(depth, 2), ...facts } as object)] },
    }).one;

  // 1926.652(a)(1): a system from 5 ft (1.52 m) on; below that if a competent person finds no sign of a cave-in
  it('a protective system from 5 ft on, a competent person’s word below', () => {
    expect(codesOf(at(4.9))).toContain('competent-person-decides');
    expect(codesOf(at(4.9))).not.toContain('protective-system-needed');
    expect(found(at(5), 'protective-system-needed')).toMatchObject({
      severity: 'must',
      rule: 'protectionDepth',
      values: { planned: 'slope', limit: feet(5) },
    });
    expect(codesOf(at(5))).not.toContain('competent-person-decides');
    expect(found(at(7, { protection: 'shield' }), 'protective-system-needed')?.values.planned).toBe('shield');
  });

  // Table B-1 note 2: Type A open for 24 hours or less may stand at 1/2:1 (63 degrees) down to 12 ft; 6 ft deep with a 2 ft bottom 8 ft wide
  it('says of soil A how steep it may be for a day, down to 12 ft', () => {
    const inSoil = (depth: number, digging: object = {}) =>
      dug({ things: straight, digging: { soil: 'a', digs: [trench(0, 50, deep(depth, 2))], ...digging } })
        .one;
    const told = found(inSoil(6), 'short-term-may-be-steeper');
    expect(told).toMatchObject({ severity: 'note', rule: 'slopeShortTerm' });
    expect(inFeet(told?.values.width ?? 0)).toBeCloseTo(8, 9);
    expect((Math.atan(1 / (told?.values.slope ?? 0)) * 180) / Math.PI).toBeCloseTo(63, 0);
    // what is shown stays at 3/4:1
    expect(inFeet(inSoil(6).top?.width ?? 0)).toBeCloseTo(11, 9);
    expect(codesOf(inSoil(12))).toContain('short-term-may-be-steeper');
    for (const none of [inSoil(12.1), inSoil(4.9), inSoil(6, { soil: 'b' }), inSoil(6, { disturbed: true })])
      expect(codesOf(none)).not.toContain('short-term-may-be-steeper');
  });

  it('in rock only that it is stable all through', () => {
    const { one } = dug({ things: straight, digging: { soil: 'rock', digs: [trench(0, 50, deep(9, 2))] } });
    expect(codesOf(one)).toContain('rock-must-be-stable');
    expect(codesOf(one)).not.toContain('protective-system-needed');
  });

  // Table B-1: stable rock vertical; behind a shield of 5.5 ft 4 ft of 8 stand straight, so that 4 ft of rock stand above with nothing before
  // them
  it('in rock behind a shield that ends below the ground that the rest is stable', () => {
    const shielded = (height?: number) =>
      dug({
        things: straight,
        digging: {
          soil: 'rock',
          protection: 'shield',
          digs: [
            trench(0, 50, { ...deep(8, 3), ...(height === undefined ? {} : { shieldHeight: feet(height) }) }),
          ],
        },
      }).one;
    const low = shielded(5.5);
    expect(inFeet(found(low, 'rock-must-be-stable')?.values.depth ?? 0)).toBeCloseTo(4, 9);
    expect(found(low, 'protective-system-needed')?.values.planned).toBe('shield');
    expect(found(low, 'shield-stands-above')?.values).toMatchObject({ slope: 0 });
    expect(codesOf(low)).not.toContain('shield-reaches-ground');
    for (const held of [shielded(9.5), shielded()])
      expect(codesOf(held)).not.toContain('rock-must-be-stable');
    expect(codesOf(shielded(9.5))).not.toContain('shield-reaches-ground');
    expect(codesOf(shielded())).toContain('shield-reaches-ground');
  });

  // Table B-1 note 3: over 20 ft
  it('an engineer over 20 ft', () => {
    expect(codesOf(at(20))).not.toContain('engineer-designs');
    expect(found(at(20.1), 'engineer-designs')).toMatchObject({ severity: 'must', rule: 'engineerDepth' });
  });

  // Table B-1 is headed: excavations less than 20 feet deep
  it('no slope of the table and no shield over 20 ft', () => {
    const planned = (depth: number) => found(at(depth), 'protective-system-needed')?.values.planned;
    expect([planned(20), planned(20.1)]).toEqual(['slope', 'engineer']);
    expect(found(at(21, { protection: 'shield' }), 'protective-system-needed')?.values.planned).toBe(
      'engineer',
    );
  });

  // 1926.651(c)(2): from 4 ft on, not more than 25 ft of lateral travel
  it('a way out from 4 ft on, one for 50 ft of trench', () => {
    expect(at(3.9).egress).toEqual([]);
    const [only, ...others] = at(4).egress;
    expect(others).toEqual([]);
    expect(inFeet(only?.station ?? 0)).toBeCloseTo(25, 9);
    expect(found(at(4), 'egress-needed')).toMatchObject({ rule: 'egressDepth', values: { places: 1 } });
  });

  it.each([
    [50, 1],
    [50.1, 2],
    [99, 2],
    [100, 2],
  ])('for %d ft of trench %d ways out, none of it further than 25 ft from one', (length, count) => {
    const { one } = dug({ things: straight, digging: { digs: [trench(0, length, deep(6, 2))] } });
    const stations = one.egress.map((e) => inFeet(e.station));
    expect(stations).toHaveLength(count);
    for (let s = 0; s <= length; s += 0.5)
      expect(Math.min(...stations.map((e) => Math.abs(e - s)))).toBeLessThanOrEqual(25 + 1e-6);
  });

  it('only where it is that deep', () => {
    const level = (x: number, of: number) => ({
      spot: spot(x, 0),
      level: { is: 'depth-to-invert', depth: feet(of) } as const,
    });
    const paths = [pipe('p', [level(0, 2), level(100, 6)])];
    const rules = { changed: [{ rule: 'beddingDepth', value: 0, who: 'lead', why: 'sand' }] as const };
    const { one } = dug({
      things: { paths },
      digging: { digs: [trench(0, 100)] },
      rules: { changed: [...rules.changed] },
    });
    // 4 ft deep at 50 ft: the deep half, 50 ft long, has its way out in the middle
    expect(one.egress.map((e) => inFeet(e.station))).toEqual([expect.closeTo(75, 5)]);
  });
});

describe('the depth of a trench', () => {
  const ground = (id: string, x: number, level: number) =>
    thing(id, 'spot-level', [typed(x, 0.5)], { level });
  const inverts = (...levels: readonly [number, number][]) => ({
    paths: [
      pipe(
        'p',
        levels.map(([x, level]) => ({ spot: typed(x, 0), level: { is: 'invert', level } as const })),
      ),
    ],
  });
  const dig: Dig = { is: 'trench', id: 't', name: '', note: '', path: 'p', from: 0, to: 10 };

  it('is from the ground to the invert and the bedding below it', () => {
    const features = [ground('a', 0, 100), ground('b', 10, 101)];
    const { one, site } = dug({
      things: { ...inverts([0, 98], [10, 97.8]), features },
      digging: { digs: [dig] },
    });
    const bedding = ruleOf(site, 'beddingDepth').value;
    expect(one.depth?.from).toBe('pipe');
    expect(one.depth?.least).toBeCloseTo(2 + bedding, 6);
    expect(one.depth?.most).toBeCloseTo(3.2 + bedding, 6);
    expect(codesOf(one)).not.toContain('depth-carried-on');
  });

  it('steps at a drop of the pipe and turns where the ground does', () => {
    const paths = [
      pipe('p', [
        { spot: typed(0, 0), level: { is: 'invert', level: 98 } },
        { spot: typed(5, 0), drop: 1 },
        { spot: typed(10, 0), level: { is: 'invert', level: 97 } },
      ]),
    ];
    const features = [ground('a', 0, 100), ground('b', 2, 100.6), ground('c', 10, 100)];
    const { one, site } = dug({ things: { paths, features }, digging: { digs: [dig] } });
    const bedding = ruleOf(site, 'beddingDepth').value;
    const at = (station: number) =>
      (one.cuts[0]?.points ?? [])
        .filter((p) => Math.abs(p.station - station) < 1e-9)
        .map((p) => p.depth - bedding);
    expect(at(2)).toEqual([expect.closeTo(2.6, 6)]);
    expect(at(5)).toEqual([expect.closeTo(100.375 - 98, 6), expect.closeTo(100.375 - 97, 6)]);
  });

  it('is not known without a level of the pipe, of the ground, or under a building: then nothing is computed of it', () => {
    const bare = dug({
      things: { paths: [pipe('p', [typed(0, 0), typed(10, 0)])] },
      digging: { digs: [dig] },
    }).one;
    expect(found(bare, 'depth-not-known')).toMatchObject({
      severity: 'must',
      values: { because: 'no-pipe-level' },
    });
    expect(bare).toMatchObject({
      depth: null,
      top: null,
      volume: null,
      spoil: null,
      restore: null,
      egress: [],
    });
    expect(bare.bottom?.length).toBeCloseTo(10, 9);

    const far = dug({
      things: { ...inverts([0, 98], [40, 97]), features: [ground('a', 0, 100), ground('b', 40, 100)] },
      digging: { digs: [{ ...dig, to: 40 }] },
    }).one;
    expect(found(far, 'depth-not-known')?.values.because).toBe('no-ground');

    const house = thing('h', 'building', [typed(4, -3), typed(6, -3), typed(6, 3), typed(4, 3)]);
    const under = dug({
      things: { ...inverts([0, 98], [10, 97]), features: [ground('a', 0, 100), ground('b', 10, 100), house] },
      digging: { digs: [dig] },
    }).one;
    expect(found(under, 'depth-not-known')?.values.because).toBe('indoors');
    expect(under.volume).toBeNull();
  });

  it('says when it is none: a pipe above the ground, a depth of zero', () => {
    const features = [ground('a', 0, 100), ground('b', 10, 97)];
    const above = dug({
      things: { ...inverts([0, 98], [10, 97.9]), features },
      digging: { digs: [dig] },
    }).one;
    expect(found(above, 'depth-not-positive')).toMatchObject({ severity: 'must', values: { station: 10 } });
    expect(above.top).toBeNull();
    const zero = dug({ things: straight, digging: { digs: [trench(0, 10, { depth: 0 })] } }).one;
    expect(codesOf(zero)).toContain('depth-not-positive');
    expect(zero.top).toBeNull();
  });

  it('says when it is carried on past the last level, and when it may pass 5 ft though it does not', () => {
    const features = [ground('a', 0, 100), ground('b', 10, 100)];
    const carried = dug({
      things: {
        paths: [
          pipe('p', [
            { spot: typed(0, 0), level: { is: 'invert', level: 98.7 } },
            typed(4, 0),
            { spot: typed(6, 0), level: { is: 'invert', level: 98.7 } },
            typed(10, 0),
          ]),
        ],
        features,
      },
      digging: { digs: [dig] },
    }).one;
    expect(codesOf(carried)).toContain('depth-carried-on');
    const near = dug({
      things: { ...inverts([0, 98.6], [10, 98.6]), features },
      digging: { digs: [dig] },
    }).one;
    expect(inFeet(near.depth?.most ?? 0)).toBeLessThan(5);
    expect(codesOf(near)).toContain('competent-person-decides');
    expect(codesOf(near)).toContain('depth-may-pass-limit');
  });
});

describe('a pit', () => {
  const run = push({ path: 'p', entry: 'head' }, [10]);
  const things = {
    features: [thing('head', 'cleanout', [typed(0, 0)])],
    paths: [pipe('p', [typed(0, 0), typed(20, 0)])],
    runs: [run],
  };
  const pit: Dig = { is: 'pit', id: 'pit', name: '', note: '', at: { run: 'run', reading: 'r1' }, depth: 2 };
  const holes = new Map([['r1', { length: 1.2, width: 0.9 }]]);

  it('is as large as its hole with room to work on all sides, along the pipe', () => {
    const { one, site } = dug({ things, digging: { protection: 'shield', digs: [pit] } }, holes);
    const room = 2 * ruleOf(site, 'workSpace').value;
    expect(one.bottom?.length).toBeCloseTo(1.2 + room, 9);
    expect(one.bottom?.width).toBeCloseTo(0.9 + room, 9);
    const { minX, maxX, minY, maxY } = regionBox(one.bottom?.outline ?? []);
    expect([minX + maxX, minY + maxY].map((v) => v / 2)).toEqual([
      expect.closeTo(10, 9),
      expect.closeTo(0, 9),
    ]);
    expect(maxX - minX).toBeCloseTo(1.2 + room, 9);
  });

  it('is as large as it says itself', () => {
    const digs = [{ ...pit, length: 3, bottomWidth: 2 }];
    const { one } = dug({ things, digging: { digs } });
    expect(one.bottom).toMatchObject({ length: expect.closeTo(3, 9), width: 2 });
  });

  it('has no outline without a size or a place, and says so', () => {
    const none = dug({ things, digging: { digs: [pit] } }).one;
    expect(found(none, 'pit-without-size')?.severity).toBe('must');
    expect(none.bottom).toBeNull();
    const lost = dug(
      { things, digging: { digs: [{ ...pit, at: { run: 'run', reading: 'x' } }] } },
      holes,
    ).one;
    expect(found(lost, 'dig-without-place')?.at).toEqual({ kind: 'reading', run: 'run', id: 'x' });
  });
});

describe('what is wrong with a trench’s stations', () => {
  it('is said, and the trench ends with the pipe', () => {
    const past = dug({ things: straight, digging: { digs: [trench(80, 130, deep(4, 2))] } }).one;
    expect(inFeet(found(past, 'trench-past-end')?.values.beyond ?? 0)).toBeCloseTo(30, 9);
    expect(inFeet(past.bottom?.length ?? 0)).toBeCloseTo(20, 9);
    const none = dug({ things: straight, digging: { digs: [trench(30, 30, deep(4, 2))] } }).one;
    expect(codesOf(none)).toContain('trench-without-length');
    expect(none.bottom).toBeNull();
    const lost = dug({ things: straight, digging: { digs: [trench(0, 9, { path: 'gone' })] } }).one;
    expect(codesOf(lost)).toContain('dig-without-place');
  });

  it('does not mind which is given first', () => {
    const there = dug({ things: straight, digging: { digs: [trench(10, 40, deep(6, 2))] } }).one;
    const back = dug({ things: straight, digging: { digs: [trench(40, 10, deep(6, 2))] } }).one;
    expect(back.top?.outline).toEqual(there.top?.outline);
  });

  it('without any dig there is nothing', () => {
    const site = digSite({ things: straight });
    expect(site.digging.digs).toEqual([]);
  });
});
