import { radians } from '@footmark/geometry';
import { derive, openSiteValue, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';

// Source: Wolf & Ghilani, Elementary Surveying, Ex. 10.4 (feet; taken as metres here, which changes no figure): five courses,
// balanced by the compass rule, with coordinates and area. The whole way from a site file to the derived corners.
const COURSES = [
  [647.25, 126, 55, 17],
  [203.03, 178, 18, 58],
  [720.35, 15, 31, 54],
  [610.24, 284, 35, 20],
  [285.13, 206, 9, 42],
] as const;
const BALANCED = [
  [10000, 5000],
  [10517.444, 4611.165],
  [10523.408, 4408.216],
  [10716.289, 5102.239],
  [10125.718, 5255.928],
] as const;
const TOLERANCE = 0.002;

function traverseSite(balance: boolean): Site {
  const legs = COURSES.map(([distance, d, m, s]) => ({
    by: 'course',
    azimuth: radians(d + m / 60 + s / 3600),
    distance,
  }));
  const opened = openSiteValue({
    format: 'footmark-site',
    version: 1,
    id: 'traverse',
    name: '',
    address: '',
    note: '',
    createdAt: '2026-01-02T03:04:05Z',
    units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
    frame: { north: { by: 'assumed' }, control: [] },
    tape: { length: 30, sigma: 0.02 },
    entryReach: 1,
    underlays: [],
    features: [
      {
        id: 'lot',
        kind: 'boundary',
        name: '',
        vertices: [
          { id: 'a', spot: { by: 'coordinates', x: 10000, y: 5000 } },
          ...legs.slice(0, -1).map((spot, i) => ({ id: 'bcde'[i], spot })),
        ],
        closing: legs.at(-1),
        ...(balance ? { balance: 'compass' } : {}),
        fields: {},
      },
    ],
    paths: [],
    runs: [],
  });
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return opened.site;
}

describe('a published traverse as a boundary', () => {
  it('has the published corners, misclosure, ratio and area when balanced', () => {
    const lot = derive(traverseSite(true)).features.get('lot');
    for (const [i, [x, y]] of BALANCED.entries()) {
      expect(Math.abs((lot?.points[i]?.x ?? Number.NaN) - x)).toBeLessThanOrEqual(TOLERANCE);
      expect(Math.abs((lot?.points[i]?.y ?? Number.NaN) - y)).toBeLessThanOrEqual(TOLERANCE);
    }
    expect(lot?.closure).toMatchObject({ balanced: true });
    expect(lot?.closure?.perimeter).toBeCloseTo(2466, 9);
    expect(lot?.closure?.length).toBeCloseTo(0.0802, 4);
    expect(Math.round(lot?.closure?.ratio ?? 0)).toBe(30741);
    expect(Math.abs((lot?.closure?.area ?? 0) - 272585)).toBeLessThan(1);
  });

  it('has the corners of the courses themselves when not', () => {
    const { features, findings } = derive(traverseSite(false));
    const last = features.get('lot')?.points[4];
    expect(last?.x).toBeCloseTo(10000 + 125.715 + 0.0256, 2);
    expect(last?.y).toBeCloseTo(5000 + 255.919 + 0.076, 2);
    expect(findings).toMatchObject([{ code: 'boundary-misclosure', severity: 'note' }]);
  });
});
