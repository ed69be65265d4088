// Manning's formula in round pipes against published tables: NSPC 2009 Appendix K (partial flow, scour), the National Plumbing Code's half-full table
// (ASA A40.8-1955, from memory), IPC 2018 Table 1106.2 (storm drains, full).
import { manningFlow } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { drain } from './drainSite';

const INCH = 0.0254;
const FOOT = 0.3048;
const GPM = (231 * INCH ** 3) / 60;
const perFoot = (inches: number) => inches / 12;

describe('a full pipe', () => {
  // nominal sizes, V in ft/s and Q in gal/min: formula with 1.486 by hand
  it.each([
    [3, 1 / 8, 0.009, 2.654, 58.5],
    [3, 1 / 4, 0.013, 2.599, 57.2],
    [4, 1 / 8, 0.01, 2.894, 113.3],
    [4, 1 / 4, 0.013, 3.148, 123.3],
    [6, 1 / 8, 0.013, 2.917, 257],
    [6, 1 / 4, 0.009, 5.958, 525.1],
  ])('of %d in at %d in/ft and n %d runs %d ft/s and carries %d gal/min', (size, fall, roughness, v, q) => {
    const { velocity, discharge } = manningFlow({ diameter: size * INCH, slope: perFoot(fall), roughness });
    expect(velocity / FOOT).toBeCloseTo(v, 2);
    expect(Math.abs(discharge / GPM - q)).toBeLessThan(0.002 * q);
  });

  // IPC 2018 Table 1106.2 (read): 4 in at 1/8 115, at 1/4 163; 6 in 344 and 487. It implies n of about 0.0098
  it.each([
    [4, 1 / 8, 115],
    [4, 1 / 4, 163],
    [6, 1 / 8, 344],
    [6, 1 / 4, 487],
  ])('of %d in at %d in/ft carries the %d gal/min of the storm table', (size, fall, q) => {
    const { discharge } = manningFlow({ diameter: size * INCH, slope: perFoot(fall), roughness: 0.0098 });
    expect(Math.abs(discharge / GPM - q)).toBeLessThan(0.02 * q);
  });
});

describe('a pipe in part full', () => {
  // ASA A40.8-1955, half full, n 0.015 (from memory): gal/min and ft/s
  it.each([
    [4, 1 / 8, 37.8, 1.93],
    [4, 1 / 4, 53.4, 2.73],
    [6, 1 / 8, 111, 2.52],
    [6, 1 / 4, 157, 3.57],
  ])('of %d in at %d in/ft carries %d gal/min at %d ft/s half full', (size, fall, q, v) => {
    const half = manningFlow({ diameter: size * INCH, slope: perFoot(fall), roughness: 0.015, fill: 0.5 });
    expect(Math.abs(half.discharge / GPM - q)).toBeLessThan(0.006 * q);
    expect(Math.abs(half.velocity / FOOT - v)).toBeLessThan(0.01);
  });

  // NSPC 2009 Appendix K (read): of the half-full flow a full pipe carries 2.00 at 1.00 of the speed, a quarter full 0.274 at 0.701, three quarters 1.82 at
  // 1.13
  it.each([
    [1, 2, 1],
    [0.25, 0.274, 0.701],
    [0.75, 1.82, 1.13],
  ])('filled to %d carries %d of what it does half full, at %d of the speed', (fill, share, speed) => {
    const pipe = { diameter: 4 * INCH, slope: perFoot(1 / 8), roughness: 0.015 };
    const half = manningFlow({ ...pipe, fill: 0.5 });
    const flow = manningFlow({ ...pipe, fill });
    expect(flow.discharge / half.discharge).toBeCloseTo(share, 2);
    expect(Math.abs(flow.velocity / half.velocity - speed)).toBeLessThan(0.005);
  });

  it('is refused where there is no pipe, no fall or no water', () => {
    const pipe = { diameter: 0.1, slope: 0.01, roughness: 0.013 };
    for (const wrong of [{ diameter: 0 }, { slope: -0.01 }, { roughness: 0 }, { fill: 0 }, { fill: 1.1 }])
      expect(() => manningFlow({ ...pipe, ...wrong })).toThrow(RangeError);
  });
});

describe('a drain', () => {
  const falling = (inches: number) => {
    const invert = (level: number) =>
      ({ level: { is: 'invert', level: level * INCH, sigma: 0.001 } }) as const;
    return drain([
      [0, 0, invert(100)],
      [50, 0, invert(100 - 50 * inches)],
    ]).check.flow;
  };

  // ASA A40.8-1955 and NSPC: 4 in at 1/8 runs 1.93 ft/s, at 1/4 2.73; 2 ft/s carries solids along
  it('of 4 in does not carry solids along at 1/8 in/ft, and does at 1/4', () => {
    expect((falling(1 / 8)?.velocity ?? 0) / FOOT).toBeCloseTo(1.93, 2);
    expect([falling(1 / 8)?.scours, falling(1 / 4)?.scours]).toEqual([false, true]);
  });

  it('runs in no way that can be told uphill, or without levels', () => {
    expect(falling(-1 / 8)).toBeNull();
    expect(
      drain([
        [0, 0],
        [50, 0],
      ]).check.flow,
    ).toBeNull();
  });
});
