// What is said of a dig whose depth is not known, or not all along: the least that it takes. Arithmetic by hand.

import { digOutlines, servicesOf, standsInTheWay } from '@footmark/dig';
import { regionArea } from '@footmark/geometry';
import { type Feature, type Path, ruleOf } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { pipe, thing, typed } from '../../packages/site/src/testing/yard';
import { codesOf, digSite, dug, feet, found, inFeet, trench } from './digSite';

const TODAY = '2026-05-10';

const box = (id: string, kind: Feature['kind'], x: number, y: number, width: number, height: number) =>
  thing(id, kind, [typed(x, y), typed(x + width, y), typed(x + width, y + height), typed(x, y + height)]);
const across = (id: string, kind: Feature['kind'], x: number, fields = {}) =>
  thing(id, kind, [typed(x, -20), typed(x, 20)], fields);

const bare = pipe('p', [typed(0, 0), typed(30, 0)]);
const dig = { ...trench(0, 0), from: 5, to: 25, bottomWidth: 0.6 } as ReturnType<typeof trench>;
const parts = (features: readonly Feature[], path: Path = bare, digs = [dig]) => ({
  things: { features: [...features], paths: [path] },
  digging: { soil: 'b' as const, digs: [...digs] },
});

describe('a trench of which no depth is known', () => {
  const yard = parts([
    across('gas', 'service', 15, { carries: 'gas', depth: 0.6 }),
    box('house', 'building', 8, 0.2, 4, 9),
    across('line', 'boundary-line', 20),
    box('drive', 'driveway', 21, -9, 3, 18),
    thing('oak', 'tree', [typed(18, 0.4)], { trunkDiameter: 0.4 }),
    thing('fence', 'fence', [typed(13, -9), typed(13, 9)]),
  ]);
  const { one, site, derived, all } = dug(yard);

  it('meets at least what its bottom does', () => {
    expect(found(one, 'depth-not-known')?.severity).toBe('must');
    expect(found(one, 'dig-reaches-building')).toMatchObject({
      severity: 'must',
      values: { feature: 'house', area: expect.closeTo(4 * 0.1, 6), atLeast: true },
    });
    expect(found(one, 'dig-crosses-boundary')?.values).toMatchObject({
      feature: 'line',
      length: expect.closeTo(0.6, 6),
      atLeast: true,
    });
    expect(found(one, 'dig-takes-pavement')?.values).toMatchObject({ area: expect.closeTo(3 * 0.6, 6) });
    expect(found(one, 'dig-takes-trunk')?.values).toMatchObject({ feature: 'oak', atLeast: true });
    expect(found(one, 'dig-takes-thing')?.values).toMatchObject({ feature: 'fence' });
  });

  it('may lay bare a service, though that one’s depth is known', () => {
    expect(found(one, 'dig-crosses-service')).toMatchObject({
      severity: 'must',
      values: { feature: 'gas', length: expect.closeTo(0.6, 6), unknown: 'dig' },
    });
  });

  it('is in the tolerance zone of a service, and its pieces by hand', () => {
    const { digs, findings } = servicesOf(site, derived, digOutlines(all), TODAY);
    expect(digs).toMatchObject([{ feature: 'gas', below: null, atLeast: true }]);
    expect(findings).toContainEqual(
      expect.objectContaining({ code: 'dig-in-tolerance-zone', severity: 'must' }),
    );
  });

  it('says how deep it may go before it undermines a house beside it', () => {
    // a footing of which nothing is known is taken at 1.5 ft; 45 degrees from there
    const beside = dug(parts([box('house', 'building', 8, 0.3 + feet(4), 4, 9)])).one;
    const said = found(beside, 'footing-not-judged');
    expect(said).toMatchObject({ severity: 'should', rule: 'footingInfluence' });
    expect(inFeet(said?.values.deepest ?? 0)).toBeCloseTo(1.5 + 4, 6);
    const far = dug(parts([box('house', 'building', 8, 0.3 + feet(20.1), 4, 9)])).one;
    expect(codesOf(far)).not.toContain('footing-not-judged');
  });

  it('has no clearance that it could be said to meet', () => {
    const { clearances } = standsInTheWay(site, derived, null, TODAY);
    expect(clearances.filter((c) => c.of.is === 'outline')).toEqual([]);
  });
});

describe('a trench of which the depth is known but for one metre', () => {
  // the ground is levelled from 0 to 20 m; from there on nothing is known of it
  const path = pipe('p', [
    { spot: typed(0, 0), level: { is: 'invert', level: 98 } },
    { spot: typed(30, 0), level: { is: 'invert', level: 98 } },
  ]);
  const ground = [0, 10, 20].map((x) => thing(`g${x}`, 'spot-level', [typed(x, 0)], { level: 100 }));
  const trench_ = { ...dig, from: 4, to: 24 };
  const made = dug(
    parts([...ground, across('line', 'boundary-line', 12), across('gas', 'service', 8, { depth: 1 })], path, [
      trench_,
    ]),
  );
  const bedding = ruleOf(digSite({}), 'beddingDepth').value;
  const depth = 2 + bedding;

  it('needs at least what the part that is known needs: a system from 5 ft on, a way out from 4 ft on', () => {
    const { one } = made;
    expect(one.depth).toBeNull();
    expect(found(one, 'protective-system-needed')).toMatchObject({
      severity: 'must',
      rule: 'protectionDepth',
      values: { depth: expect.closeTo(depth, 6), atLeast: true },
    });
    expect(found(one, 'egress-needed')?.values.atLeast).toBe(true);
    expect(one.egress.length).toBeGreaterThan(0);
    expect(codesOf(one)).not.toContain('competent-person-decides');
  });

  it('meets what the top of that part does', () => {
    const width = 0.6 + 2 * depth;
    expect(found(made.one, 'dig-crosses-boundary')?.values.length).toBeCloseTo(width, 6);
    expect(found(made.one, 'dig-crosses-service')?.values).toMatchObject({
      length: expect.closeTo(0.6 + 2 * (depth - 1), 6),
      unknown: null,
      atLeast: true,
    });
  });

  it('takes that top and the bottom of the rest', () => {
    const area = regionArea(made.one.ground?.outline ?? []);
    expect(made.one.ground?.atLeast).toBe(true);
    // known to within reach of the last level, 3 m past 20 m at the most
    expect(area).toBeGreaterThan(16 * (0.6 + 2 * depth));
    expect(area).toBeLessThan(19 * (0.6 + 2 * depth) + 20 * 0.6);
  });

  it('undermines what that part undermines', () => {
    const house = box('house', 'building', 8, 0.3 + 1, 4, 9);
    const beside = dug(parts([...ground, house], path, [trench_])).one;
    expect(found(beside, 'dig-under-footing')).toMatchObject({ severity: 'must', values: { atLeast: true } });
  });
});
