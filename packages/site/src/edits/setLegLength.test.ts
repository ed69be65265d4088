import { distance } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import type { Feature } from '../document/feature';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { setLegLength } from './setLegLength';
import { newSite } from './siteEdits';

const east = Math.PI / 2;

function site(...spots: readonly Spot[]): Site {
  return outline('building', {}, ...spots);
}

function outline(
  kind: 'building' | 'boundary',
  facts: Pick<Feature, 'closing' | 'balance'>,
  ...spots: readonly Spot[]
): Site {
  const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
  const house = {
    id: 'h',
    kind,
    name: 'House',
    fields: {},
    ...facts,
    vertices: spots.map((spot, i) => ({ id: 'abcd'[i] ?? 'z', spot })),
  } as Feature; // a building with no fields
  return { ...newSite({ id: 's', name: 's', createdAt: '2026-01-01T00:00:00Z', units }), features: [house] };
}

const taped = site(
  { by: 'finger', x: 0, y: 0 },
  { by: 'course', azimuth: east, distance: 10 },
  { by: 'turn', turn: -east, distance: 6 },
  { by: 'turn', turn: -east, distance: 10 },
);
const drawn = site(
  { by: 'finger', x: 0, y: 0 },
  { by: 'finger', x: 10, y: 0 },
  { by: 'finger', x: 10, y: 6 },
  { by: 'finger', x: 0, y: 6 },
);
const corners = (of: Site) => derive(of).features.get('h')?.points ?? [];
const lengthTo = (of: Site, index: number) => {
  const points = corners(of);
  const [a, b] = [points.at(index - 1), points[index]];
  return a && b ? distance(a, b) : Number.NaN;
};

function change(of: Site, end: string, to: number, keeps: 'start' | 'end'): Site {
  const done = setLegLength(of, { of: 'h', end, distance: to, keeps, places: derive(of).points });
  if (!done.ok) throw new Error(done.code);
  return done.site;
}

describe('setLegLength', () => {
  it('changes a measured wall where it was measured, and what is counted from it follows', () => {
    const longer = change(taped, 'b', 12, 'start');
    expect(longer.features[0]?.vertices[1]?.spot).toEqual({ by: 'course', azimuth: east, distance: 12 });
    expect(corners(longer)[2]?.x).toBeCloseTo(12, 9);
    expect(lengthTo(longer, 2)).toBeCloseTo(6, 9);
  });

  it('keeps the end: only the start moves, along the wall', () => {
    const longer = change(taped, 'c', 8, 'end');
    expect(lengthTo(longer, 2)).toBeCloseTo(8, 9);
    expect(corners(longer)[1]).toEqual({ x: expect.closeTo(10, 9), y: expect.closeTo(-2, 9) });
    for (const i of [0, 2, 3]) {
      expect(
        distance(corners(longer)[i] ?? { x: 9, y: 9 }, corners(taped)[i] ?? { x: 0, y: 0 }),
      ).toBeLessThan(1e-9);
    }
  });

  it('moves corners that were drawn by eye, the closing side too', () => {
    expect(corners(change(drawn, 'b', 12, 'start'))[1]).toEqual({
      x: expect.closeTo(12, 9),
      y: expect.closeTo(0, 9),
    });
    const closing = change(drawn, 'a', 7, 'start');
    expect(lengthTo(closing, 0)).toBeCloseTo(7, 9);
    expect(corners(closing)[0]?.y).toBeCloseTo(-1, 9);
  });

  it('refuses, with the reason, what measurements hold', () => {
    const places = derive(taped).points;
    expect(setLegLength(taped, { of: 'h', end: 'a', distance: 7, keeps: 'start', places })).toEqual({
      ok: false,
      code: 'closes',
    });
    const tied = site(
      { by: 'finger', x: 0, y: 0 },
      { by: 'finger', x: 10, y: 0 },
      { by: 'between', from: { of: 'h', at: 'a' }, to: { of: 'h', at: 'b' }, fraction: 0.5 },
    );
    const args = { of: 'h', end: 'c', distance: 3, keeps: 'start', places: derive(tied).points } as const;
    expect(setLegLength(tied, args)).toEqual({ ok: false, code: 'held' });
  });

  it('of a side behind a curve, keeping its end, leaves the curve a curve', () => {
    // b (0, 10) to c (20, 10) is half a turn of R 10 m
    const lot = site(
      { by: 'finger', x: 0, y: 0 },
      { by: 'finger', x: 0, y: 10 },
      { by: 'arc', radius: 10, sweep: 2 * east, chord: east },
      { by: 'turn', turn: 0, distance: 10 },
    );
    const shorter = change(lot, 'd', 8, 'end');
    expect(corners(shorter)[2]).toEqual({ x: expect.closeTo(20, 9), y: expect.closeTo(8, 9) });
    expect(corners(shorter)[3]).toEqual({ x: expect.closeTo(20, 9), y: expect.closeTo(0, 9) });
    expect(derive(shorter).features.get('h')?.sweeps).toEqual([0, 2 * east, 0]);
  });

  it('of the closing course is its measured length; of a closing curve there is none', () => {
    const places = derive(taped).points;
    const course = { by: 'course', azimuth: 2 * east, distance: 6 } as const;
    const spots = taped.features[0]?.vertices.map((v) => v.spot) ?? [];
    const closed = outline('boundary', { closing: course }, ...spots);
    const longer = change(closed, 'a', 6.25, 'start');
    expect(longer.features[0]?.closing).toEqual({ ...course, distance: 6.25 });
    expect(corners(longer)).toEqual(corners(closed));
    expect(derive(longer).features.get('h')?.closure?.length).toBeCloseTo(0.25, 9);
    const curve = { by: 'arc', radius: 3, sweep: 2 * east, chord: 2 * east } as const;
    for (const keeps of ['start', 'end'] as const) {
      const args = { of: 'h', end: 'a', distance: 7, keeps, places };
      expect(setLegLength(outline('boundary', { closing: curve }, ...spots), args)).toEqual({
        ok: false,
        code: 'curve',
      });
    }
  });

  it('is refused where the sides are balanced, as one would move all corners', () => {
    const closing = { by: 'course', azimuth: 2 * east, distance: 6.3 } as const;
    const spots = taped.features[0]?.vertices.map((v) => v.spot) ?? [];
    const lot = outline('boundary', { closing, balance: 'compass' }, ...spots);
    for (const end of ['a', 'c']) {
      for (const keeps of ['start', 'end'] as const) {
        const args = { of: 'h', end, distance: 7, keeps, places: derive(lot).points };
        expect(setLegLength(lot, args)).toEqual({ ok: false, code: 'balanced' });
      }
    }
  });
});
