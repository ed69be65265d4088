import { distance } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { expandPattern } from '../pattern';
import type { LinePrimitive } from '../primitive';
import {
  drawn,
  labelsOn,
  lateral,
  pointFeature,
  primitivesOn,
  pushed,
  straightSite,
} from '../testing/straightRun';

/** Seen to 12 m from the head and to 18 m by a second run; from the tap up to 25 m. */
const site = straightSite({
  features: [pointFeature('tap', 'tap', 0, 30)],
  runs: [
    pushed('A', [{ counter: 12 }]),
    pushed('B', [{ counter: 18 }]),
    pushed('C', [{ counter: 5 }], { entry: 'tap', direction: 'against-flow' }),
  ],
});

const bands = (drawing: ReturnType<typeof drawn>) =>
  primitivesOn(drawing, 'coverage').filter((p): p is LinePrimitive => p.kind === 'line');

describe('coverage', () => {
  it('is a band on each piece that was seen, stronger where more than one run has been', () => {
    const seen = bands(drawn(site));
    expect(seen.map((b) => [b.points[0]?.y, b.points.at(-1)?.y])).toEqual([
      [0, 12],
      [12, 18],
      [25, 30],
    ]);
    const [twice = 0, once = 0, other = 0] = seen.map((b) => b.stroke?.opacity ?? 1);
    expect(twice).toBeGreaterThan(1.5 * once);
    expect(other).toBe(once);
  });

  it('hatches what no camera has seen, across the pipe, and says so on it', () => {
    const drawing = drawn(site, { words: { unseen: (length) => `not seen ${length}` } });
    const gap = primitivesOn(drawing, 'coverage').find((p) => p.kind === 'pattern');
    if (gap?.kind !== 'pattern') throw new Error('there is a gap');
    expect([gap.points[0]?.y, gap.points.at(-1)?.y]).toEqual([18, 25]);
    const strokes = expandPattern(gap, 10).filter((p): p is LinePrimitive => p.kind === 'line');
    // 7 m at 1:100 are 70 mm: a stroke every 2.2 mm
    expect(strokes).toHaveLength(Math.floor(70 / 2.2));
    for (const { points } of strokes) {
      const [from, to] = points;
      if (from === undefined || to === undefined) throw new Error('a stroke has two ends');
      // 1.6 mm to either side of the pipe, at 45°, with its middle on it
      expect(from.x).toBeCloseTo(-0.16, 12);
      expect(to.x).toBeCloseTo(0.16, 12);
      expect(to.y - from.y).toBeCloseTo(0.32, 12);
      expect(distance({ x: (from.x + to.x) / 2, y: 0 }, { x: 0, y: 0 })).toBeCloseTo(0, 12);
    }
    expect(labelsOn(drawing, 'coverage')).toMatchObject([
      { text: 'not seen 7', brief: '?', at: { x: 0, y: 21.5 } },
    ]);
    expect(labelsOn(drawn(site), 'coverage').map((l) => l.text)).toEqual(['?']);
  });

  it('says so on the longest straight piece of a gap that goes round a corner', () => {
    const at = (x: number, y: number) => ({ by: 'coordinates', x, y }) as const;
    const vertices = [at(0, 0), at(0, 10), at(20, 10)].map((spot, i) => ({ id: `v${i}`, spot }));
    const corner = straightSite({
      paths: [{ ...lateral, vertices }],
      runs: [pushed('A', [{ counter: 4 }])],
    });
    // unseen: 6 m north, then 20 m east
    const [label] = labelsOn(drawn(corner), 'coverage');
    expect(label?.at).toEqual({ x: 10, y: 10 });
    expect(label?.along?.azimuth).toBeCloseTo(Math.PI / 2, 12);
    expect(label?.along?.span).toBeCloseTo(20, 12);
  });

  it('calls nothing unseen while nothing was looked at', () => {
    expect(primitivesOn(drawn(straightSite({ runs: [] })), 'coverage')).toEqual([]);
  });
});
