import { derive, type PathProfile, profileAt } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { pipe, push, square, thing, typed, yard } from '../../../site/src/testing/yard';
import { drawProfile } from './drawProfile';
import { profileSamples } from './profileSamples';

const invert = (level: number, sigma = 0.01) => ({ level: { is: 'invert', level, sigma } }) as const;

/** 20 m of pipe from a house over a drop, with a sag that a run saw; the last 6 m beyond the last level. */
function profile(): PathProfile {
  const site = yard({
    features: [
      square('house', 'building', -2, -3, 6),
      thing('co', 'cleanout', [typed(0, 0)]),
      thing('a', 'spot-level', [typed(5, 0)], { level: 12 }),
      thing('b', 'spot-level', [typed(15, 0)], { level: 11.8 }),
    ],
    paths: [
      pipe(
        'p',
        [
          { spot: typed(0, 0), ...invert(10) },
          { spot: typed(8, 0), drop: 0.3 },
          { spot: typed(14, 0), ...invert(9.42) },
          { spot: typed(20, 0) },
        ],
        { stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: 0.02 }] },
      ),
    ],
    runs: [push({ entry: 'co', path: 'p' }, [{ counter: 9, to: 12, seen: 'sag', water: 0.4 }])],
  });
  const found = derive(site).profiles.get('p');
  if (found === undefined) throw new Error('no profile');
  return found;
}

describe('a pipe drawn in elevation', () => {
  const shown = profile();
  const { lines, heights } = drawProfile(shown);
  const pens = (ink: string) => lines.filter((l) => l.stroke?.ink === ink);

  it('has its ground where it is known, dashed where it is held level, none under the house', () => {
    const ground = [...pens('ink'), ...pens('assumed')];
    expect(Math.min(...ground.flatMap((l) => l.points.map((p) => p.x)))).toBeCloseTo(4, 4);
    expect(pens('ink').every((l) => l.stroke?.dash === undefined)).toBe(true);
    const solid = pens('ink').flatMap((l) => l.points.map((p) => p.x));
    expect([Math.min(...solid), Math.max(...solid)]).toEqual([5, 15]);
  });

  it('is dashed beyond the last level only, and its line has no gap', () => {
    const inverts = pens('sewer').filter((l) => l.stroke?.weight === 0.7);
    expect(inverts.map((l) => l.stroke?.dash !== undefined)).toEqual([false, true]);
    expect(inverts[0]?.points.at(-1)).toEqual(inverts[1]?.points[0]);
    expect(inverts[0]?.points.at(-1)?.x).toBeCloseTo(14, 9);
  });

  it('steps straight down at a drop', () => {
    const at = pens('sewer')
      .find((l) => l.stroke?.weight === 0.7)
      ?.points.filter((p) => p.x === 8)
      .map((p) => p.y);
    expect(at).toHaveLength(2);
    expect((at?.[0] ?? 0) - (at?.[1] ?? 0)).toBeCloseTo(0.3, 9);
  });

  it('has level water in its sag, as deep as it was seen', () => {
    const [water] = lines.filter((l) => l.fill?.ink === 'water');
    const ys = water?.points.map((p) => p.y) ?? [];
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(0.04, 9);
    const [top] = pens('water');
    expect(top?.points[0]?.y).toBe(top?.points[1]?.y);
  });

  it('lies within the range that holds 95 of 100 inverts', () => {
    const range = lines.find((l) => l.fill?.opacity === 0.12)?.points ?? [];
    for (const sample of profileSamples(shown)) {
      const { invert: at = Number.NaN, sigma = Number.NaN } = profileAt(shown, sample.station).pipe ?? {};
      const edges = range.filter((p) => p.x === sample.station).map((p) => p.y);
      expect(edges.some((y) => Math.abs(y - at - 1.96 * sigma) < 1e-9)).toBe(true);
      expect(edges.some((y) => Math.abs(at - y - 1.96 * sigma) < 1e-9)).toBe(true);
    }
  });

  it('tells its lowest and highest', () => {
    const all = lines.flatMap((l) => l.points.map((p) => p.y));
    expect(heights).toEqual({ low: Math.min(...all), high: Math.max(...all) });
  });

  it('is nothing where nothing is known', () => {
    const site = yard({ paths: [pipe('p', [typed(0, 0), typed(5, 0)])] });
    const bare = derive(site).profiles.get('p');
    expect(bare && drawProfile(bare)).toEqual({ lines: [], heights: null });
  });
});
