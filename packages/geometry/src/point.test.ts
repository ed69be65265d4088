import { describe, expect, it } from 'vitest';
import { cross, distance, equalPoints, interpolate, rotate } from './point';
import { COINCIDENT_M } from './tolerances';

describe('points', () => {
  it('turn counter-clockwise about a point far from the origin', () => {
    const about = { x: 1e6, y: -2e6 };
    const turned = rotate({ x: 1e6 + 3, y: -2e6 }, Math.PI / 2, about);
    expect(distance(turned, { x: 1e6, y: -2e6 + 3 })).toBeLessThan(1e-9);
  });

  it('are one within the coincidence tolerance and two beyond it', () => {
    const p = { x: 5, y: 5 };
    expect(equalPoints(p, { x: 5 + 0.9 * COINCIDENT_M, y: 5 })).toBe(true);
    expect(equalPoints(p, { x: 5 + 1.1 * COINCIDENT_M, y: 5 })).toBe(false);
  });

  it('interpolate exactly at both ends', () => {
    const a = { x: 0.1, y: 1e6 };
    const b = { x: 0.3, y: -7e-3 };
    expect([interpolate(a, b, 0), interpolate(a, b, 1)]).toEqual([a, b]);
  });

  it('have a cross product that is positive to the left', () => {
    expect(cross({ x: 1, y: 0 }, { x: 0, y: 2 })).toBe(2);
  });
});
