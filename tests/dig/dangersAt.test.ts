import { type CrewHole, dangersAt } from '@footmark/dig';
import { derive, type Feature, ruleValue } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { square, thing, typed, yard } from '../../packages/site/src/testing/yard';

/** 2 m along a pipe that runs east, 1 m across it. */
const hole: CrewHole = { at: { x: 0, y: 0 }, along: Math.PI / 2, length: 2, width: 1 };

function dangers(features: readonly Feature[], of: CrewHole = hole) {
  const site = yard({ features: [...features] });
  return dangersAt(site, derive(site), of);
}

const gas = (x: number, fields: object = {}) =>
  thing('gas', 'service', [typed(x, -5), typed(x, 5)], { carries: 'gas', ...fields });

describe('what a hole may hit', () => {
  it('is a service, from the hole’s edge and not from its middle', () => {
    // the hole ends at x = 1; the line at 1.4 m has no diameter, so it is its middle
    expect(dangers([gas(1.4)])).toMatchObject([
      { is: 'service', feature: 'gas', distance: expect.closeTo(0.4, 9), depth: null },
    ]);
    // turned to the north the same hole ends 0.5 m east of its middle
    expect(dangers([gas(1.4)], { ...hole, along: 0 })).toMatchObject([{ distance: expect.closeTo(0.9, 9) }]);
  });

  it('is dug by hand within the tolerance zone of the site, and told a little further off', () => {
    const zone = ruleValue(yard(), 'toleranceZone');
    const at = (away: number) => dangers([gas(1 + away)])[0];
    expect(at(zone - 0.01)?.byHand).toBe(true);
    expect(at(zone + 0.01)?.byHand).toBe(false);
    expect(at(zone + 0.7)).toBeUndefined();
  });

  it('is a service that runs through the hole before one beside it, with its depth where that is known', () => {
    const water = thing('water', 'service', [typed(-5, 0.2), typed(5, 0.2)], {
      carries: 'water',
      depth: 1.1,
    });
    const [first, second] = dangers([gas(1.2), water]);
    expect(first).toMatchObject({ feature: 'water', depth: 1.1, byHand: true });
    expect(first?.distance).toBeLessThan(0);
    expect(second?.feature).toBe('gas');
  });

  it('are roots whose zone reaches into the hole, and trees that nobody measured', () => {
    // 12 trunk diameters (BS 5837, the rule chosen here): 0.4 m gives 4.8 m from the centre
    const site = (x: number, fields: object) => {
      const of = yard({ features: [thing('oak', 'tree', [typed(x, 0)], fields)] });
      return { ...of, rules: { ...of.rules, trees: 'bs-5837' as const } };
    };
    const of = (x: number, fields: object) => {
      const on = site(x, fields);
      return dangersAt(on, derive(on), hole);
    };
    expect(of(5, { trunkDiameter: 0.4 })).toMatchObject([
      { is: 'roots', feature: 'oak', distance: expect.closeTo(-0.8, 9) },
    ]);
    expect(of(5.9, { trunkDiameter: 0.4 })).toEqual([]);
    expect(of(2, {})).toMatchObject([{ is: 'roots', distance: expect.closeTo(1, 9) }]);
  });

  it('is what stands beside it, after services', () => {
    const house = square('house', 'building', 1.5, -4, 8);
    expect(dangers([house, gas(1.1)]).map((d) => d.is)).toEqual(['service', 'footing']);
    expect(dangers([square('house', 'building', 3, -4, 8)])).toEqual([]);
  });

  it('is nothing in an empty yard', () => {
    expect(dangers([])).toEqual([]);
  });
});
