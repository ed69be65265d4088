import { describe, expect, it } from 'vitest';
import type { LinePrimitive } from '../primitive';
import { drawn, primitivesOn, pushed, straightSite } from '../testing/straightRun';

// The pipe runs 30 m north from its head at the origin.

const linesOf = (readings: Parameters<typeof pushed>[1]) =>
  primitivesOn(drawn(straightSite({ runs: [pushed('A', readings)] })), 'marks').filter(
    (p): p is LinePrimitive => p.kind === 'line',
  );

describe('what goes on along the pipe', () => {
  it('is a line from its reading to its far end, with a bar across the pipe at both', () => {
    const [along, ...bars] = linesOf([{ counter: 8, to: 13 }]);
    expect([along?.points[0]?.y, along?.points.at(-1)?.y]).toEqual([8, 13]);
    expect(bars.map((b) => b.points.map((p) => p.y))).toEqual([
      [8, 8],
      [13, 13],
    ]);
    for (const { points } of bars) {
      expect(Math.abs((points[0]?.x ?? 0) - (points[1]?.x ?? 0))).toBeCloseTo(0.5, 12);
    }
  });

  it('is nothing for what is in one place, or as good as', () => {
    expect(linesOf([{ counter: 8 }])).toEqual([]);
    expect(linesOf([{ counter: 8, to: 8.1 }])).toEqual([]);
  });

  it('ends with the pipe when it is said to go on beyond it', () => {
    const [along] = linesOf([{ counter: 25, to: 90 }]);
    expect(along?.points.at(-1)?.y).toBe(30);
  });
});
