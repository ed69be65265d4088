import { distance, pointInRing } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { HATCH, hatchLines } from './hatchLines';

const L_SHAPE = [
  { x: 0, y: 0 },
  { x: 9, y: 0 },
  { x: 9, y: 4 },
  { x: 5, y: 4 },
  { x: 5, y: 8 },
  { x: 0, y: 8 },
];

describe('hatchLines', () => {
  it('stays inside, and its lines times their spacing give the area', () => {
    const mmPerMetre = 50;
    const lines = hatchLines(L_SHAPE, mmPerMetre);
    for (const [a, b] of lines) {
      expect(pointInRing({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, L_SHAPE)).toBe('inside');
    }
    const covered = lines.reduce((sum, [a, b]) => sum + distance(a, b), 0) * (HATCH.spacing / mmPerMetre);
    expect(covered).toBeCloseTo(9 * 4 + 5 * 4, 0);
  });

  it('gives nothing for a ring without area', () => {
    expect(hatchLines([{ x: 1, y: 1 }], 10)).toEqual([]);
  });
});
