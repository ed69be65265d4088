// What a way costs by a price list. Outside of it: sums by hand.
import { priceOf } from '@footmark/reroute';
import { describe, expect, it } from 'vitest';
import { only, straightDrain, thing, waysOn } from './drain';

describe('a price list', () => {
  const { ways } = waysOn(straightDrain([thing('oak', 'tree', [[0, 10]], { trunkDiameter: 0.3 })]));

  it('prices each way by what it takes, and none without a price', () => {
    const [fresh] = only(ways, 'new');
    const [inPlace] = only(ways, 'in-place');
    if (fresh === undefined || inPlace === undefined) throw new Error('no ways');
    expect(priceOf(fresh, {})).toBeNull();
    // 10 a metre of pipe and 40 a bend, by hand
    const bends = fresh.route?.bends.length ?? 0;
    expect(priceOf(fresh, { pipe: 10, bend: 40 })?.total).toBeCloseTo(
      10 * fresh.facts.length + 40 * bends,
      9,
    );
    // the old pipe from end to end without a trench, none of it new in the ground, no bend
    expect(priceOf(inPlace, { pipe: 10, bored: 90, bend: 40 })?.total).toBeCloseTo(90 * 20, 9);
  });

  it('knows no price where an amount that has one is not known', () => {
    const [repair] = only(ways, 'repair');
    if (repair === undefined) throw new Error('no way');
    // without any level of the ground the trench has no depth
    expect(repair.facts.dug.volume).toBeNull();
    expect(priceOf(repair, { dug: 50 })).toBeNull();
    // nor how wide it is at the top
    expect([repair.facts.dug.paved, repair.facts.dug.lawn, repair.facts.dug.beyond]).toEqual([
      null,
      null,
      null,
    ]);
    expect(priceOf(repair, { lawn: 5 })).toBeNull();
    expect(priceOf(repair, { pipe: 10 })?.total).toBeCloseTo(10 * 20, 9);
  });

  it('tells what it is without: all that a way takes, or may take, and that has no price', () => {
    const [repair] = only(ways, 'repair');
    const [inPlace] = only(ways, 'in-place');
    if (repair === undefined || inPlace === undefined) throw new Error('no ways');
    const missing = repair.facts.cleanouts.missing.length > 0 ? ['cleanout'] : [];
    // a straight pipe: nothing bored, no bend
    expect(priceOf(repair, { pipe: 10 })?.without).toEqual([...missing, 'dug', 'paved', 'lawn']);
    expect(priceOf(inPlace, { pipe: 10 })?.without).toEqual(['bored', ...missing, 'dug', 'paved', 'lawn']);
    const known = { volume: 3, paved: 0, lawn: 0, beyond: 2 };
    const flat = { ...repair, facts: { ...repair.facts, dug: { ...repair.facts.dug, ...known } } };
    expect(priceOf(flat, { pipe: 10 })?.without).toEqual([...missing, 'dug', 'lawn']);
    const all = { pipe: 10, cleanout: 0, dug: 50, lawn: 5 };
    expect(priceOf(flat, all)).toEqual({ total: expect.closeTo(10 * 20 + 50 * 3 + 5 * 2, 9), without: [] });
  });
});
