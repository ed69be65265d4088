import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { locate } from './locate';
import { pathInCircle } from './pathInCircle';
import { type PathLine, pathLength, pathLine } from './pathLine';
import { distance, type Point } from './point';

const at = (x: number, y: number): Point => ({ x, y });

function built(points: readonly Point[], bendRadius = 0): PathLine {
  const line = pathLine(points.map((point) => ({ point, bendRadius })));
  if (!line.ok) throw new Error(line.code);
  return line.value;
}

describe('pathInCircle', () => {
  it('is the chord of a straight pipe: 2 √(r² − a²)', () => {
    const line = built([at(-20, 3), at(20, 3)]);
    expect(pathInCircle(line, at(0, 0), 5)).toEqual([{ from: 16, to: 24 }]);
    expect(pathInCircle(line, at(0, 0), 3)).toEqual([]);
    expect(pathInCircle(line, at(0, 0), 2)).toEqual([]);
  });

  it('ends with the pipe, goes on through corners, and comes again', () => {
    const line = built([at(0, 0), at(10, 0), at(10, 4), at(0, 4)]);
    expect(pathInCircle(line, at(0, 0), 5)).toEqual([
      { from: 0, to: 5 },
      { from: 21, to: 24 },
    ]);
    expect(pathInCircle(line, at(10, 2), 3)).toHaveLength(1);
    expect(pathInCircle(line, at(5, 2), 100)).toEqual([{ from: 0, to: 24 }]);
  });

  it('agrees with many small steps along straights and bends', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ x: fc.integer({ min: -12, max: 12 }), y: fc.integer({ min: -12, max: 12 }) }), {
          minLength: 2,
          maxLength: 5,
        }),
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 5, max: 90 }),
        (points, tenths, radiusTenths) => {
          const line = pathLine(points.map((point) => ({ point, bendRadius: tenths / 10 })));
          if (!line.ok) return;
          const centre = at(0.37, -0.21);
          const radius = radiusTenths / 10;
          const length = pathLength(line.value);
          const steps = 4000;
          let inside = 0;
          for (let i = 0; i < steps; i += 1) {
            const { point } = locate(line.value, ((i + 0.5) * length) / steps);
            if (distance(point, centre) < radius) inside += length / steps;
          }
          const found = pathInCircle(line.value, centre, radius);
          const sum = found.reduce((total, { from, to }) => total + to - from, 0);
          expect(Math.abs(sum - inside)).toBeLessThan((4 * length) / steps + 1e-9);
        },
      ),
      { seed: 5837, numRuns: 100 },
    );
  });
});
