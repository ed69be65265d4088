// What the depth of a pipe does to a request. 29 CFR 1926 subpart P appendix B: soil C is cut back 1 1/2 across for 1 down, B 1 to 1, and trenches ask for
// a protective system from 5 ft. Radii of long sweeps: ASTM A74 tables 3 and 8 (from memory).
import { bendTable, mindedBy, requestOf, sidesFor } from '@footmark/reroute';
import { findRoutes } from '@footmark/route';
import { derive, type Feature, ruleValue, type Site, wallShares } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { asked, straightDrain, thing } from './drain';

const FOOT_M = 0.3048;

/** A drain 20 m to the north as deep as that all along, in an even yard; the lot's side is `aside` metres to the right. */
function deep(depth: number, more: readonly Feature[] = []): Site {
  const level = { is: 'invert', level: 10 } as const;
  const ground = (id: string, y: number) => thing(id, 'spot-level', [[0, y]], { level: 10 + depth });
  const site = straightDrain([ground('g1', 0), ground('g2', 20), ...more], 0.4);
  return {
    ...site,
    paths: site.paths.map((p) => ({
      ...p,
      vertices: p.vertices.map((v, i) => ({ ...v, level: i === 0 ? level : { ...level, level: 9.6 } })),
    })),
  };
}

const withSoil = (
  site: Site,
  soil: Site['digging']['soil'],
  protection: Site['digging']['protection'] = 'slope',
) => ({
  ...site,
  digging: { ...site.digging, soil, protection, disturbed: true },
});

describe('a deep trench', () => {
  const costs = (site: Site) => {
    const made = requestOf(site, derive(site), asked(derive(site)));
    if (!made.ok) throw new Error(made.code);
    return made.value.request.bends.map((b) => b.cost);
  };

  it('makes each metre dearer, so that bends count for fewer', () => {
    const [shallow] = costs(deep(0.8));
    const [wholly] = costs(deep(2.2));
    expect(shallow).toBe(ruleValue(straightDrain(), 'routeBend'));
    expect(shallow).toBeCloseTo((wholly ?? 0) * (1 + ruleValue(straightDrain(), 'routeDeep')), 9);
  });

  it('does so by the share of the way that needs protection', () => {
    // by hand: the bottom is 4 in below the invert, and the depth goes evenly from 1.3 m to 1.7 m (the pipe falls 0.4 m)
    const limit = 5 * FOOT_M - 4 * 0.0254;
    const share = (1.7 - limit) / 0.4;
    const [bend] = costs(deep(1.3));
    expect(bend).toBeCloseTo((2 * FOOT_M) / (1 + share), 6);
  });
});

describe('beside a boundary', () => {
  const side = thing('side', 'boundary-line', [
    [4, -200],
    [4, 200],
  ]);
  const clearance = (site: Site) => {
    const usual = mindedBy(site, derive(site), asked(derive(site))).find((m) => m.id === 'side')?.usual;
    return usual?.as === 'clear' ? usual.clearance : null;
  };
  const site = deep(1.6, [side]);
  // 2.0 m to the invert at the deeper end, 4 in of bedding, and half of 24 in
  const reach = (slope: number) =>
    12 * 0.0254 + slope * (2 + 4 * 0.0254) - (0.1 / 2) * (1 + 2 * wallShares.plastic.value);

  it('a pipe keeps off as far as its trench is cut back', () => {
    expect(clearance(withSoil(site, 'c'))).toBeCloseTo(reach(1.5), 6);
    expect(clearance(withSoil(site, 'b'))).toBeCloseTo(reach(1), 6);
  });

  it('it keeps as far off as the bottom of its trench is wide in a shield, and the rule’s distance where nobody has said what the soil is', () => {
    expect(clearance(withSoil(site, 'c', 'shield'))).toBeCloseTo(reach(0), 9);
    expect(clearance(site)).toBe(ruleValue(site, 'propertyLine'));
  });

  it('a change that brings it nearer says how the sides are kept then', () => {
    const c = withSoil(site, 'c');
    const near = (to: number) =>
      sidesFor(c, derive(c), asked(derive(c)), {
        is: 'less-clearance',
        obstacle: 'side',
        from: reach(1.5),
        to,
      });
    expect(near(reach(1))).toBeCloseTo(1, 6);
    expect(near(0.1)).toBe(0);
    expect(near(reach(1.6))).toBeNull();
  });

  it('where it has no room the smallest change that opens a way is steeper sides', () => {
    const wall = thing('wall', 'building', [
      [-200, 8],
      [1.6, 8],
      [1.6, 9],
      [-200, 9],
    ]);
    const tight = withSoil(deep(1.6, [side, wall]), 'c');
    const ask = asked(derive(tight), { from: 0, to: { is: 'station', station: 18 } });
    const made = requestOf(tight, derive(tight), ask);
    if (!made.ok) throw new Error(made.code);
    const found = findRoutes(made.value.request);
    if (found.is !== 'none') throw new Error(found.is);
    const [change] = found.relaxations.flatMap((r) =>
      r.change.is === 'less-clearance' && r.change.obstacle === 'side' ? [r.change] : [],
    );
    if (change === undefined) throw new Error(JSON.stringify(found.relaxations.map((r) => r.change)));
    const slope = sidesFor(tight, derive(tight), ask, change);
    expect(slope).toBeGreaterThan(0);
    expect(slope).toBeLessThan(1.5);
  });
});

describe('bends', () => {
  const site = straightDrain();
  it.each([
    [3, 8.5],
    [4, 9],
    [6, 10],
  ])('of %d in are as wide as a long sweep of that size, %d in', (size, radius) => {
    for (const bend of bendTable(site, size * 0.0254)) expect(bend.radius).toBeCloseTo(radius * 0.0254, 12);
  });

  it('that are left out are not laid, and a longer socket makes all longer', () => {
    const names = bendTable(site, 0.1, { withoutBends: ['1/6', '1/4'] }).map((b) => b.id);
    expect(names).toEqual(['1/16', '1/8']);
    const [a, b] = [bendTable(site, 0.1), bendTable(site, 0.1, { socket: 0.2 })].map(
      (t) => t[0]?.laying ?? 0,
    );
    expect((b ?? 0) - (a ?? 0)).toBeCloseTo(0.2 - ruleValue(site, 'fittingSocket'), 12);
  });
});
