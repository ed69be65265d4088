import { azimuthBetween, distance, signedAngle } from '@footmark/geometry';
import { derive, type Feature, newSite, type Site, type Spot, setLegLength } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { lengthAcross, wallAcross } from './squareWalls';

const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
const quarter = Math.PI / 2;

function withHouse(spots: readonly Spot[]): Site {
  const vertices = spots.map((spot, i) => ({ id: 'abcd'[i] ?? 'z', spot }));
  const house = { id: 'h', kind: 'building', name: 'House', fields: {}, vertices } as Feature; // a building with no fields
  return { ...newSite({ id: 's', name: 's', createdAt: '2026-01-01T00:00:00Z', units }), features: [house] };
}

const taped = withHouse([
  { by: 'finger', x: 0, y: 0 },
  { by: 'course', azimuth: quarter, distance: 10 },
  { by: 'turn', turn: -quarter, distance: 6 },
  { by: 'turn', turn: -quarter, distance: 10 },
]);
const drawn = withHouse(
  [
    [0, 0],
    [10, 0],
    [10, 6],
    [0, 6],
  ].map(([x = 0, y = 0]) => ({ by: 'finger', x, y })),
);

describe.each([
  ['taped', taped],
  ['drawn', drawn],
])('the wall across of a %s rectangle', (_, site) => {
  it.each(
    ['b', 'c', 'd', 'a'].flatMap((end) => (['start', 'end'] as const).map((keeps) => [end, keeps] as const)),
  )('follows the wall that ends at %s, its %s kept', (end, keeps) => {
    const [owner] = site.features;
    const vertex = owner?.vertices.find((v) => v.id === end);
    if (owner === undefined || vertex === undefined) throw new Error('no house');
    const places = derive(site).points;
    const across = wallAcross(owner, vertex, places);
    const first = setLegLength(site, { of: 'h', end, distance: 8, keeps, places });
    if (!first.ok) return expect(first.code).toBe('closes');
    const done = across && lengthAcross(first.site, owner, across, 8, keeps);
    if (!done?.ok) throw new Error(done?.code ?? 'no wall across');
    const corners = derive(done.site).features.get('h')?.points ?? [];
    for (const [i, b] of corners.entries()) {
      const [a, c] = [corners.at(i - 1) ?? b, corners[(i + 1) % 4] ?? b];
      expect(Math.abs(signedAngle(azimuthBetween(b, c) - azimuthBetween(a, b)))).toBeCloseTo(quarter, 9);
    }
    const index = 'abcd'.indexOf(end);
    const [from, to] = [corners.at(index - 1), corners[index]];
    return expect(from && to && distance(from, to)).toBeCloseTo(8, 9);
  });
});

it('there is none in an outline that is not a rectangle', () => {
  const skew = withHouse(
    [
      [0, 0],
      [10, 1],
      [10, 6],
      [0, 6],
    ].map(([x = 0, y = 0]) => ({ by: 'finger', x, y })),
  );
  const [owner] = skew.features;
  const first = owner?.vertices[0];
  expect(owner && first && wallAcross(owner, first, derive(skew).points)).toBeNull();
});
