import { describe, expect, it } from 'vitest';
import { distance, type Point } from './point';
import { applySimilarity, fitRigid, fitSimilarity, invertSimilarity, type PointPair } from './similarity';

const known = { a: 0.6, b: -0.8, tx: 400, ty: -70 } as const;
const stretched = { a: 0.3, b: 1.2, tx: -5, ty: 9 } as const;
const corners: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 30, y: 2 },
  { x: 28, y: 19 },
  { x: -3, y: 25 },
];
const pairsBy = (transform: typeof known | typeof stretched): readonly PointPair[] =>
  corners.map((from) => ({ from, to: applySimilarity(transform, from) }));

describe('fitSimilarity', () => {
  it('finds again the transform that made the pairs', () => {
    const fit = fitSimilarity(pairsBy(stretched));
    if (!fit.ok) return expect.fail(fit.code);
    expect(fit.value.scale).toBeCloseTo(Math.hypot(0.3, 1.2), 12);
    expect(fit.value.rotation).toBeCloseTo(Math.atan2(1.2, 0.3), 12);
    expect(fit.value.s0).toBeLessThan(1e-9);
    expect(fit.value.transform.tx).toBeCloseTo(-5, 9);
  });

  it('gives a wrong point of little weight the residual', () => {
    const pairs = pairsBy(stretched).map((p, i) =>
      i === 2 ? { from: p.from, to: { x: p.to.x + 5, y: p.to.y }, weight: 1e-6 } : p,
    );
    const fit = fitSimilarity(pairs);
    if (!fit.ok) return expect.fail(fit.code);
    expect(fit.value.residuals[2]?.x).toBeCloseTo(-5, 3);
    expect(Math.abs(fit.value.residuals[0]?.x ?? 1)).toBeLessThan(1e-3);
  });

  it('refuses one pair, and points that are all in one place on either side', () => {
    const here = { x: 5, y: 5 };
    expect(fitSimilarity([{ from: here, to: here }])).toMatchObject({ ok: false, code: 'too-few-pairs' });
    const from = corners.map((to) => ({ from: here, to }));
    expect(fitSimilarity(from)).toMatchObject({ ok: false, code: 'coincident-points' });
    const to = corners.map((p) => ({ from: p, to: here }));
    expect(fitSimilarity(to)).toMatchObject({ ok: false, code: 'coincident-points' });
  });
});

describe('fitRigid', () => {
  it('turns and moves without stretching', () => {
    const fit = fitRigid(pairsBy(known));
    if (!fit.ok) return expect.fail(fit.code);
    expect(fit.value.scale).toBeCloseTo(1, 12);
    expect(fit.value.rotation).toBeCloseTo(Math.atan2(-0.8, 0.6), 12);
    expect(fit.value.s0).toBeLessThan(1e-9);
  });

  it('splits between two points what is too long between them', () => {
    const fit = fitRigid([
      { from: { x: 0, y: 0 }, to: { x: 0, y: 0 } },
      { from: { x: 10, y: 0 }, to: { x: 0, y: 10.2 } },
    ]);
    if (!fit.ok) return expect.fail(fit.code);
    expect(fit.value.residuals[0]?.y).toBeCloseTo(0.1, 12);
    expect(fit.value.residuals[1]?.y).toBeCloseTo(-0.1, 12);
    expect(fit.value.s0).toBeCloseTo(Math.sqrt(0.02), 12);
  });
});

describe('invertSimilarity', () => {
  it('leads back, also from far away', () => {
    const back = invertSimilarity(stretched);
    for (const p of [...corners, { x: 4e5, y: -9e5 }]) {
      expect(distance(applySimilarity(back, applySimilarity(stretched, p)), p)).toBeLessThan(1e-8);
    }
    expect(() => invertSimilarity({ a: 0, b: 0, tx: 1, ty: 1 })).toThrow(RangeError);
  });
});
