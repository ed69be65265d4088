import { type Point, radians } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Obstacle, RouteRequest } from '../request';
import { groundOf } from './ground';

// Invented yards; how wide a gap is, is plane geometry. Cells are about 0.13 m wide here.

const at = (x: number, y: number): Point => ({ x, y });
const yard: RouteRequest = {
  start: { at: at(0, 0), heading: 0, invert: null },
  ends: [{ id: 'main', at: { from: at(-2, 12), to: at(2, 12) }, headings: null, invert: null }],
  diameter: 0.1,
  bends: [{ id: '45', turn: radians(45), radius: 0.2286, laying: 0.14, cost: 0.4 }],
  leastStraight: 0.1,
  mostBends: 4,
  obstacles: [],
  areas: [],
  freeEnds: 1,
  grade: { least: 0, kept: false },
};
const line = (id: string, clearance: number, ...points: readonly Point[]): Obstacle => ({
  id,
  shape: { is: 'line', points, halfWidth: 0.05 },
  clearance,
});
const pen = (id: string, half: number) =>
  line(id, 0.3, at(-half, -half), at(half, -half), at(half, half), at(-half, half), at(-half, -half));

const groundWith = (...obstacles: readonly Obstacle[]) => groundOf({ ...yard, obstacles });

describe('groundOf', () => {
  it('joins start and end where nothing is, and around what does not go on', () => {
    expect(groundWith()).toEqual({ is: 'joined' });
    expect(groundWith(line('fence', 0.3, at(-4, 6), at(4, 6)))).toEqual({ is: 'joined' });
    expect(groundWith(line('street', 0.3, at(-300, 6), at(300, 6)))).toEqual({ is: 'joined' });
  });

  it('is apart where one pen is around the start, and that is the barrier', () => {
    const fence = pen('fence', 4);
    expect(groundWith(fence)).toMatchObject({
      is: 'apart',
      about: [{ id: 'fence' }],
      barriers: [{ obstacle: fence, clearance: expect.toSatisfy((c: number) => c < 0.2) }],
    });
  });

  it('has no single barrier where two pens are', () => {
    expect(groundWith(pen('inner', 3), pen('outer', 5))).toMatchObject({
      is: 'apart',
      about: [{ id: 'inner' }],
      barriers: [],
    });
  });

  it('never takes a gap for narrower than it is, and for wider by a cell at the most', () => {
    for (const gap of [0.5, 0.83, 1.2, 1.7]) {
      const corners = [at(4, 4), at(4, -4), at(-4, -4), at(-4, 4)];
      const wall: Obstacle = {
        id: 'wall',
        shape: { is: 'line', points: [at(gap / 2, 4), ...corners, at(-gap / 2, 4)], halfWidth: 0 },
        clearance: 1,
      };
      const ground = groundWith(wall);
      const clearance = ground.is === 'apart' ? (ground.barriers[0]?.clearance ?? 0) : 0;
      const truth = (gap - yard.diameter) / 2;
      expect(clearance).toBeGreaterThanOrEqual(truth);
      expect(clearance).toBeLessThan(truth + 0.2);
    }
  });

  it('lets a pipe out of the wall that it starts at', () => {
    const house: Obstacle = {
      id: 'house',
      shape: { is: 'ring', points: [at(-5, -5), at(5, -5), at(5, 0), at(-5, 0)] },
      clearance: 0.8,
    };
    expect(groundWith(house)).toEqual({ is: 'joined' });
    expect(groundWith({ ...house, clearance: 1.5 })).toMatchObject({
      is: 'apart',
      about: [{ id: 'house' }],
    });
  });
});
