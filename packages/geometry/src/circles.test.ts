import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closestApproach, cutAngleAt, intersectCircles } from './circles';
import { errorEllipse, tapeFixCovariance } from './errorEllipse';
import { cross, distance, type Point, rotate, subtract } from './point';

/** Even over the range in steps of a millionth, unlike `fc.double`, whose values crowd round 0. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);

const at = (x: number, y: number): Point => ({ x, y });
const coordinate = between(-1000, 1000);

describe('intersectCircles', () => {
  it('finds the taped point again, left and right of the base', () => {
    fc.assert(
      fc.property(
        coordinate,
        coordinate,
        coordinate,
        coordinate,
        coordinate,
        coordinate,
        (x, y, u, v, p, q) => {
          const [a, b, taped] = [at(x, y), at(u, v), at(p, q)];
          fc.pre(
            Math.min(distance(a, b), distance(a, taped), distance(b, taped)) > 0.1 &&
              Math.abs(Math.sin(cutAngleAt(taped, a, b))) > 0.01,
          );
          const found = intersectCircles(a, distance(a, taped), b, distance(b, taped));
          expect(found.ok).toBe(true);
          if (!found.ok) return;
          const [left, right] = found.value.points;
          expect(cross(subtract(b, a), subtract(left, a))).toBeGreaterThan(0);
          expect(cross(subtract(b, a), subtract(right, a))).toBeLessThan(0);
          const onLeft = cross(subtract(b, a), subtract(taped, a)) > 0;
          expect(distance(onLeft ? left : right, taped)).toBeLessThan(1e-6);
          expect(found.value.cutAngle).toBeCloseTo(cutAngleAt(taped, a, b), 6);
        },
      ),
    );
  });

  it('gives the gap of tapes that cannot meet', () => {
    const short = intersectCircles(at(0, 0), 4, at(10, 0), 5);
    expect(short).toEqual({ ok: false, code: 'too-short', values: { gap: 1 } });
    const long = intersectCircles(at(0, 0), 3, at(10, 0), 15);
    expect(long).toEqual({ ok: false, code: 'too-long', values: { gap: 2 } });
    expect(intersectCircles(at(0, 0), 15, at(10, 0), 3)).toEqual(long);
    expect(intersectCircles(at(1, 1), 3, at(1, 1.00005), 3)).toEqual({ ok: false, code: 'same-centre' });
  });

  it('gives a tangent point twice', () => {
    const outer = intersectCircles(at(0, 0), 4, at(10, 0), 6);
    expect(outer).toEqual({ ok: true, value: { points: [at(4, 0), at(4, 0)], cutAngle: Math.PI } });
    const nearly = intersectCircles(at(0, 0), 4, at(10.00008, 0), 6);
    expect(nearly.ok && nearly.value.points[0]).toEqual(nearly.ok && nearly.value.points[1]);
    const inner = intersectCircles(at(0, 0), 16, at(10, 0), 6);
    expect(inner).toEqual({ ok: true, value: { points: [at(16, 0), at(16, 0)], cutAngle: 0 } });
  });

  it('scales and does not care how far away the origin is', () => {
    for (const k of [1e-2, 1, 1e3, 1e6]) {
      const found = intersectCircles(at(0, 0), 6 * k, at(10 * k, 0), 8 * k);
      expect(found.ok && found.value.points[0].y / k).toBeCloseTo(4.8, 10);
    }
    const far = intersectCircles(at(1e6, 1e6), 6, at(1e6 + 10, 1e6), 8);
    expect(far.ok && distance(far.value.points[0], at(1e6 + 3.6, 1e6 + 4.8))).toBeLessThan(1e-8);
  });

  it('refuses a negative tape', () => {
    expect(() => intersectCircles(at(0, 0), -1, at(1, 0), 1)).toThrow(RangeError);
  });
});

describe('closestApproach', () => {
  it('is half-way over the gap of tapes that are too short or too long, whichever comes first', () => {
    const [c1, c2] = [at(0, 0), at(10, 0)];
    expect(closestApproach(c1, 4, c2, 5)).toEqual(at(4.5, 0));
    expect(closestApproach(c2, 5, c1, 4)).toEqual(at(4.5, 0));
    expect(closestApproach(c1, 20, c2, 5)).toEqual(at(17.5, 0));
    expect(closestApproach(c2, 5, c1, 20)).toEqual(at(17.5, 0));
    expect(closestApproach(c1, 5, c2, 20)).toEqual(at(-7.5, 0));
  });

  it('lies on the line of the centres where the tapes meet', () => {
    expect(closestApproach(at(0, 0), 6, at(10, 0), 8).x).toBeCloseTo(3.6, 12);
    expect(closestApproach(at(1, 2), 6, at(1, 2), 8)).toEqual(at(1, 2));
  });
});

describe('the error of a two-tape fix', () => {
  const angle = between(0.2, 2.9);
  const sigma = between(1e-3, 1);

  it('turns with the tapes and is the same with their order swapped', () => {
    fc.assert(
      fc.property(angle, angle, sigma, sigma, (cut, turn, sigmaA, sigmaB) => {
        const [p, a] = [at(3, -2), at(13, -2)];
        const b = rotate(at(23, -2), cut, p);
        const fix = { p, a, b, sigmaA, sigmaB };
        const ellipse = errorEllipse(tapeFixCovariance(fix));
        const turned = { ...fix, a: rotate(a, turn, p), b: rotate(b, turn, p) };
        const turnedEllipse = errorEllipse(tapeFixCovariance(turned));
        expect(turnedEllipse.semiMajor / ellipse.semiMajor).toBeCloseTo(1, 9);
        expect(turnedEllipse.semiMinor / ellipse.semiMinor).toBeCloseTo(1, 6);
        const swapped = errorEllipse(tapeFixCovariance({ p, a: b, b: a, sigmaA: sigmaB, sigmaB: sigmaA }));
        expect(swapped.semiMajor / ellipse.semiMajor).toBeCloseTo(1, 9);
        // det C = (σa σb / sin γ)²: the product of the axes.
        const product = (sigmaA * sigmaB) / Math.sin(cut);
        expect((ellipse.semiMajor * ellipse.semiMinor) / product).toBeCloseTo(1, 6);
      }),
    );
  });

  it('is infinite when both tapes lie on one line', () => {
    const c = tapeFixCovariance({ p: at(5, 0), a: at(0, 0), b: at(9, 0), sigmaA: 1, sigmaB: 1 });
    expect(errorEllipse(c)).toEqual({ semiMajor: Infinity, semiMinor: Infinity, theta: 0 });
  });
});
