// Ways over the samples, around a trunk, past a branch, bored. Outside of it: handbook ratios of offsets, IRC P3005.3, 29 CFR 1926 subpart P, AS 4970.
import { standsInTheWay, treeZones } from '@footmark/dig';
import type { Way } from '@footmark/reroute';
import { checkRoute } from '@footmark/route';
import { addDig, addPath, derive, openSite, type Path, ruleValue, writeSite } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { at, heldRoots, oldOn, only, SAMPLES, sample, straightDrain, TODAY, thing, waysOn } from './drain';

describe.each(SAMPLES)('the sample %s', (name) => {
  const site = sample(name);
  const { request, ways } = waysOn(site);

  it('has new routes that keep to all that is asked', () => {
    const routes = ways.flatMap((w) => w.route ?? []);
    expect(routes.length).toBeGreaterThan(0);
    for (const route of routes) expect(checkRoute(request, route)).toEqual([]);
  });

  it('tell of the branches that would hang in the air', () => {
    const joining = site.paths.filter((p) => p.vertices.at(-1)?.spot.by === 'at').map((p) => p.id);
    for (const way of only(ways, 'new')) expect(joining).toEqual(expect.arrayContaining([...way.branches]));
    for (const way of only(ways, 'repair')) expect(way.branches).toEqual([]);
  });

  it('has the old pipe beside them, dug up and from pits', () => {
    const [repair] = only(ways, 'repair');
    const [inPlace] = only(ways, 'in-place');
    expect(inPlace?.facts.dug.length ?? 9).toBeLessThan(repair?.facts.dug.length ?? 0);
    expect(inPlace?.facts.dug.length ?? 0).toBeLessThanOrEqual(2 * ruleValue(site, 'routePit') + 1e-9);
  });

  it('can be taken: the site with it opens again, and says the same of its pipe', () => {
    for (const way of only(ways, 'new')) {
      const path = { ...way.path, id: 'taken', name: 'New drain' };
      const digs = way.digs.map((dig, i) => ({
        ...dig,
        id: `t${i}`,
        ...(dig.is === 'trench' ? { path: 'taken' } : {}),
      }));
      const taken = digs.reduce((s, dig) => addDig(s, { dig }), addPath(site, { path }));
      const opened = openSite(writeSite(taken));
      if (!opened.ok) expect.fail(JSON.stringify(opened.failure));
      const on = derive(opened.site).paths.get('taken');
      expect(on?.length).toBeCloseTo(way.facts.length, 9);
      expect(on?.line.reducedBends).toEqual([]);
      expect(way.route?.cost.length).toBeCloseTo(way.facts.length, 6);
    }
  });
});

describe('what is said of a way', () => {
  const site = sample('rear-alley');
  const { ways } = waysOn(site);

  it.each(['repair', 'in-place', 'new'] as const)('%s: all that is said of its digs', (is) => {
    expect(only(ways, is).length).toBeGreaterThan(0);
    for (const way of only(ways, is)) {
      const dug = { ...site, digging: { ...site.digging, digs: [...way.digs] } };
      const tried = way.route === null ? dug : { ...dug, paths: [...site.paths, way.path] };
      const { findings } = standsInTheWay(tried, derive(tried), null, TODAY);
      const ofDigs = findings.filter(({ values }) => 'dig' in values);
      expect(ofDigs.length).toBeGreaterThan(0);
      expect(way.facts.findings.filter(({ values }) => 'dig' in values)).toEqual(ofDigs);
    }
  });

  it('has the sides, the way out and the tree of a deep trench in the old pipe', () => {
    const musts = (is: Way['is']) =>
      only(ways, is).flatMap((w) =>
        w.facts.findings.flatMap(({ severity, code }) => (severity === 'must' ? [code] : [])),
      );
    // 29 CFR 1926.652(a)(1)(ii) and .651(c)(2): deeper than 5 ft, and 4 ft
    const trench = ['protective-system-needed', 'egress-needed'];
    expect(musts('repair')).toEqual(expect.arrayContaining([...trench, 'dig-in-structural-roots']));
    expect(musts('in-place')).toEqual(expect.arrayContaining(trench));
  });

  it('has what all of its digs together take of a root zone, by AS 4970', () => {
    const bySet = { ...site, rules: { ...site.rules, trees: 'as-4970' as const } };
    const [repair] = only(oldOn(bySet), 'repair');
    const trees = repair?.facts.findings.flatMap(({ code, values }) =>
      code === 'major-encroachment' ? [values.tree] : [],
    );
    // more than a tenth, or into the roots that hold it up, is major (AS 4970-2009, 3.3.3; from memory)
    expect(trees?.length).toBeGreaterThan(0);
  });

  it('has nothing of where a pipe lies that lies there already', () => {
    for (const way of [...only(ways, 'repair'), ...only(ways, 'in-place')])
      expect(way.facts.findings.map(({ code }) => code).filter((c) => c.startsWith('path-'))).toEqual([]);
  });
});

describe('ways around a trunk on the pipe', () => {
  const oak = thing('oak', 'tree', [[0, 10]], { trunkDiameter: 0.3 });
  const site = straightDrain([oak]);
  const { ways, request } = waysOn(site, { treat: { 'roots/oak': { as: 'free' } } });

  it('cost no more than an offset by handbook ratios, on either side', () => {
    const aside = heldRoots(0.3) + ruleValue(site, 'bottomWidth') / 2 + request.diameter / 2;
    const news = only(ways, 'new');
    expect(news.length).toBeGreaterThanOrEqual(2);
    // 1/16, 1/8 and 1/16 bends around the trunk: travel is the offset × 2.61313, its run × 2.41421 (handbook ratios), there and back
    const offset = aside / Math.cos(Math.PI / 8);
    const known = 20 + 2 * offset * (2.61313 - 2.41421) + 3 * ruleValue(site, 'routeBend');
    for (const { route } of news) expect(route?.cost.total ?? 99).toBeLessThanOrEqual(known * 1.005);
    const middle = (way: Way) => {
      const xs = way.route?.points.map((p) => p.x) ?? [];
      return Math.sign(Math.max(...xs) + Math.min(...xs));
    };
    expect(new Set(news.map(middle))).toEqual(new Set([1, -1]));
  });

  it('are mirrored with the site', () => {
    const mirrored = waysOn(straightDrain([thing('oak', 'tree', [[0.4, 10]], { trunkDiameter: 0.3 })]));
    const other = waysOn(straightDrain([thing('oak', 'tree', [[-0.4, 10]], { trunkDiameter: 0.3 })]));
    const lengths = (w: readonly Way[]) => w.map((x) => x.facts.length.toFixed(6)).sort();
    expect(lengths(mirrored.ways)).toEqual(lengths(other.ways));
  });

  it('are left out when they cannot fall enough', () => {
    // 1/8 in per foot (IRC P3005.3) over 20 m is 0.208 m
    expect(waysOn(straightDrain([oak], 0.205)).found.is).not.toBe('found');
    expect(only(waysOn(straightDrain([oak], 0.205)).ways, 'new')).toEqual([]);
    expect(waysOn(straightDrain([oak], 0.205), { keepsGrade: false }).found.is).toBe('found');
    expect(waysOn(straightDrain([oak], 0.25)).found.is).toBe('found');
  });
});

describe('pits at the ends of a bore', () => {
  const bores = (trees: readonly (readonly [x: number, y: number, trunk: number])[]) => {
    const site = straightDrain(
      trees.map(([x, y, trunkDiameter], i) => thing(`oak${i}`, 'tree', [[x, y]], { trunkDiameter })),
    );
    const { ways } = waysOn(site, {
      treat: Object.fromEntries(trees.map((_, i) => [`roots/oak${i}`, { as: 'free' as const }])),
    });
    return { ways: only(ways, 'bored'), pit: ruleValue(site, 'routePit') };
  };
  const pieces = (way: Way) =>
    way.digs.flatMap((dig) => (dig.is === 'trench' ? [[dig.from, dig.to] as const] : []));

  it('are as long as the rule says where the roots reach past the end, on the inner side', () => {
    const { ways, pit } = bores([[2, 0, 0.3]]);
    const [way] = ways;
    if (way === undefined) throw new Error('no bore');
    expect(pieces(way)[0]).toEqual([0, expect.closeTo(pit, 9)]);
  });

  it('and trenches take the whole pipe with what is bored, each metre once', () => {
    for (const trees of [
      [[2, 0, 0.3]],
      [[2.7, 10, 0.3]],
      [[2, 20, 0.3]],
      [
        [1.5, 4, 0.2],
        [-1.5, 15, 0.2],
      ],
    ] as const) {
      const { ways } = bores(trees);
      expect(ways.length).toBeGreaterThan(0);
      for (const way of ways) {
        const all = [...pieces(way), ...way.bored.map((b) => [b.from, b.to] as const)].sort(
          (a, b) => a[0] - b[0],
        );
        expect(all[0]?.[0]).toBe(0);
        for (const [i, [from]] of all.entries()) if (i > 0) expect(from).toBe(all[i - 1]?.[1]);
        expect(all.at(-1)?.[1]).toBeCloseTo(way.facts.length, 9);
      }
    }
  });

  it('are no bore where they take up all of the roots', () => {
    const oak = straightDrain([thing('oak', 'tree', [[0, 0]], { trunkDiameter: 0.3 })]);
    const radius = treeZones(oak, derive(oak)).trees[0]?.chosen.radius ?? 0;
    const reaching = (along: number) => bores([[Math.sqrt(radius ** 2 - along ** 2), 0, 0.3]]);
    const { pit, ways } = reaching(3);
    expect(ways.map((way) => way.bored)).toEqual([
      [{ from: expect.closeTo(pit, 6), to: expect.closeTo(3, 6) }],
    ]);
    expect(reaching(pit - 0.3).ways).toEqual([]);
  });
});

describe('a branch of the piece that is replaced', () => {
  it('is told with every new pipe, and one past its end is not', () => {
    const site = straightDrain();
    const [old] = site.paths;
    if (old === undefined) throw new Error('no pipe');
    const middle = { id: 'm', spot: at(0, 12) };
    const main = { ...old, vertices: [...old.vertices.slice(0, 1), middle, ...old.vertices.slice(1)] };
    const branch: Path = {
      ...old,
      id: 'kitchen',
      vertices: [
        { id: 'a', spot: at(-5, 8) },
        { id: 'b', spot: { by: 'at', point: { of: 'p', at: 'm' } } },
      ],
    };
    const both = { ...site, paths: [main, branch] };
    expect(only(waysOn(both, { path: 'p' }).ways, 'new')[0]?.branches).toEqual(['kitchen']);
    expect(
      only(waysOn(both, { path: 'p', to: { is: 'station', station: 10 } }).ways, 'new')[0]?.branches,
    ).toEqual([]);
  });
});
