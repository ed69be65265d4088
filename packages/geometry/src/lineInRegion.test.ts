import { describe, expect, it } from 'vitest';
import { differenceOf } from './combineRegions';
import { lineInRegion } from './lineInRegion';
import type { Region } from './region';

const box = (x: number, y: number, side: number): Region => [
  [
    { x, y },
    { x: x + side, y },
    { x: x + side, y: y + side },
    { x, y: y + side },
  ],
];

describe('lineInRegion', () => {
  const frame = differenceOf(box(0, 0, 10), [box(4, 4, 2)]);
  const across = [
    { x: -5, y: 5 },
    { x: 15, y: 5 },
  ];

  it('counts what runs inside and not what crosses a hole', () => {
    expect(lineInRegion(across, false, box(0, 0, 10))).toBeCloseTo(10, 12);
    expect(lineInRegion(across, false, frame)).toBeCloseTo(8, 12);
  });

  it('closes a ring, and gives nothing for an edge that is only touched or for a single point', () => {
    expect(lineInRegion(box(5, 5, 20)[0] ?? [], true, box(0, 0, 10))).toBeCloseTo(10, 12);
    expect(lineInRegion(box(10, 0, 10)[0] ?? [], true, box(0, 0, 10))).toBe(0);
    expect(lineInRegion([{ x: 1, y: 1 }], true, box(0, 0, 10))).toBe(0);
    expect(lineInRegion(across, false, [])).toBe(0);
  });
});
