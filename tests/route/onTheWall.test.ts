import { checkRoute, findRoutes, type RouteRequest } from '@footmark/route';
import { describe, expect, it } from 'vitest';
import { randomRequest } from './randomRequest';

// A drain leaves its house at the wall; where that is drawn a hair off, the route is the same, and it never goes back through the house.
const turned = (inside: number, heading: number): RouteRequest => {
  const base = randomRequest(1, { obstacles: 1, mostBends: 4 });
  const house = [
    { x: -4, y: -6 },
    { x: 4, y: -6 },
    { x: 4, y: 0 },
    { x: -4, y: 0 },
  ];
  return {
    ...base,
    start: { at: { x: 0, y: -inside }, heading, invert: null },
    ends: [{ id: 'tap', at: { x: 3, y: 12 }, headings: null, invert: null }],
    obstacles: [{ id: 'house', shape: { is: 'ring', points: house }, clearance: 0.6 }],
    areas: [],
  };
};

describe('a start at its wall', () => {
  it.each([0, 1e-7, 1e-6, 2e-5, 1e-4, 5e-4, 5e-3, -1e-6, -1e-3])(
    '%d m inside it leads out, and around to where it goes',
    (inside) => {
      const request = turned(inside, 0);
      const found = findRoutes(request);
      if (found.is !== 'found') expect.fail(found.is);
      for (const route of found.routes)
        expect(checkRoute(request, route).filter((f) => f.code !== 'too-near')).toEqual([]);
      expect(found.routes[0]?.points.every((p) => p.y >= -0.01)).toBe(true);
    },
  );

  it.each([0, 1e-4, 5e-3])('%d m inside it does not lead into the house', (inside) => {
    expect(findRoutes(turned(inside, Math.PI)).is).not.toBe('found');
  });
});
