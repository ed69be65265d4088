import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, distance, type Point, rotate } from './point';
import { type PipeReach, pipeReach, withinPipeReach } from './reachOfPipe';

const at = (x: number, y: number): Point => ({ x, y });

/** Even over the range in steps of a millionth. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);
const coordinate = between(-40, 40);

function reach(a: Point, b: Point, cable: number, tolerance = 0): PipeReach {
  const found = pipeReach(a, b, cable, tolerance);
  if (!found.ok) throw new Error(found.code);
  return found.value;
}

describe('the reach of a pipe', () => {
  it('does not care which end is first, and moves, turns, mirrors and scales with its ends', () => {
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, coordinate, between(0.01, 20), (x, y, u, v, more) => {
        const [a, b] = [at(x, y), at(u, v)];
        fc.pre(distance(a, b) > 0.1);
        const cable = distance(a, b) + more;
        const original = reach(a, b, cable);
        const swapped = reach(b, a, cable);
        expect([swapped.semiMajor, swapped.halfWidth, swapped.area, swapped.at]).toEqual([
          original.semiMajor,
          original.halfWidth,
          original.area,
          original.at,
        ]);
        expect(swapped.theta).toBeCloseTo(original.theta, 12);
        expect(original.theta).toBeGreaterThan(-Math.PI / 2);
        expect(original.theta).toBeLessThanOrEqual(Math.PI / 2);
        const moves: readonly (readonly [number, (p: Point) => Point])[] = [
          [1, (p) => rotate(p, 1.234, at(3, 4))],
          [1, (p) => at(p.x, -p.y)],
          [1, (p) => add(p, at(1e6, -1e6))],
          ...[1e-3, 1e3, 1e6].map((k) => [k, (p: Point) => at(p.x * k, p.y * k)] as const),
        ];
        for (const [k, move] of moves) {
          const moved = reach(move(a), move(b), cable * k);
          expect(moved.halfWidth / k / original.halfWidth).toBeCloseTo(1, 7);
          expect(moved.area / k ** 2 / original.area).toBeCloseTo(1, 7);
          expect(distance(moved.at, move(original.at)) / k).toBeLessThan(1e-9);
        }
        const turned = reach(rotate(a, 0.3), rotate(b, 0.3), cable).theta - original.theta;
        expect(Math.sin(turned - 0.3)).toBeCloseTo(0, 12);
      }),
    );
  });

  it('holds its ends, the places within its string and none a little past its outline', () => {
    const pipe = reach(at(7, 9), at(13, 5), 11);
    expect([pipe.a, pipe.b, pipe.at].every((p) => withinPipeReach(p, pipe))).toBe(true);
    const grown = (p: Point, k: number) =>
      at(pipe.at.x + k * (p.x - pipe.at.x), pipe.at.y + k * (p.y - pipe.at.y));
    for (const p of pipe.outline) {
      expect(withinPipeReach(p, pipe)).toBe(true);
      expect(withinPipeReach(grown(p, 0.999), pipe)).toBe(true);
      expect(withinPipeReach(grown(p, 1.001), pipe)).toBe(false);
    }
  });

  it('is the straight line when the cable is as long as the distance or shorter within the tolerance', () => {
    const [a, b] = [at(1, 1), at(4, 5)];
    expect(reach(a, b, 5)).toMatchObject({ halfWidth: 0, area: 0, outline: [a, b], short: 0, string: 5 });
    const short = reach(a, b, 4.9, 0.11);
    expect(short).toMatchObject({ halfWidth: 0, outline: [a, b], semiMajor: 2.5 });
    expect(short.short).toBeCloseTo(0.1, 12);
    expect(withinPipeReach(at(2.5, 3), short)).toBe(true);
    expect(withinPipeReach(at(2.5, 3.001), short)).toBe(false);
  });

  it('contradicts itself when the cable is shorter still, and gives the gap', () => {
    expect(pipeReach(at(0, 0), at(10, 0), 9)).toEqual({ ok: false, code: 'apart', values: { gap: 1 } });
    expect(pipeReach(at(0, 0), at(10, 0), 9, 0.999).ok).toBe(false);
    expect(pipeReach(at(0, 0), at(10, 0), 9, 1).ok).toBe(true);
  });

  it('is a circle, or a point, from a point back to itself', () => {
    const loop = reach(at(2, 3), at(2, 3), 6);
    expect(loop).toMatchObject({ at: at(2, 3), semiMajor: 3, semiMinor: 3, theta: 0 });
    expect(Math.max(...loop.outline.map((p) => Math.abs(distance(p, at(2, 3)) - 3)))).toBeLessThan(1e-12);
    expect(reach(at(2, 3), at(2, 3), 0)).toMatchObject({ area: 0, outline: [at(2, 3)] });
  });

  it('refuses what a caller must not ask', () => {
    expect(() => pipeReach(at(0, 0), at(1, 0), -1)).toThrow(RangeError);
    expect(() => pipeReach(at(0, 0), at(1, 0), Infinity)).toThrow(RangeError);
    expect(() => pipeReach(at(0, Number.NaN), at(1, 0), 2)).toThrow(RangeError);
    expect(() => pipeReach(at(0, 0), at(1, 0), 2, -1)).toThrow(RangeError);
  });
});
