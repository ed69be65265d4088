import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { openSite, writeSite } from '../document/openSite';
import type { Site } from '../document/site';
import { copyThings, isSelfContained, pasteThings } from './copyThings';
import { newSite } from './siteEdits';

const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
const empty = (id: string) => newSite({ id, name: id, createdAt: '2026-01-01T00:00:00Z', units });

const yard: Site = {
  ...empty('s1'),
  features: [
    {
      id: 'pole',
      kind: 'pole',
      name: 'Pole',
      fields: {},
      vertices: [{ id: 'a', spot: { by: 'coordinates', x: 0, y: 0 } }],
    },
    {
      id: 'nail',
      kind: 'reference-point',
      name: 'Nail',
      fields: {},
      vertices: [{ id: 'a', spot: { by: 'coordinates', x: 10, y: 0 } }],
    },
    {
      id: 'tree',
      kind: 'tree',
      name: 'Lime',
      fields: {},
      vertices: [
        {
          id: 'a',
          spot: {
            by: 'tapes',
            tapes: [
              { from: { of: 'pole', at: 'a' }, distance: 6 },
              { from: { of: 'nail', at: 'a' }, distance: 8 },
            ],
            side: 'left',
          },
        },
      ],
    },
  ],
};
const placeOf = (site: Site, id: string) => derive(site).features.get(id)?.points[0];

describe('copyThings and pasteThings', () => {
  const { points } = derive(yard);

  it('keep measurements among the things that go along', () => {
    const things = copyThings(yard, ['pole', 'nail', 'tree'], points);
    const ids = new Map([
      ['pole', 'p2'],
      ['nail', 'n2'],
      ['tree', 't2'],
    ]);
    const into = pasteThings(yard, { things, ids, by: { x: 100, y: -50 } });
    expect(placeOf(into, 't2')?.x).toBeCloseTo(103.6, 9); // 6 and 8 over 10: (3.6, 4.8), by Pythagoras
    expect(placeOf(into, 't2')?.y).toBeCloseTo(-45.2, 9);
    expect(into.features.at(-1)?.vertices[0]?.spot.by).toBe('tapes');
    expect(openSite(writeSite(into)).ok).toBe(true);
  });

  it('turn a measurement from what stays behind into the place where the point is', () => {
    const things = copyThings(yard, ['tree', 'pole'], points);
    expect(isSelfContained(things)).toBe(true);
    const other = pasteThings(empty('s2'), {
      things,
      ids: new Map([
        ['tree', 't2'],
        ['pole', 'p2'],
      ]),
      by: { x: 0, y: 0 },
    });
    expect(placeOf(other, 't2')?.x).toBeCloseTo(3.6, 9);
    expect(other.features.at(-1)?.vertices[0]?.spot.by).toBe('finger');
    expect(openSite(writeSite(other)).ok).toBe(true);
  });

  it('give a copy a name of its own where its name is taken, so that a tie names one thing', () => {
    const things = copyThings(yard, ['pole'], points);
    const put = (site: Site, id: string) =>
      pasteThings(site, { things, ids: new Map([['pole', id]]), by: { x: 1, y: 1 } });
    const names = (site: Site) => site.features.map((f) => f.name);
    expect(names(put(put(yard, 'p2'), 'p3'))).toEqual(['Pole', 'Nail', 'Lime', 'Pole 2', 'Pole 3']);
    expect(names(put(empty('s2'), 'p2'))).toEqual(['Pole']);
    // a copy of 'Pole 2' goes on counting
    const second = { ...things, features: things.features.map((f) => ({ ...f, name: 'Pole 2' })) };
    const taken = pasteThings(put(yard, 'p2'), {
      things: second,
      ids: new Map([['pole', 'p3']]),
      by: { x: 0, y: 0 },
    });
    expect(names(taken).at(-1)).toBe('Pole 3');
    // no name is no name
    const unnamed = { ...things, features: things.features.map((f) => ({ ...f, name: '' })) };
    expect(
      names(pasteThings(yard, { things: unnamed, ids: new Map([['pole', 'p4']]), by: { x: 0, y: 0 } })).at(
        -1,
      ),
    ).toBe('');
  });

  it('do not accept a thing that points out of them, nor one without a new id', () => {
    expect(isSelfContained({ features: yard.features.slice(2), paths: [] })).toBe(false);
    expect(() =>
      pasteThings(yard, {
        things: { features: yard.features.slice(0, 1), paths: [] },
        ids: new Map(),
        by: { x: 0, y: 0 },
      }),
    ).toThrow('pole');
  });
});
