import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Hull, paperGrid } from './paperGrid';

const hull = fc
  .record({
    x: fc.double({ min: -2e6, max: 2e6, noNaN: true }),
    y: fc.double({ min: -200, max: 200, noNaN: true }),
    w: fc.double({ min: 0, max: 60, noNaN: true }),
    h: fc.double({ min: 0, max: 60, noNaN: true }),
  })
  .map(({ x, y, w, h }): Hull => ({ minX: x, minY: y, maxX: x + w, maxY: y + h }));

const meet = (a: Hull, b: Hull) =>
  a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;

describe('paperGrid', () => {
  it('finds all that meets a hull, each once, also where cells share a key', () => {
    fc.assert(
      fc.property(fc.array(hull, { maxLength: 80 }), hull, (all, asked) => {
        const grid = paperGrid<Hull>();
        for (const h of all) grid.add(h, h);
        const found = grid.near(asked);
        expect(new Set(found).size).toBe(found.length);
        for (const h of all.filter((other) => meet(other, asked))) expect(found).toContain(h);
      }),
      { seed: 20260412, numRuns: 200 },
    );
  });
});
