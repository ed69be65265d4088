// A pipe that is drawn or planned, as a route. Outside of it: the formula of AS 4970, turns by hand.
import { checkPath, planWay } from '@footmark/reroute';
import { derive, type Feature, openSite, writeSite } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { at, heldRoots, only, straightDrain, thing, waysOn } from './drain';

describe('a pipe that is drawn', () => {
  const drawn = (places: readonly (readonly [number, number])[], features: readonly Feature[] = []) => {
    const site = straightDrain(features);
    const vertices = places.map(([x, y], i) => ({ id: `v${i}`, spot: at(x, y) }));
    const [old] = site.paths;
    if (old === undefined) throw new Error('no pipe');
    const path = { ...old, id: 'drawn', state: 'proposed', vertices } as const;
    const both = { ...site, paths: [old, path] };
    const check = checkPath(both, derive(both), 'drawn');
    // its ends have no levels
    expect(check?.fallJudged).toBe(false);
    return check?.faults.map((fault) => fault.code);
  };

  it('is sound with turns of 45 degrees a foot apart, and not with one of 38 or with no room', () => {
    expect(
      drawn([
        [0, 0],
        [0, 5],
        [3, 8],
        [3, 15],
      ]),
    ).toEqual([]);
    const slanted = (degrees: number) => 5 + 3 / Math.tan((degrees * Math.PI) / 180);
    expect(
      drawn([
        [0, 0],
        [0, 5],
        [3, slanted(38)],
        [3, 15],
      ]),
    ).toEqual(['wrong-turn', 'wrong-turn']);
    expect(
      drawn([
        [0, 0],
        [0, 5],
        [0.2, 5.2],
        [0.2, 15],
      ]),
    ).toEqual(['short-leg']);
  });

  it('is judged by its fall where the levels of both its ends are known', () => {
    // 1/8 in per foot (IRC P3005.3) over 20 m is 0.208 m
    const check = (fall: number) => {
      const site = straightDrain([], fall);
      return checkPath(site, derive(site), 'p');
    };
    expect(check(0.25)).toEqual({ faults: [], fallJudged: true });
    expect(check(0.205)?.faults.map((fault) => fault.code)).toEqual(['too-little-fall']);
    const [old] = straightDrain().paths;
    const open = {
      ...straightDrain(),
      paths: old ? [{ ...old, vertices: old.vertices.map((v) => ({ id: v.id, spot: v.spot })) }] : [],
    };
    expect(checkPath(open, derive(open), 'p')).toEqual({ faults: [], fallJudged: false });
  });

  it('is told when its trench comes into the roots that hold a tree up', () => {
    const oak = (x: number) => thing('oak', 'tree', [[x, 10]], { trunkDiameter: 0.3 });
    // half of a trench's bottom of 24 in and of a pipe of 0.13 m beside those roots
    const least = heldRoots(0.3) + 0.3048 + 0.065;
    const straight = [
      [0, 0],
      [0, 20],
    ] as const;
    expect(drawn(straight, [oak(least + 0.01)])).toEqual([]);
    expect(drawn(straight, [oak(least - 0.01)])).toEqual(['too-near']);
  });
});

describe('a planned pipe', () => {
  it('is improved from its own ends, beside what it takes as it is drawn', () => {
    const site = straightDrain();
    const vertices = [
      { id: 'a', spot: at(0, 0) },
      { id: 'b', spot: at(0, 4) },
      { id: 'c', spot: at(4, 8) },
      { id: 'd', spot: at(4, 20) },
    ];
    const [old] = site.paths;
    if (old === undefined) throw new Error('no pipe');
    const planned = { ...site, paths: [old, { ...old, id: 'plan', state: 'proposed' as const, vertices }] };
    const { ways } = waysOn(planned, { path: 'plan', keepsGrade: false });
    expect(ways.map((w) => w.is)).toContain('drawn');
    expect(only(ways, 'repair')).toEqual([]);
    const [best] = only(ways, 'new');
    const [drawn] = only(ways, 'drawn');
    // straight on, then one bend: shorter than two of 45
    expect(best?.facts.length ?? 99).toBeLessThan(drawn?.facts.length ?? 0);
    expect(best?.path.vertices.every((v) => v.spot.by === 'coordinates')).toBe(true);
  });
});

describe('a way that is taken', () => {
  let count = 0;
  const newId = (prefix: string) => `${prefix}-new-${count++}`;

  it('joins the old pipe where it comes back to it, and leaves its line as it was', () => {
    const site = straightDrain([thing('oak', 'tree', [[0, 8]], { trunkDiameter: 0.3 })]);
    const derived = derive(site);
    const { ways } = waysOn(site, { to: { is: 'station', station: 16 }, keepsGrade: false });
    const [way] = only(ways, 'new');
    if (way === undefined) throw new Error('no way');
    const taken = planWay(site, derived, way, { asked: 'p', newId, name: 'New drain' });
    const opened = openSite(writeSite(taken));
    if (!opened.ok) expect.fail(JSON.stringify(opened.failure));
    const after = derive(opened.site);
    const fresh = [...after.paths.values()].find(({ path }) => path.name === 'New drain');
    expect(fresh?.joins).toMatchObject({ path: 'p' });
    expect(fresh?.joins?.station).toBeCloseTo(16, 6);
    expect(after.paths.get('p')?.length).toBeCloseTo(20, 9);
    expect(opened.site.digging.digs).toHaveLength(1);
  });
});
