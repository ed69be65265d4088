import { applySimilarity, degrees, fitSimilarity, type PointPair } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';

const pair = (x: number, y: number, X: number, Y: number): PointPair => ({
  from: { x, y },
  to: { x: X, y: Y },
});

function fitted(pairs: readonly PointPair[]) {
  const fit = fitSimilarity(pairs);
  if (!fit.ok) throw new Error(fit.code);
  return fit.value;
}

// Source: worked example in the README of Geo-Linux-Calculations/geofindkey; solved again independently, which gave the same.
describe('a published similarity by least squares over four points', () => {
  const { transform, scale, rotation, residuals, s0 } = fitted([
    pair(1334.71, 285.94, 83477.64, 47377.6),
    pair(563.67, -5197.34, 82557.14, 41916.51),
    pair(4444.27, 1153.79, 86610.19, 48160.39),
    pair(-252.07, 2881.9, 81962.05, 50016.34),
  ]);

  it('has its four parameters, scale and rotation', () => {
    expect(transform.a).toBeCloseTo(0.999787994, 9);
    expect(transform.b).toBeCloseTo(-0.027289778, 9);
    expect(transform.tx).toBeCloseTo(82135.4073, 4);
    expect(transform.ty).toBeCloseTo(47128.1437, 4);
    expect(scale).toBeCloseTo(1.0001603698, 9);
    expect(degrees(rotation)).toBeCloseTo(-1.56353244, 7);
  });

  it('has its residuals and standard deviation of unit weight', () => {
    const wanted = [
      [-0.0024, -0.0008],
      [-0.0165, 0.0132],
      [0.0318, 0.016],
      [-0.0129, -0.0283],
    ];
    for (const [i, [x, y]] of wanted.entries()) {
      expect(Math.abs((residuals[i]?.x ?? Number.NaN) - (x ?? 0))).toBeLessThan(6e-5);
      expect(Math.abs((residuals[i]?.y ?? Number.NaN) - (y ?? 0))).toBeLessThan(6e-5);
    }
    expect(s0).toBeCloseTo(0.025893, 6);
  });
});

describe('a similarity through two points', () => {
  // by hand: (0,0)→(100,200), (10,0)→(100,220) turns a quarter to the left and doubles
  const { transform, residuals, s0 } = fitted([pair(0, 0, 100, 200), pair(10, 0, 100, 220)]);

  it('is exact', () => {
    expect(transform.a).toBeCloseTo(0, 12);
    expect(transform.b).toBeCloseTo(2, 12);
    expect(transform.tx).toBeCloseTo(100, 12);
    expect(transform.ty).toBeCloseTo(200, 12);
    for (const v of residuals) expect(Math.hypot(v.x, v.y)).toBeLessThan(1e-12);
    expect(s0).toBeNull();
    expect(applySimilarity(transform, { x: 0, y: 5 })).toEqual({ x: 90, y: 200 });
  });
});
