import { rotate } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { planFrame, roomFor } from './planFrame';

const METRIC = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
const FEET = { length: 'ft', diameter: 'in', direction: 'bearing' } as const;
const room = { width: 200, height: 150 };
const yard = (wide: number, high: number) => [
  { x: 0, y: 0 },
  { x: wide, y: 0 },
  { x: wide, y: high },
  { x: 0, y: high },
];

describe('how a plan lies on paper', () => {
  it('is upright where no turn makes it larger', () => {
    expect(planFrame(yard(20, 15), room, 'fit', METRIC)).toMatchObject({ turn: 0, denominator: 100 });
    // on its side it would still be 1:200
    expect(planFrame(yard(18, 21), room, 'fit', METRIC)).toMatchObject({ turn: 0, denominator: 200 });
  });

  it('is on its side where it is larger so', () => {
    const frame = planFrame(yard(15, 20), room, 'fit', METRIC);
    expect(frame).toMatchObject({ turn: Math.PI / 2, denominator: 100 });
  });

  it('is along the yard where that lies askew', () => {
    const askew = yard(20, 15).map((p) => rotate(p, 0.4));
    const frame = planFrame(askew, room, 'fit', METRIC);
    expect(frame?.denominator).toBe(100);
    expect(Math.abs(Math.sin(2 * ((frame?.turn ?? 0) + 0.4)))).toBeLessThan(1e-5);
  });

  it('fits its room at the scale that it says', () => {
    for (const asked of ['fit', 'largest'] as const)
      for (const units of [METRIC, FEET]) {
        const frame = planFrame(yard(33, 47), room, asked, units);
        if (frame === null) throw new Error('no frame');
        const { width, height } = roomFor(frame);
        expect(width).toBeLessThanOrEqual(room.width + 1e-3);
        expect(height).toBeLessThanOrEqual(room.height + 1e-3);
      }
  });

  it('keeps a scale that is asked for', () => {
    expect(planFrame(yard(500, 3), room, 50, METRIC)).toMatchObject({ turn: 0, denominator: 50 });
  });

  it('is nothing without a point, and something for one', () => {
    expect(planFrame([], room, 'fit', METRIC)).toBeNull();
    expect(planFrame([{ x: 3, y: 4 }], room, 'fit', FEET)).toMatchObject({ turn: 0, denominator: 60 });
  });
});
