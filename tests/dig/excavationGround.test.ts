// What a dig runs over and stands beside: arithmetic by hand, and 29 CFR 1926.651(j)(2).

import { type Feature, ruleOf } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { pipe, thing, typed } from '../../packages/site/src/testing/yard';
import { codesOf, dug, feet, found, inFeet, trench } from './digSite';

const box = (
  id: string,
  kind: Feature['kind'],
  x: number,
  y: number,
  width: number,
  height: number,
  fields = {},
) =>
  thing(
    id,
    kind,
    [typed(x, y), typed(x + width, y), typed(x + width, y + height), typed(x, y + height)],
    fields,
  );
const across = (id: string, kind: Feature['kind'], x: number, fields = {}) =>
  thing(id, kind, [typed(x, -20), typed(x, 20)], fields);
const paths = [pipe('p', [typed(0, 0), typed(30, 0)])];

/** From 5 m to 25 m along a straight pipe, 1.5 m deep in soil B with a bottom of 0.6 m: the top is 3.6 m wide and 23 m long. */
const dig = (facts: object = {}) =>
  ({ ...trench(0, 0), from: 5, to: 25, depth: 1.5, bottomWidth: 0.6, ...facts }) as ReturnType<typeof trench>;
const with_ = (features: readonly Feature[], facts: object = {}) =>
  dug({ things: { features: [...features], paths }, digging: { soil: 'b', digs: [dig(facts)] } }).one;

describe('what has to be put back', () => {
  it('is the pavement that the top takes, and lawn for the rest', () => {
    const one = with_([box('drive', 'driveway', 10, -20, 3, 40), box('walk', 'sidewalk', 20, -20, 1.2, 40)]);
    expect(one.restore?.pavements).toEqual([
      { feature: 'drive', area: expect.closeTo(3 * 3.6, 6) },
      { feature: 'walk', area: expect.closeTo(1.2 * 3.6, 6) },
    ]);
    expect(one.restore?.paved).toBeCloseTo(4.2 * 3.6, 6);
    expect(one.restore?.lawn).toBeCloseTo(23 * 3.6 - 4.2 * 3.6, 6);
    expect(one.restore?.beyond).toBe(0);
    expect(found(one, 'dig-takes-pavement')?.values).toMatchObject({
      feature: 'drive',
      area: expect.closeTo(10.8, 6),
    });
  });

  it('counts pavement over pavement once, and lawn on the lot only', () => {
    const one = with_([
      box('street', 'street', 20, -20, 30, 40),
      box('walk', 'sidewalk', 19, -20, 2, 40),
      box('lot', 'boundary', -20, -20, 37, 40),
    ]);
    expect(one.restore?.paved).toBeCloseTo((26.5 - 19) * 3.6, 6);
    expect(one.restore?.lawn).toBeCloseTo((17 - 3.5) * 3.6, 6);
    expect(one.restore?.beyond).toBeCloseTo((19 - 17) * 3.6, 6);
  });
});

describe('what the top runs over', () => {
  it('is a boundary, an easement, a building, a service, each with how much of it', () => {
    const one = with_([
      box('lot', 'boundary', -20, -20, 40, 40),
      box('path-easement', 'easement', 8, -1, 2, 9),
      box('house', 'building', 12, 1.3, 5, 9, { footingDepth: 3 }),
      across('gas', 'service', 15, { carries: 'gas' }),
      across('old-line', 'boundary-line', 40),
    ]);
    const values = (code: Parameters<typeof found>[1]) => found(one, code)?.values;
    expect(values('dig-crosses-boundary')).toMatchObject({ feature: 'lot', length: expect.closeTo(3.6, 6) });
    expect(values('dig-in-easement')).toMatchObject({ area: expect.closeTo(2 * 2.8, 6) });
    expect(values('dig-reaches-building')).toMatchObject({ area: expect.closeTo(5 * 0.5, 6) });
    expect(values('dig-crosses-service')).toMatchObject({ feature: 'gas', length: expect.closeTo(3.6, 6) });
    expect(one.findings.filter((f) => f.code === 'dig-crosses-boundary')).toHaveLength(1);
  });

  // a point put there by eye is off by 0.3 m (settings: common practice, no source)
  it('is one boundary where the side of the lot and the right of way on it are drawn for one line', () => {
    const lot = box('lot', 'boundary', -20, -20, 40, 40);
    const lines = (right: number, more: readonly Feature[] = []) =>
      with_([across('row', 'right-of-way', right), ...more, lot])
        .findings.filter((f) => f.code === 'dig-crosses-boundary')
        .map((f) => f.values);
    expect(lines(20)).toMatchObject([{ feature: 'lot' }]);
    expect(lines(20.2, [across('side', 'boundary-line', 19.9)])).toMatchObject([{ feature: 'lot' }]);
    expect(lines(20.5)).toMatchObject([{ feature: 'row' }, { feature: 'lot' }]);
  });

  it('is a trunk, a pole, a fence that it takes, and none that it misses', () => {
    const point = (id: string, kind: Feature['kind'], x: number, y: number, fields = {}) =>
      thing(id, kind, [typed(x, y)], fields);
    const one = with_([
      point('pole', 'pole', 10, 1.7),
      point('trunk', 'tree', 12, 2, { trunkDiameter: 0.6 }),
      point('far', 'tree', 12, 2.2, { trunkDiameter: 0.6 }),
      across('fence', 'fence', 20),
      point('cleanout', 'cleanout', 14, 0),
    ]);
    const taken = one.findings.flatMap((f) => (f.code === 'dig-takes-thing' ? [f.values.feature] : []));
    expect(taken).toEqual(['pole', 'fence']);
    const trunks = one.findings.filter((f) => f.code === 'dig-takes-trunk');
    expect(trunks).toMatchObject([{ severity: 'must', values: { feature: 'trunk' } }]);
  });

  it('takes an outline that crosses itself by what it encloses', () => {
    const bow = thing('bow', 'building', [typed(10, -5), typed(14, 5), typed(14, -5), typed(10, 5)]);
    const one = with_([bow]);
    // two triangles with their points at the middle: of the 4 m across, all but 0.8·|y| within 1.8 m of the pipe
    expect(found(one, 'dig-reaches-building')?.values.area).toBeCloseTo(4 * 3.6 - 0.8 * 1.8 ** 2, 6);
  });
});

describe('a service under a dig', () => {
  // 1.5 m deep, 0.6 m wide at the bottom, cut back 1 to 1: 0.6 + 2·(1.5 − d) m wide at d metres below the ground
  const bare = (depth: number | undefined) =>
    found(with_([across('gas', 'service', 15, depth === undefined ? {} : { depth })]), 'dig-crosses-service');

  it('is laid bare for as much as the dig is wide at its depth', () => {
    expect(bare(1)?.values).toMatchObject({ length: expect.closeTo(1.6, 6), unknown: null });
    expect(bare(0)?.values.length).toBeCloseTo(3.6, 6);
  });

  it('below the bottom is not', () => {
    expect(bare(1.6)).toBeUndefined();
  });

  it('may be where nobody said how deep it lies', () => {
    expect(bare(undefined)).toMatchObject({
      severity: 'must',
      values: { length: expect.closeTo(3.6, 6), unknown: 'service' },
    });
  });

  it('alongside a trench that gets deeper, where it is that deep', () => {
    const level = (x: number, depth: number) => ({
      spot: typed(x, 0),
      level: { is: 'depth-to-invert', depth } as const,
    });
    const features = [thing('gas', 'service', [typed(-20, 0.1), typed(50, 0.1)], { depth: 1 })];
    const { one, site } = dug({
      things: { features, paths: [pipe('p', [level(0, 0.5), level(30, 2)])] },
      digging: { digs: [{ ...dig({ from: 0, to: 30, protection: 'shield' }), depth: undefined }] },
    } as unknown as Parameters<typeof dug>[0]);
    const bedding = ruleOf(site, 'beddingDepth').value;
    // 1 m deep at (1 − 0.5 − bedding) / 1.5 of the way
    const from = (30 * (0.5 - bedding)) / 1.5;
    expect(found(one, 'dig-crosses-service')?.values.length).toBeCloseTo(30 - from, 6);
  });
});

describe('beside a footing', () => {
  // rule of thumb, no source: 45 degrees down and out from the footing's bottom edge
  const beside = (gapFt: number, fields: object, facts: object = {}) =>
    with_([box('house', 'building', 8, 0.3 + feet(gapFt), 5, 9, fields)], {
      depth: feet(6),
      protection: 'shield',
      ...facts,
    });

  it('a dig may be as far below it as it stays away', () => {
    const near = found(beside(4, { footingDepth: feet(1.5) }), 'dig-under-footing');
    expect(near).toMatchObject({ severity: 'must', rule: 'footingInfluence' });
    expect(inFeet(near?.values.distance ?? 0)).toBeCloseTo(4, 6);
    expect(inFeet(near?.values.reach ?? 0)).toBeCloseTo(4.5, 9);
    expect(near?.values.assumed).toBeNull();
    expect(codesOf(beside(4.6, { footingDepth: feet(1.5) }))).not.toContain('dig-under-footing');
    expect(codesOf(beside(0.1, { footingDepth: feet(6) }))).not.toContain('dig-under-footing');
  });

  it('takes the footing’s depth from the foundation, and the shallowest where nothing is known, and says so', () => {
    expect(codesOf(beside(0.5, { foundation: 'basement' }))).not.toContain('dig-under-footing');
    // 6 ft deep, 0.5 ft off: a footing of 1.5 ft is undermined within 4.5 ft, one of the 8 ft that a basement is taken to have is not
    expect(found(beside(0.5, { foundation: 'basement' }), 'footing-taken')).toMatchObject({
      severity: 'should',
      rule: 'footingBasement',
      values: { footing: feet(8), shallowest: feet(1.5), assumed: 'foundation' },
    });
    expect(codesOf(beside(4.6, { foundation: 'basement' }))).not.toContain('footing-taken');
    expect(codesOf(beside(0.5, { footingDepth: feet(8) }))).not.toContain('footing-taken');
    const crawl = found(beside(2, { foundation: 'crawl-space' }), 'dig-under-footing')?.values;
    expect(crawl).toMatchObject({ footing: feet(3), assumed: 'foundation' });
    expect(found(beside(2, {}), 'dig-under-footing')?.values).toMatchObject({
      footing: feet(1.5),
      assumed: 'nothing',
    });
  });

  it('counts a shed, a porch and a deck as buildings of which nothing is known', () => {
    for (const kind of ['shed', 'porch', 'deck'] as const) {
      const one = with_([box('t', kind, 8, 0.3 + feet(1), 5, 9)], { depth: feet(8), protection: 'shield' });
      expect(found(one, 'dig-under-footing')).toMatchObject({
        severity: 'must',
        values: { feature: 't', kind, footing: feet(1.5), assumed: 'nothing' },
      });
    }
  });

  it('counts a face flatter than the influence from where it meets the footing’s depth', () => {
    const soilC = (gapFt: number) =>
      dug({
        things: {
          features: [box('house', 'building', 8, 0.3 + feet(gapFt), 5, 9, { footingDepth: feet(2) })],
          paths,
        },
        digging: { soil: 'c', digs: [dig({ depth: feet(6) })] },
      }).one;
    // 4 ft below the footing at 1.5 : 1
    expect(codesOf(soilC(5.9))).toContain('dig-under-footing');
    expect(codesOf(soilC(6.1))).not.toContain('dig-under-footing');
  });
});

describe('room for the spoil', () => {
  const blocked = (features: readonly Feature[], facts: object = {}) => with_(features, facts).spoil;

  it('is on the left first, on the right where a building, pavement or a boundary is left', () => {
    expect(blocked([])?.suggested).toBe('left');
    for (const thingLeft of [
      box('t', 'building', 10, 3, 5, 9, { footingDepth: 3 }),
      box('t', 'patio', 10, 3, 5, 9),
      thing('t', 'boundary-line', [typed(0, 3), typed(30, 3)]),
      thing('t', 'tree', [typed(15, 8)], { trunkDiameter: 0.6 }),
    ]) {
      const spoil = blocked([thingLeft]);
      expect(spoil?.left.blocked).toEqual(['t']);
      expect(spoil?.right.blocked).toEqual([]);
      expect(spoil?.side).toBe('right');
    }
  });

  it('is nowhere between a house and a boundary: it goes away, and that is said', () => {
    const features = [
      box('house', 'building', 10, 3, 5, 9, { footingDepth: 3 }),
      thing('line', 'boundary-line', [typed(0, -3), typed(30, -3)]),
    ];
    const one = with_(features);
    expect(one.spoil?.side).toBe('away');
    expect(found(one, 'spoil-without-room')).toMatchObject({
      rule: 'spoilSetback',
      values: { side: null, suggested: 'away', features: ['house', 'line'] },
    });
    const told = with_(features, { spoil: 'left' });
    expect(told.spoil?.side).toBe('left');
    expect(found(told, 'spoil-without-room')?.values).toMatchObject({ side: 'left', features: ['house'] });
    expect(codesOf(with_(features, { spoil: 'away' }))).not.toContain('spoil-without-room');
  });

  it('a boundary that only ends near the heap does not block it', () => {
    expect(blocked([thing('line', 'boundary-line', [typed(0, 40), typed(30, 40)])])?.left.blocked).toEqual(
      [],
    );
  });
});
