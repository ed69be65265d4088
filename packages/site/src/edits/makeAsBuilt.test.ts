import { describe, expect, it } from 'vitest';
import { findsBeside } from '../derive/asBuilt';
import { asBuiltTies } from '../derive/asBuiltTies';
import { derive } from '../derive/derive';
import type { AsFound } from '../document/asFound';
import { openSiteValue } from '../document/openSite';
import type { Path } from '../document/path';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { find, foundYard, given } from '../testing/foundYard';
import { pipe, ref, thing, typed } from '../testing/yard';
import { makeAsBuilt } from './makeAsBuilt';

function built(found: readonly AsFound[], path: Partial<Path> = {}, also: readonly string[] = []) {
  const site = foundYard(found, path);
  const after = makeAsBuilt(site, { path: 'p', id: 'built', name: 'As built', derived: derive(site), also });
  expect(openSiteValue(after).ok).toBe(true);
  const on = derive(after).paths.get('built');
  if (on === undefined) return expect.fail('the path has a curve');
  return { site, after, on };
}

const mark = (reading: string) => ({ is: 'mark', run: 'run', reading }) as const;
const giveAt = (x: number) => ({ ...given, at: { x, y: 0 }, ties: [] });

describe('an as-built pipe', () => {
  const depth = { to: 'top', depth: 1.1 } as const;
  const finds = [
    find({
      id: 'f3',
      about: mark('r3'),
      given: giveAt(16),
      where: { by: 'paint', along: 0.5, right: -0.4 },
    }),
    find({ id: 'f1', given, where: { by: 'paint', along: 0, right: 0.3 }, depth }),
  ];

  it('goes through what was found in the order of the stations, and stays on what it was drawn at', () => {
    const { on, after, site } = built(finds);
    expect(on.points.map(({ x, y }) => [Number(x.toFixed(6)), Number(y.toFixed(6))])).toEqual([
      [0, 0],
      [4, -0.3],
      [10, 0],
      [16.5, 0.4],
      [20, 0],
    ]);
    // found and tied points are measured, the middle is assumed: it is drawn dashed
    expect(on.measured).toEqual([true, true, false, true, true]);
    expect(on.path).toMatchObject({
      state: 'as-built',
      name: 'As built',
      stretches: site.paths[0]?.stretches,
    });
    expect(on.path.vertices[1]?.level).toEqual({ is: 'depth-to-top', depth: 1.1 });
    expect(on.path.vertices[3]).not.toHaveProperty('level');
    expect(after.paths[0]).toBe(site.paths[0]);
  });

  it('takes the latest of several finds of one mark, and one of two in the same place', () => {
    const again = find({
      id: 'f4',
      given,
      at: '2026-05-21T12:00:00-05:00',
      where: { by: 'paint', along: 0.2, right: 0.1 },
    });
    const twin = find({ id: 'f5', about: { is: 'place' }, where: { by: 'coordinates', x: 4.2, y: -0.1 } });
    const { on } = built([...finds.slice(1), again, twin], {}, ['f5']);
    expect(on.points.map((p) => p.x.toFixed(2))).toEqual(['0.00', '4.20', '10.00', '20.00']);
  });

  it('leaves out what was only painted or dug, what has no place, and what lies elsewhere', () => {
    const away = find({ id: 'f2', about: { is: 'place' }, where: { by: 'coordinates', x: 5, y: -6 } });
    const dug = find({ id: 'f5', state: 'dug', given, where: { by: 'paint', along: 0, right: 0 } });
    const { on } = built([away, dug, find({ id: 'f6', given })]);
    expect(on.points).toHaveLength(3);
  });

  it('goes through a find of no mark only when somebody says that it is of this pipe', () => {
    const beside = find({ id: 'f7', about: { is: 'place' }, where: { by: 'coordinates', x: 7, y: 0.4 } });
    const far = find({ id: 'f8', about: { is: 'place' }, where: { by: 'coordinates', x: 7, y: 1.4 } });
    expect(built([beside, far]).on.points).toHaveLength(3);
    const { on, site } = built([beside, far], {}, ['f7']);
    expect(on.points[1]).toEqual({ x: 7, y: 0.4 });
    const path = derive(site).paths.get('p');
    expect(path && findsBeside(derive(site), path).map((f) => f.record.id)).toEqual(['f7']);
  });

  it('keeps the tapes that found it, so that a corrected reference moves it', () => {
    const tapes = [
      { from: ref('p1'), distance: 5 },
      { from: ref('p2'), distance: 5 },
    ];
    const { on } = built([find({ id: 'f1', where: { by: 'tapes', tapes, side: 'right' } })]);
    expect(on.path.vertices[1]?.spot).toEqual({ by: 'tapes', tapes, side: 'right' });
  });

  it('leaves the references of a yard as good as they were, wherever that was put down by eye', () => {
    // nothing is in the site's frame: all is taped from a house that a finger put there
    const off = (along: number, out: number): Spot => ({
      by: 'offset',
      from: ref('house', 'a'),
      to: ref('house', 'b'),
      along,
      out,
    });
    const put: Site = {
      ...foundYard(),
      features: [
        thing('house', 'building', [
          { by: 'finger', x: 0, y: 10 },
          { by: 'course', azimuth: Math.PI / 2, distance: 20 },
          { by: 'course', azimuth: 0, distance: 8 },
        ]),
        thing('co', 'cleanout', [off(0, 10)]),
        thing('mh', 'manhole', [off(20, 10)]),
        thing('p1', 'reference-point', [off(0, 7)]),
        thing('p2', 'reference-point', [off(8, 7)]),
      ],
      paths: [
        pipe('p', [
          { by: 'at', point: ref('co') },
          { by: 'finger', x: 10, y: 0 },
          { by: 'finger', x: 20, y: 0 },
        ]),
      ],
      asFound: ['r1', 'r2', 'r3'].map((reading, i) =>
        find({
          id: `f${i}`,
          about: mark(reading),
          given: {
            ...given,
            at: { x: 4 + 6 * i, y: 0 },
            ties: given.ties.map((t) => ({
              ...t,
              distance: Math.hypot(3, t.from.of === 'p1' ? 4 + 6 * i : 4 - 6 * i),
            })),
          },
          where: { by: 'paint', along: 0.1, right: 0 },
        }),
      ),
    };
    const before = derive(put);
    expect(before.references.filter((r) => r.measured).map((r) => r.ref.of)).toContain('p1');
    const after = derive(makeAsBuilt(put, { path: 'p', id: 'built', name: '', derived: before }));
    expect(after.references.map((r) => [r.key, r.measured])).toEqual(
      before.references.map((r) => [r.key, r.measured]),
    );
    expect(after.paths.get('built')?.points.map((p) => Number(p.x.toFixed(6)))).toEqual([
      0, 4.1, 10.1, 16.1, 20,
    ]);
  });

  it('of a proposed pipe keeps its fittings where they were found, and no depth that nobody has seen', () => {
    const site = foundYard([
      find({
        id: 'f1',
        about: { is: 'set-out', path: 'new', number: 2 },
        given: { ...given, label: 'N-2', at: { x: 5, y: -3 }, ties: [] },
        where: { by: 'paint', along: 0.1, right: 0.05 },
      }),
    ]);
    const proposed = pipe(
      'new',
      [
        { spot: typed(0, -3), level: { is: 'invert', level: 2 } },
        { spot: typed(5, -3), bend: Math.PI / 4, bendRadius: 0.2, level: { is: 'invert', level: 1.9 } },
        { spot: typed(9, -7), level: { is: 'invert', level: 1.8 } },
      ],
      { state: 'proposed', name: 'New' },
    );
    const planned = { ...site, paths: [...site.paths, proposed] };
    const after = makeAsBuilt(planned, { path: 'new', id: 'built', name: '', derived: derive(planned) });
    const vertices = after.paths.find((p) => p.id === 'built')?.vertices;
    expect(vertices?.map(({ spot }) => spot.by)).toEqual(['finger', 'coordinates', 'finger']);
    expect(vertices?.[1]).toMatchObject({ id: 'b', bend: Math.PI / 4, bendRadius: 0.2 });
    expect(vertices?.every((v) => v.level === undefined)).toBe(true);
  });

  it('is of a path that the site has', () => {
    const site = foundYard();
    expect(() => makeAsBuilt(site, { path: 'gone', id: 'x', name: '', derived: derive(site) })).toThrow(
      'gone',
    );
  });

  it('is tied to what will still stand, not to trees', () => {
    const { after } = built(finds);
    const derived = derive(after);
    const ties = asBuiltTies(after, derived, 'built');
    expect(ties.map(({ measured }) => measured)).toEqual([true, true, false, true, true]);
    expect(ties[1]).toMatchObject({ vertex: expect.any(String), level: { is: 'depth-to-top' } });
    const from = ties.flatMap(({ ties: t }) =>
      t === null ? [] : [...t.pair, ...(t.check ? [t.check] : [])],
    );
    expect(from.length).toBeGreaterThan(6);
    for (const { from: reference } of from) expect(['t1', 'co']).not.toContain(reference.ref.of);
    // with every reference in reach the tree is among them
    const anything = derived.marks.flatMap(({ place }) => place?.ties?.pair.map((t) => t.from.ref.of) ?? []);
    expect(anything).toContain('t1');
    expect(asBuiltTies(after, derived, 'gone')).toEqual([]);
  });
});
