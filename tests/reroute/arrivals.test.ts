// Where a new pipe may arrive. By hand on plane figures; that a branch comes in with the flow by a wye of 45 degrees: IRC Table P3005.1.
import { AT_ITS_END, allowing, arrivalsOn, planWay, requestOf } from '@footmark/reroute';
import { checkRoute, findRoutes } from '@footmark/route';
import { derive, type Path, ruleValue, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { asked, at, only, straightDrain, thing, waysOn } from './drain';

/** A second pipe that runs to the north 10 m to the right of the first, and falls from 9.8 m by 1 in 50. */
const other: Path = {
  id: 'q',
  name: 'Other',
  state: 'existing',
  bendRadius: 0.2286,
  vertices: [
    { id: 'a', spot: at(10, -5), level: { is: 'invert', level: 9.8 } },
    { id: 'b', spot: at(10, 45), level: { is: 'invert', level: 8.8 } },
  ],
  stretches: [{ from: 0, material: 'plastic', diameter: 0.1, slope: 0.02 }],
};

const withOther = (site: Site): Site => ({ ...site, paths: [...site.paths, other] });

describe('anywhere on another pipe', () => {
  const site = withOther(straightDrain([], 0.3));
  const derived = derive(site);
  const to = { is: 'pipe', path: 'q', past: 0 } as const;
  const { found, request, ways } = waysOn(site, { to, from: 2 });
  const [way] = only(ways, 'new');
  const last = way?.route?.points.at(-1) ?? { x: NaN, y: NaN };

  it('a route comes in with the flow, where it is cheapest', () => {
    expect(found.is).toBe('found');
    expect(last.x).toBeCloseTo(10, 9);
    const before = way?.route?.points.at(-2) ?? last;
    const heading = Math.atan2(last.x - before.x, last.y - before.y);
    expect(Math.abs(heading)).toBeLessThanOrEqual(Math.PI / 4 + 1e-9);
    if (found.is === 'found')
      for (const route of found.routes) expect(checkRoute(request, route)).toEqual([]);
  });

  it('it ends at the level that the pipe has at just that place', () => {
    const level = way?.path.vertices.at(-1)?.level;
    expect(level?.is === 'invert' ? level.level : NaN).toBeCloseTo(9.8 - (last.y + 5) / 50, 9);
  });

  it('taken, it joins that pipe, which gets a point there and stays as it is', () => {
    if (way === undefined) throw new Error('no way');
    let n = 0;
    const planned = planWay(site, derived, way, { asked: 'p', newId: (p) => `${p}${++n}x`, name: 'New' });
    const after = derive(planned);
    const taken = planned.paths.find((p) => p.name === 'New');
    expect(after.paths.get(taken?.id ?? '')?.joins?.path).toBe('q');
    expect(after.paths.get('q')?.length).toBeCloseTo(50, 9);
    expect(planned.paths.find((p) => p.id === 'q')?.vertices).toHaveLength(3);
  });

  it('no piece of the pipe that lies higher than the start is arrived at', () => {
    // the other begins 0.2 m below the start; with a start that is 0.5 m lower only what lies below 9.5 m will do: past y 10
    const low = requestOf(site, derived, { ...asked(derived), to, otherwise: { startInvert: 9.5 } });
    if (!low.ok) throw new Error(low.code);
    const routes = findRoutes(low.value.request);
    if (routes.is !== 'found') throw new Error(routes.is);
    for (const { points } of routes.routes) expect(points.at(-1)?.y).toBeGreaterThan(10);
  });
});

describe('at a thing', () => {
  it('that stands on no pipe a route comes in from any side, at its own invert', () => {
    const site = straightDrain([thing('t', 'tap', [[8, 12]], { invert: 9.4 })]);
    const to = { is: 'thing', feature: 't' } as const;
    const { request, ways } = waysOn(site, { to, from: 2 });
    expect(request.ends).toMatchObject([{ at: { x: 8, y: 12 }, headings: null, invert: 9.4 }]);
    const [way] = only(ways, 'new');
    expect(way?.onto).toBeNull();
    expect(way?.path.vertices.at(-1)?.spot).toEqual({ by: 'at', point: { of: 't', at: 'v0' } });
  });

  it('that stands on a pipe it comes in as into that', () => {
    const site = withOther(straightDrain([thing('co', 'cleanout', [[10, 20]])]));
    const { request } = waysOn(site, { to: { is: 'thing', feature: 'co' } });
    const [end] = request.ends;
    expect(end?.headings?.[0]?.to).toBeCloseTo(Math.PI / 4, 12);
    expect(end?.invert).toBeCloseTo(9.8 - 25 / 50, 9);
  });
});

it('things and pipes of the site are offered, the old one past what was seen in it', () => {
  const site = withOther(straightDrain([thing('t', 'tap', [[8, 12]]), thing('oak', 'tree', [[0, 10]])]));
  expect(arrivalsOn(derive(site), 'p')).toEqual([
    { is: 'thing', feature: 't' },
    { is: 'pipe', path: 'p', past: 0 },
    { is: 'pipe', path: 'q', past: 0 },
  ]);
});

describe('asked otherwise than the rules say', () => {
  const site = straightDrain();
  const derived = derive(site);
  const requested = (ask: ReturnType<typeof asked>) => {
    const made = requestOf(site, derived, ask);
    if (!made.ok) throw new Error(made.code);
    return made.value.request;
  };

  it('a request takes what is said, and the rest from the site', () => {
    const request = requested(
      asked(derived, {
        otherwise: { startInvert: 3, endInvert: 2, mostBends: 9, leastStraight: 0.5, anyHeading: true },
      }),
    );
    expect(request.start.invert).toBe(3);
    expect(request.ends[0]).toMatchObject({ invert: 2, headings: null });
    expect([request.mostBends, request.leastStraight]).toEqual([9, 0.5]);
    expect(requested(asked(derived)).mostBends).toBe(ruleValue(site, 'routeBends'));
  });

  it('every change that opens a way can be asked for, but through what must stand', () => {
    const yard = straightDrain([
      thing('h', 'building', [
        [5, 5],
        [8, 5],
        [8, 8],
      ]),
      thing('f', 'hedge', [
        [1, 1],
        [2, 2],
      ]),
    ]);
    const ask = asked(derived);
    expect(allowing(ask, { is: 'less-clearance', obstacle: 'h', from: 2, to: 1 }, yard)?.treat).toEqual({
      h: { as: 'clear', clearance: 1 },
    });
    expect(allowing(ask, { is: 'through', obstacle: 'h' }, yard)).toBeNull();
    expect(allowing(ask, { is: 'through', obstacle: 'f' }, yard)?.treat).toEqual({ f: { as: 'free' } });
    const eased = [
      { is: 'less-fall', from: 0.02, to: 0.01 },
      { is: 'any-heading', end: 'end' },
      { is: 'more-bends', from: 6, to: 8 },
      { is: 'no-straight', from: 0.1 },
    ] as const;
    const all = eased.reduce((a, change) => allowing(a, change, yard) ?? a, ask);
    expect(all.otherwise).toEqual({ leastFall: 0.01, anyHeading: true, mostBends: 8, leastStraight: 0 });
    const request = requested(all);
    expect(request.grade).toEqual({ least: 0.01, kept: true });
    expect([request.mostBends, request.leastStraight, request.ends[0]?.headings]).toEqual([8, 0, null]);
    expect(all.to).toBe(AT_ITS_END);
  });
});
