// From a site to a request and back. Outside of it: handbook ratios of offsets, IRC P3005.3.
import { readFileSync } from 'node:fs';
import { standsInTheWay, treeZones } from '@footmark/dig';
import {
  bendTable,
  checkPath,
  mindedOn,
  planWay,
  priceOf,
  type RerouteAsk,
  requestOf,
  usualAsk,
  type Way,
  waysOf,
} from '@footmark/reroute';
import { checkRoute, findRoutes } from '@footmark/route';
import {
  addDig,
  addPath,
  type Derived,
  derive,
  type Feature,
  newSite,
  openSite,
  type Path,
  profileAt,
  ruleValue,
  type Site,
  type Spot,
  writeSite,
} from '@footmark/site';
import { describe, expect, it } from 'vitest';

const TODAY = '2026-06-01';
const SAMPLES = ['front-terrace', 'rear-alley'] as const;

function sample(name: (typeof SAMPLES)[number]): Site {
  const opened = openSite(
    readFileSync(new URL(`../../packages/site/samples/${name}.json`, import.meta.url), 'utf8'),
  );
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return opened.site;
}

const at = (x: number, y: number): Spot => ({ by: 'coordinates', x, y });

function thing(
  id: string,
  kind: Feature['kind'],
  places: readonly (readonly [number, number])[],
  fields = {},
) {
  const vertices = places.map(([x, y], i) => ({ id: `v${i}`, spot: at(x, y) }));
  return { id, kind, name: '', vertices, fields } as Feature;
}

/** A pipe of 20 m to the north with levels at both ends, and things around it. */
function straightDrain(features: readonly Feature[] = [], fall = 0.4): Site {
  const path: Path = {
    id: 'p',
    name: 'Drain',
    state: 'existing',
    bendRadius: 0.2286,
    vertices: [
      { id: 'a', spot: at(0, 0), level: { is: 'invert', level: 10 } },
      { id: 'b', spot: at(0, 20), level: { is: 'invert', level: 10 - fall } },
    ],
    stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: 0.0104 }],
  };
  return {
    ...newSite({
      id: 's',
      name: '',
      createdAt: '2026-01-01T00:00:00Z',
      units: { length: 'ft', diameter: 'in', direction: 'bearing' },
    }),
    features: [...features],
    paths: [path],
  };
}

function asked(derived: Derived, change: Partial<RerouteAsk> = {}): RerouteAsk {
  const usual = usualAsk(derived);
  if (usual === null) throw new Error('no pipe');
  return { ...usual, ...change };
}

function stationsAsked(derived: Derived) {
  const { path, from } = asked(derived);
  return { path, from, to: derived.paths.get(path)?.length ?? 0 };
}

function waysOn(site: Site, change: Partial<RerouteAsk> = {}) {
  const derived = derive(site);
  const ask = asked(derived, change);
  const rerouting = requestOf(site, derived, ask);
  if (rerouting === null) throw new Error('no request');
  const found = findRoutes(rerouting.request);
  const routes = found.is === 'found' ? found.routes : [];
  return {
    found,
    request: rerouting.request,
    minded: rerouting.minded,
    ways: waysOf(site, derived, ask, rerouting, routes, TODAY),
  };
}

/** AS 4970-2009, 3.3.5: (D × 50)^0.42 × 0.64, at least 1.5 m; wider than three diameters for these trunks. */
const heldRoots = (diameter: number) => Math.max(1.5, (diameter * 50) ** 0.42 * 0.64);

/** Of the old pipe alone, without a search. */
function oldOn(site: Site, change: Partial<RerouteAsk> = {}) {
  const derived = derive(site);
  const ask = asked(derived, change);
  const rerouting = requestOf(site, derived, ask);
  if (rerouting === null) throw new Error('no request');
  return waysOf(site, derived, ask, rerouting, [], TODAY);
}

const only = (ways: readonly Way[], is: Way['is']) => ways.filter((w) => w.is === is);

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

describe('an old pipe of which a piece is replaced', () => {
  const ring = (id: string, kind: Feature['kind'], [low, high]: readonly [number, number]) =>
    thing(id, kind, [
      [-6, low],
      [6, low],
      [6, high],
      [-6, high],
    ]);
  const across = (id: string, y: number) =>
    thing(
      id,
      'service',
      [
        [-4, y],
        [4, y],
      ],
      { carries: 'gas' },
    );
  const site = straightDrain([
    ring('house', 'building', [-5, -2]),
    ring('lot', 'boundary', [-6, 10]),
    across('before', 3),
    across('within', 8),
    across('past', 15),
    thing(
      'slanted',
      'service',
      [
        [0.5, 0],
        [3, 20],
      ],
      { carries: 'telecom' },
    ),
    thing('oak', 'tree', [[-1, 12]], { trunkDiameter: 0.3 }),
  ]);
  const facts = (from: number, to: number | null) => {
    const ways = oldOn(site, { from, to });
    return ['repair', 'in-place'].map((is) => {
      const found = ways.find((w) => w.is === is);
      if (found === undefined) throw new Error(is);
      return found.facts;
    });
  };

  it('is told by that piece: its length, fall, what it crosses, whose land, roots', () => {
    const zone = treeZones(site, derive(site)).trees[0]?.chosen.radius ?? 0;
    for (const piece of facts(5, 12)) {
      expect(piece.length).toBeCloseTo(7, 9);
      // 1/8 in per foot of 4 in pipe (IRC P3005.3), and 0.4 m in 20 m as its levels say
      expect(piece.fall.required).toBeCloseTo(7 / 96, 4);
      expect(piece.fall.available).toBeCloseTo(0.4 * (7 / 20), 9);
      expect(piece.services).toEqual(['within']);
      expect(piece.others + piece.unknownLand).toBeCloseTo(2, 6);
      // half the chord of a circle 1 m off its middle
      expect(piece.trees.map((t) => t.length)).toEqual([expect.closeTo(Math.sqrt(zone ** 2 - 1), 6)]);
    }
    for (const whole of facts(0, null)) {
      expect(whole.length).toBeCloseTo(20, 9);
      expect(whole.services).toEqual(['before', 'within', 'past']);
    }
  });

  it('is as near to a thing as that piece comes', () => {
    const slanted = (of: ReturnType<typeof facts>) => of[0]?.nearest.find((n) => n.feature === 'slanted');
    const [piece, whole] = [slanted(facts(5, 12)), slanted(facts(0, null))];
    expect(piece?.station).toBeCloseTo(5, 3);
    // the line stands off by an eighth of a metre more for each metre north, seen square to it
    const square = Math.hypot(1, 1 / 8);
    expect(piece?.distance).toBeCloseTo((whole?.distance ?? 9) + (0.5 + 5 / 8) / square - 0.5, 6);
  });

  it.each(SAMPLES)('lies as deep as that piece does at its shallowest: %s, step by step', (name) => {
    const real = sample(name);
    const derived = derive(real);
    const { path, from, to } = stationsAsked(derived);
    const profile = derived.profiles.get(path);
    if (profile === undefined) throw new Error('no profile');
    const third = (to - from) / 3;
    for (const [a, b] of [
      [from, from + third],
      [from + third, to - third],
      [to - third, to],
    ] as const) {
      const [repair] = only(oldOn(real, { from: a, to: b }), 'repair');
      const steps = Array.from({ length: 4001 }, (_, i) => a + ((b - a) * i) / 4000);
      const covers = steps.flatMap((s) => profileAt(profile, s).cover?.depth ?? []);
      if (covers.length === 0) expect(repair?.facts.cover).toBeNull();
      else expect(repair?.facts.cover).toBeCloseTo(Math.min(...covers), 2);
    }
  });

  it('has the bends of that piece', () => {
    const [old] = site.paths;
    if (old === undefined) throw new Error('no pipe');
    const places = [
      [0, 0],
      [0, 3],
      [2, 5],
      [2, 10],
      [4, 12],
      [4, 20],
    ] as const;
    const vertices = places.map(([x, y], i) => ({ id: `v${i}`, spot: at(x, y) }));
    const bent = { ...site, features: [], paths: [{ ...old, vertices }] };
    const ways = oldOn(bent, { from: 7, to: 12 });
    const count = (is: Way['is']) => only(ways, is)[0]?.facts.bends.map((b) => [b.name, b.count]);
    expect(count('repair')).toEqual([['1/8', 1]]);
    const [whole] = only(oldOn(bent), 'repair');
    expect(whole?.facts.bends.map((b) => b.count)).toEqual([4]);
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

describe('a request', () => {
  it('keeps the trench out of the roots that hold a tree up, and lets the others cost', () => {
    const site = straightDrain([thing('oak', 'tree', [[0, 10]], { trunkDiameter: 0.4 })]);
    const minded = mindedOn(site, derive(site), { start: { x: 0, y: 0 }, end: { x: 0, y: 20 } });
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
    for (const { radius, turn, laying } of bendTable(site))
      expect(laying).toBeCloseTo(radius * Math.tan(turn / 2) + ruleValue(site, 'fittingSocket'), 12);
  });

  it('comes into a pipe that goes on as a wye does, and at its end as it may', () => {
    const [last] = waysOn(straightDrain()).request.ends[0]?.headings ?? [];
    expect([last?.from, last?.to]).toEqual([-Math.PI / 2, Math.PI / 2]);
    const [into] = waysOn(straightDrain(), { to: 15 }).request.ends[0]?.headings ?? [];
    expect([into?.from, into?.to]).toEqual([-Math.PI / 4, Math.PI / 4]);
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

describe('a pipe that is drawn', () => {
  const drawn = (places: readonly (readonly [number, number])[], features: readonly Feature[] = []) => {
    const site = straightDrain(features);
    const vertices = places.map(([x, y], i) => ({ id: `v${i}`, spot: at(x, y) }));
    const [old] = site.paths;
    if (old === undefined) throw new Error('no pipe');
    const path = { ...old, id: 'drawn', state: 'proposed', vertices } as const;
    const both = { ...site, paths: [old, path] };
    return checkPath(both, derive(both), 'drawn')?.faults.map((fault) => fault.code);
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

describe('bad input', () => {
  it('of a pipe without length, or stations that leave nothing, has no request', () => {
    const site = straightDrain();
    const derived = derive(site);
    expect(requestOf(site, derived, asked(derived, { from: 20 }))).toBeNull();
    expect(requestOf(site, derived, asked(derived, { path: 'gone' }))).toBeNull();
    expect(usualAsk(derive({ ...site, paths: [] }))).toBeNull();
  });
});

describe('a way that is taken', () => {
  let count = 0;
  const newId = (prefix: string) => `${prefix}-new-${count++}`;

  it('joins the old pipe where it comes back to it, and leaves its line as it was', () => {
    const site = straightDrain([thing('oak', 'tree', [[0, 8]], { trunkDiameter: 0.3 })]);
    const derived = derive(site);
    const { ways } = waysOn(site, { to: 16, keepsGrade: false });
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
    expect(only(waysOn(both, { path: 'p', to: 10 }).ways, 'new')[0]?.branches).toEqual([]);
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
    const missing = repair.facts.cleanouts.missing > 0 ? ['cleanout'] : [];
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
