import { distance } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import type { Site } from '../document/site';
import { reversePath } from './reversePath';
import { newSite } from './siteEdits';

const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
const site: Site = {
  ...newSite({ id: 's', name: 's', createdAt: '2026-01-01T00:00:00Z', units }),
  paths: [
    {
      id: 'p',
      name: 'Lateral',
      state: 'existing',
      bendRadius: 0,
      vertices: [
        { id: 'a', spot: { by: 'coordinates', x: 0, y: 0 } },
        { id: 'b', spot: { by: 'course', azimuth: Math.PI / 2, distance: 10 } },
        { id: 'c', spot: { by: 'turn', turn: Math.PI / 2, distance: 5 } },
      ],
      stretches: [
        { from: 0, material: 'clay', diameter: 0.1, slope: 0.01 },
        { from: 4, material: 'plastic', diameter: 0.1, slope: 0.02 },
        { from: 9, material: 'concrete', diameter: 0.15, slope: 0.02 },
      ],
    },
  ],
};

describe('reversePath', () => {
  const before = derive(site);
  const turned = reversePath(site, { id: 'p', length: 15, places: before.points });
  const after = derive(turned);

  it('leaves every point where it is, measured, in the other order', () => {
    expect(turned.paths[0]?.vertices.map((v) => v.id)).toEqual(['c', 'b', 'a']);
    for (const at of ['a', 'b', 'c']) {
      const [was, is] = [before, after].map((d) => d.points.get(`p/${at}`)?.at);
      expect(was && is ? distance(was, is) : 1).toBeLessThan(1e-9);
      expect(after.points.get(`p/${at}`)?.measured).toBe(true);
    }
  });

  it('tells the stretches from the new start', () => {
    expect(turned.paths[0]?.stretches.map((s) => [s.from, s.material])).toEqual([
      [0, 'concrete'],
      [6, 'plastic'],
      [11, 'clay'],
    ]);
  });

  it('turned twice, has every place and stretch as before', () => {
    const twice = reversePath(turned, { id: 'p', length: 15, places: after.points });
    expect(twice.paths[0]?.stretches).toEqual(site.paths[0]?.stretches);
    const back = derive(twice).paths.get('p')?.points ?? [];
    expect(back.map((p) => [Math.round(p.x * 1e6) / 1e6, Math.round(p.y * 1e6) / 1e6 + 0])).toEqual([
      [0, 0],
      [10, 0],
      [10, -5],
    ]);
  });
});
