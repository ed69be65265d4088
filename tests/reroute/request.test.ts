// From a site to a request. Outside of it: the formula of AS 4970, the tangent of a bend.
import { bendTable, mindedBy, requestOf, usualAsk } from '@footmark/reroute';
import { derive, ruleValue } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { asked, heldRoots, straightDrain, thing, waysOn } from './drain';

describe('a request', () => {
  it('keeps the trench out of the roots that hold a tree up, and lets the others cost', () => {
    const site = straightDrain([thing('oak', 'tree', [[0, 10]], { trunkDiameter: 0.4 })]);
    const derived = derive(site);
    const minded = mindedBy(site, derived, asked(derived));
    const usual = minded.find((m) => m.id === 'oak')?.usual;
    const clear = heldRoots(0.4) + ruleValue(site, 'bottomWidth') / 2 - 0.2;
    expect(usual?.as === 'clear' ? usual.clearance : null).toBeCloseTo(clear, 9);
    expect(minded.find((m) => m.id === 'roots/oak')?.usual.as).toBe('cost');
  });

  it('leaves the old pipe at the wall of the house, not within', () => {
    const house = thing('h', 'building', [
      [-3, -2],
      [3, -2],
      [3, 4],
      [-3, 4],
    ]);
    const { request } = waysOn(straightDrain([house]));
    expect(request.start.at.y).toBeCloseTo(4, 6);
    const square = waysOn(straightDrain([house]), { leaves: 'square' }).request.start.heading;
    expect(Math.cos(square)).toBeCloseTo(1, 9);
  });

  it('is laid of bends whose fittings reach past their arcs', () => {
    const site = straightDrain();
    for (const { radius, turn, laying } of bendTable(site, 0.1))
      expect(laying).toBeCloseTo(radius * Math.tan(turn / 2) + ruleValue(site, 'fittingSocket'), 12);
  });

  it('comes into a pipe that goes on as a wye does, and at its end as it may', () => {
    const [last] = waysOn(straightDrain()).request.ends[0]?.headings ?? [];
    expect([last?.from, last?.to]).toEqual([-Math.PI / 2, Math.PI / 2]);
    const [into] =
      waysOn(straightDrain(), { to: { is: 'station', station: 15 } }).request.ends[0]?.headings ?? [];
    expect([into?.from, into?.to]).toEqual([-Math.PI / 4, Math.PI / 4]);
  });
});

describe('bad input', () => {
  it('of a pipe without length, or stations that leave nothing, has no request', () => {
    const site = straightDrain();
    const derived = derive(site);
    expect(requestOf(site, derived, asked(derived, { from: 20 }))).toMatchObject({ code: 'nothing-between' });
    expect(requestOf(site, derived, asked(derived, { path: 'gone' }))).toMatchObject({ code: 'no-line' });
    const nowhere = asked(derived, { to: { is: 'thing', feature: 'gone' } });
    expect(requestOf(site, derived, nowhere)).toMatchObject({ code: 'no-end' });
    expect(usualAsk(derive({ ...site, paths: [] }))).toBeNull();
  });
});
