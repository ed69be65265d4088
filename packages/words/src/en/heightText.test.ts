import { describe, expect, it } from 'vitest';
import { belowGroundText, dropText } from './heightText';

const metres = { length: 'm' } as const;

describe('a height', () => {
  it('that a pipe climbs is not told as one that it falls', () => {
    expect(dropText(0.5, metres)).toBe('0.50 m');
    expect(dropText(-0.5, metres)).toBe('rises 0.50 m');
    expect(dropText(0, metres)).toBe('0.00 m');
  });

  it('above the ground is not told as a depth', () => {
    expect(belowGroundText(0.5, metres)).toBe('0.50 m');
    expect(belowGroundText(-0.5, metres)).toBe('0.50 m above ground');
  });
});
