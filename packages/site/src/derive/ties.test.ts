import { distance, errorEllipse, type Point, tapeFixCovariance } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Feature } from '../document/feature';
import type { Spot } from '../document/spot';
import { DEGREE, pipe, push, ref, square, tee, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';
import { referenceIndex } from './references';
import { chooseTies } from './ties';
import { worstAxis } from './worstAxis';

const TAPE = { length: 30, sigma: 0.02 };
const ORIGIN: Point = { x: 0, y: 0 };

const post = (id: string, x: number, y: number) => thing(id, 'reference-point', [typed(x, y)]);

function tiesAt(mark: Point, features: readonly Feature[], tape = TAPE) {
  const site = yard({ features: [...features] });
  const derived = derive(site);
  const blocks = [...derived.features.values()].filter((f) => f.spec.blocksTape);
  return chooseTies(mark, referenceIndex(site, derived.features, derived.points), blocks, tape);
}

const names = (ties: ReturnType<typeof tiesAt>) => ties?.pair.map((t) => t.from.ref.of).sort();

/** Uniform in [0, 1), the same for a seed everywhere (Park and Miller's generator). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

describe('chooseTies', () => {
  it('takes the pair that cuts best, and the third as a check', () => {
    const ties = tiesAt(ORIGIN, [post('east', 10, 0), post('north', 0, 10), post('along', 10, 1)]);
    expect(names(ties)).toEqual(['east', 'north']);
    expect(ties?.cutAngle).toBeCloseTo(90 * DEGREE, 12);
    // square cut: the axes are the tapes' own deviations, √(0.02² + (10/1000)²)
    expect(ties?.worstAxis).toBeCloseTo(Math.hypot(0.02, 0.01), 12);
    expect(ties?.check?.from.ref.of).toBe('along');
    expect(ties?.check?.distance).toBeCloseTo(Math.sqrt(101), 12);
  });

  it('checks by no point that reads alike on the wrong side of the line of references', () => {
    const mark = { x: 5, y: 8 };
    const line = [post('a', 0, 0), post('b', 10, 0), post('middle', 5, 0)];
    expect(tiesAt(mark, line)?.check).toBeNull();
    expect(tiesAt(mark, [...line, post('off', 5, -20)])?.check?.from.ref.of).toBe('off');
  });

  it('says on which side of the line of references the mark lies', () => {
    const ties = tiesAt(ORIGIN, [post('east', 10, 0), post('north', 0, 9)]);
    expect(ties?.pair.map((t) => t.from.ref.of)).toEqual(['north', 'east']); // nearest first
    expect(ties?.side).toBe('right');
  });

  it('is at least as good as every other pair, by the ellipse of the two-tape covariance', () => {
    const next = seeded(11);
    for (let trial = 0; trial < 40; trial++) {
      const posts = Array.from({ length: 9 }, (_, i) => post(`p${i}`, next() * 24 - 12, next() * 24 - 12));
      const ties = tiesAt(ORIGIN, posts);
      const places = posts.map((p) => p.vertices[0]?.spot as Extract<Spot, { by: 'coordinates' }>);
      let least = Infinity;
      for (const [i, a] of places.entries()) {
        for (const b of places.slice(i + 1)) {
          const sigma = (of: Point) => Math.hypot(TAPE.sigma, distance(of, ORIGIN) / 1000);
          const fix = tapeFixCovariance({ p: ORIGIN, a, b, sigmaA: sigma(a), sigmaB: sigma(b) });
          least = Math.min(least, errorEllipse(fix).semiMajor);
        }
      }
      expect(ties?.worstAxis, `trial ${trial}`).toBeLessThan(least + 2e-6);
      expect(ties?.worstAxis, `trial ${trial}`).toBeGreaterThan(least - 1e-9);
    }
  });

  it('tries the nearest references, whatever their order in the file', () => {
    const next = seeded(5);
    const posts = Array.from({ length: 120 }, (_, i) => post(`p${i}`, next() * 40 - 20, next() * 40 - 20));
    const spots = posts.map((p) => p.vertices[0]?.spot as Extract<Spot, { by: 'coordinates' }>);
    const fourteenth = spots.map((s) => distance(s, ORIGIN)).sort((a, b) => a - b)[13] ?? 0;
    const ties = tiesAt(ORIGIN, posts);
    for (const tie of [...(ties?.pair ?? []), ties?.check])
      expect(tie?.distance).toBeLessThanOrEqual(fourteenth);
    const turned = tiesAt(ORIGIN, posts.toReversed());
    expect(names(turned)).toEqual(names(ties));
  });

  it('does not stretch a tape through a building, but does along its wall', () => {
    const posts = [post('east', 10, 0), post('north', 0, 10), post('west', -10, 1)];
    expect(names(tiesAt(ORIGIN, posts))).toContain('north');
    const shed = square('shed', 'shed', -1, 4, 2);
    expect(names(tiesAt(ORIGIN, [...posts, shed]))).not.toContain('north');
    const beside = square('beside', 'shed', 0, 4, 2);
    const ties = tiesAt(ORIGIN, [...posts, beside]);
    expect(ties?.pair.map((t) => t.from.key)).toBeDefined();
    expect(names(ties)).toContain('beside'); // its corner on the line of sight
  });

  it('finds none within too short a tape, and none from one line', () => {
    const posts = [post('east', 10, 0), post('north', 0, 10)];
    expect(tiesAt(ORIGIN, posts, { length: 9, sigma: 0.02 })).toBeNull();
    expect(tiesAt(ORIGIN, [post('east', 10, 0), post('west', -10, 0)])).toBeNull();
    expect(tiesAt(ORIGIN, [])).toBeNull();
  });

  it('does not take one place twice, nor the mark itself', () => {
    const twin = thing('twin', 'reference-point', [{ by: 'at', point: ref('east') }]);
    const close = post('close', 10, 0.1);
    const ties = tiesAt(ORIGIN, [
      post('east', 10, 0),
      twin,
      close,
      post('north', 0, 10),
      post('here', 0.1, 0),
    ]);
    expect(names(ties)).toEqual(['east', 'north']);
    expect(ties?.check).toBeNull();
  });

  it('prefers a measured reference to a near one that was put there by eye', () => {
    const guess = thing('guess', 'reference-point', [{ by: 'finger', x: 3, y: 0 }]);
    expect(names(tiesAt(ORIGIN, [guess, post('east', 20, 0), post('north', 0, 20)]))).toEqual([
      'east',
      'north',
    ]);
  });
});

describe('worstAxis', () => {
  it('is the larger half-axis of the two-tape ellipse', () => {
    const next = seeded(3);
    for (let trial = 0; trial < 500; trial++) {
      const [toA, toB] = [next() * 2 * Math.PI, next() * 2 * Math.PI];
      const [ra, rb] = [0.5 + next() * 40, 0.5 + next() * 40];
      const [sigmaA, sigmaB] = [0.005 + next() * 0.3, 0.005 + next() * 0.3];
      const a = { x: ra * Math.sin(toA), y: ra * Math.cos(toA) };
      const b = { x: rb * Math.sin(toB), y: rb * Math.cos(toB) };
      const sine = Math.abs(Math.sin(toA - toB));
      if (sine < 0.01) continue;
      const { semiMajor } = errorEllipse(tapeFixCovariance({ p: ORIGIN, a, b, sigmaA, sigmaB }));
      expect(worstAxis(sine, sigmaA, sigmaB) / semiMajor, `trial ${trial}`).toBeCloseTo(1, 9);
    }
  });

  it('never beats the worse tape, and grows as the cut closes', () => {
    expect(worstAxis(1, 0.02, 0.03)).toBeCloseTo(0.03, 12);
    expect(worstAxis(0.5, 0.02, 0.02)).toBeGreaterThan(0.02);
  });
});

describe('what is said of a mark’s ties', () => {
  const facts = { entry: 'head', path: 'main' };
  const said = (features: readonly Feature[], tape = TAPE) => {
    const site = yard({ ...tee(), tape, runs: [push(facts, [5])] });
    const derived = derive({ ...site, features: [...site.features.slice(0, 1), ...features] });
    return derived.findings.filter((f) => f.at.kind === 'reading').map((f) => f.code);
  };

  it('nothing when two tapes and a check cut well', () => {
    expect(said([post('p', 5, 8), post('q', 12, 5)])).toEqual([]);
  });

  it('that there are none, no check, or a weak cut', () => {
    expect(said([])).toEqual(['no-ties']);
    expect(said([post('p', 5, 8)])).toEqual(['no-check-tie']);
    expect(said([post('p', -8, 2)])).toEqual(['ties-weak', 'no-check-tie']);
    expect(said([post('p', 5, 8)], { length: 4, sigma: 0.02 })).toEqual(['no-ties']);
  });

  it('that one of them was put there by eye', () => {
    const guess = thing('guess', 'reference-point', [{ by: 'finger', x: 5, y: 8 }]);
    expect(said([guess])).toEqual(['no-check-tie', 'tie-from-assumed']);
  });

  it('that one of them was never measured to the pipe, though it was to other things', () => {
    // the house was put down by its corner, the pipe by coordinates; the post hangs on the house
    const corner = { by: 'finger', x: 4, y: 20 } as const;
    const wall = { by: 'course', azimuth: 90 * DEGREE, distance: 6 } as const;
    const back = { by: 'course', azimuth: 0, distance: 5 } as const;
    const house = thing('house', 'building', [corner, wall, back]);
    const nail = thing('nail', 'reference-point', [
      { by: 'bearing', from: ref('house', 'a'), azimuth: 180 * DEGREE, distance: 12 },
    ]);
    expect(said([house, nail])).toContain('tie-from-assumed');
    const derived = derive(yard({ ...tee(), features: [...tee().features, house, nail] }));
    expect(derived.points.get('nail/a')).toMatchObject({ measured: true, anchor: 'house/a' });
    expect(derived.references.find((r) => r.ref.of === 'nail')?.measured).toBe(false);
    expect(derived.references.find((r) => r.ref.of === 'head')?.measured).toBe(true);
  });

  it('nothing when the pipe was measured from a house that was put down by eye', () => {
    const house = thing('house', 'building', [
      { by: 'finger', x: 0, y: 6 },
      { by: 'course', azimuth: 90 * DEGREE, distance: 6 },
      { by: 'course', azimuth: 0, distance: 5 },
    ]);
    const from = (azimuth: number, distance: number): Spot => ({
      by: 'bearing',
      from: ref('house', 'a'),
      azimuth: azimuth * DEGREE,
      distance,
    });
    const facts = { features: [house, thing('head', 'cleanout', [from(180, 6)])] };
    const main = pipe('main', [{ by: 'at', point: ref('head') }, from(135, Math.hypot(6, 6))]);
    const derived = derive(
      yard({ ...facts, paths: [main], runs: [push({ entry: 'head', path: 'main' }, [3])] }),
    );
    expect(derived.findings.map((f) => f.code)).not.toContain('tie-from-assumed');
    expect(derived.references.every((r) => r.measured)).toBe(true);
  });

  it('that it lies under a building, and then has no ties', () => {
    const site = yard({ ...tee(), runs: [push(facts, [5])] });
    const derived = derive({ ...site, features: [...site.features, square('house', 'building', 3, -2, 4)] });
    expect(derived.findings).toMatchObject([
      { code: 'mark-under-building', severity: 'warning', values: { building: 'house' } },
    ]);
    expect(derived.marks[0]?.place?.ties).toBeNull();
  });
});
