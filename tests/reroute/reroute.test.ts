// From a site to a request and back. Outside of it: handbook ratios of offsets, IRC P3005.3.
import { readFileSync } from 'node:fs';
import { standsInTheWay } from '@footmark/dig';
import {
  bendTable,
  checkPath,
  mindedOn,
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

const only = (ways: readonly Way[], is: Way['is']) => ways.filter((w) => w.is === is);

describe.each(SAMPLES)('the sample %s', (name) => {
  const site = sample(name);
  const { request, ways } = waysOn(site);

  it('has new routes that keep to all that is asked', () => {
    const routes = ways.flatMap((w) => w.route ?? []);
    expect(routes.length).toBeGreaterThan(0);
    for (const route of routes) expect(checkRoute(request, route)).toEqual([]);
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

  it.each(['repair', 'in-place', 'new', 'bored'] as const)('%s: all that is said of its digs', (is) => {
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

  it('has nothing of where a pipe lies that lies there already', () => {
    for (const way of [...only(ways, 'repair'), ...only(ways, 'in-place')])
      expect(way.facts.findings.map(({ code }) => code).filter((c) => c.startsWith('path-'))).toEqual([]);
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
    return checkPath(both, derive(both), 'drawn')?.map((fault) => fault.code);
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
    expect(priceOf(fresh, { pipe: 10, bend: 40 })).toBeCloseTo(10 * fresh.facts.length + 40 * bends, 9);
    // the old pipe from end to end without a trench, none of it new in the ground, no bend
    expect(priceOf(inPlace, { pipe: 10, bored: 90, bend: 40 })).toBeCloseTo(90 * 20, 9);
  });

  it('knows no price where an amount that has one is not known', () => {
    const [repair] = only(ways, 'repair');
    if (repair === undefined) throw new Error('no way');
    // without any level of the ground the trench has no depth
    expect(repair.facts.dug.volume).toBeNull();
    expect(priceOf(repair, { dug: 50 })).toBeNull();
    expect(priceOf(repair, { pipe: 10 })).not.toBeNull();
  });
});
