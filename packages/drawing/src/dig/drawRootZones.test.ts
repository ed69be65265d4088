import { regionArea } from '@footmark/geometry';
import { derive } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { draw } from '../draw';
import type { DrawOptions } from '../drawOptions';
import { digOf, lines, picture, siteWith } from '../testing/digPicture';
import { labelsOn, pointFeature, primitivesOn } from '../testing/straightRun';

describe('root zones', () => {
  it('are a circle of the chosen rule and one of the roots that hold the tree up, each with its name', () => {
    const words: DrawOptions['words'] = { rootZone: ({ is, rule }) => `${is} ${rule}` };
    const drawing = picture(siteWith(), { words });
    const circles = primitivesOn(drawing, 'root-zones').filter((p) => p.kind === 'circle');
    // AS 4970-2009: 12 × 0.3 = 3.6 m (3.2); (0.3 × 50)^0.42 × 0.64 = 1.996 m (3.3.5)
    expect(circles.map((c) => [c.radius, c.stroke?.ink, c.stroke?.dash !== undefined])).toEqual([
      [expect.closeTo(3.6, 9), 'plant', true],
      [expect.closeTo(1.996, 3), 'plant', true],
    ]);
    expect(labelsOn(drawing, 'root-zones').map((l) => l.text)).toEqual([
      'chosen as-4970',
      'structural-root-zone as-4970',
    ]);
  });

  it('show the roots that hold the tree up where the chosen rule knows none, too', () => {
    const site = siteWith();
    const rules = { ...site.rules, trees: 'critical-root-radius' } as const;
    const circles = primitivesOn(picture({ ...site, rules }), 'root-zones').filter(
      (p) => p.kind === 'circle',
    );
    expect(circles.map((c) => c.radius)).toEqual([expect.closeTo(3.6, 9), expect.closeTo(1.996, 3)]);
  });

  it('are hatched where a dig takes them', () => {
    const [taken] = lines(picture(siteWith()), 'root-zones');
    expect(taken?.fill?.hatch).toBe('diagonal');
    // by hand: the edge at x = 3.5 stands 0.5 m from the trunk's middle: half the circle less the strip of 0.5 m beside the middle,
    // of which the dig (y from 7 to 17) reaches all
    const [r, d] = [3.6, 0.5];
    const segment = r * r * Math.acos(d / r) - d * Math.sqrt(r * r - d * d);
    const area = regionArea([taken?.points ?? []]);
    expect(area).toBeLessThan(segment);
    expect(area).toBeGreaterThan(0.98 * segment);
  });

  it('do not make the site larger', () => {
    const far = siteWith({}, [pointFeature('oak', 'tree', 4, 12, { trunkDiameter: 1 })]);
    const none = { excavations: [], treeZones: [] };
    const { excavations } = digOf(far);
    expect(picture(far).bounds).toEqual(draw(far, derive(far), { dig: { ...none, excavations } }).bounds);
  });
});
