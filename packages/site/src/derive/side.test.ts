import { describe, expect, it } from 'vitest';
import { sideOf } from './side';

const ORIGIN = { x: 0, y: 0 };

describe('sideOf', () => {
  it('is left of the way from the first to the second, and left on the line', () => {
    expect(sideOf({ x: 1, y: 1 }, ORIGIN, { x: 5, y: 0 })).toBe('left');
    expect(sideOf({ x: 1, y: -1 }, ORIGIN, { x: 5, y: 0 })).toBe('right');
    expect(sideOf({ x: 9, y: 0 }, ORIGIN, { x: 5, y: 0 })).toBe('left');
  });
});
