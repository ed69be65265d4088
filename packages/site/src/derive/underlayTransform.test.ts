import { distance, type Point } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Underlay, UnderlayFit } from '../document/underlay';
import { DEGREE, ref, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';
import { pixelToPlan, planToPixel, underlayTransform } from './underlayTransform';

const SIZE = { widthPx: 800, heightPx: 600 };

function lies(fit: UnderlayFit, points: ReadonlyMap<string, { at: Point }> = new Map()) {
  const found = underlayTransform({ ...SIZE, fit }, points);
  if (!found.ok) throw new Error(found.code);
  return found.value;
}

function picture(fit: UnderlayFit): Underlay {
  return { id: 'u', name: 'Plat', file: 'f', ...SIZE, fit, opacity: 1, shown: true, locked: false };
}

function expectAt(found: Point, x: number, y: number): void {
  expect(found.x).toBeCloseTo(x, 9);
  expect(found.y).toBeCloseTo(y, 9);
}

const pairOf = (pixel: Point, at: Point) => ({ pixel, to: { is: 'place' as const, at } });

describe('a picture by eye', () => {
  it('lies with its middle at a place, its pixels counted down', () => {
    const by = lies({ by: 'finger', middle: { x: 10, y: 20 }, metresPerPixel: 0.05, upAzimuth: 0 });
    expectAt(pixelToPlan(by, { x: 400, y: 300 }), 10, 20);
    expectAt(pixelToPlan(by, { x: 0, y: 0 }), -10, 35); // top left: 400 px west, 300 px north
    expect(by.metresPerPixel).toBeCloseTo(0.05, 12);
  });

  it('turns clockwise with the azimuth of its upward edge', () => {
    const by = lies({ by: 'finger', middle: { x: 0, y: 0 }, metresPerPixel: 0.1, upAzimuth: 90 * DEGREE });
    expectAt(pixelToPlan(by, { x: 400, y: 0 }), 30, 0); // the middle of the upper edge lies to the east
    expectAt(planToPixel(by, { x: 30, y: 0 }), 400, 0);
  });
});

describe('a picture by a known span', () => {
  it('has the span’s length and direction', () => {
    const by = lies({
      by: 'span',
      from: { x: 100, y: 500 },
      to: { x: 100, y: 100 },
      distance: 20,
      at: { x: 5, y: 6 },
      azimuth: 90 * DEGREE,
    });
    expectAt(pixelToPlan(by, { x: 100, y: 500 }), 5, 6);
    expectAt(pixelToPlan(by, { x: 100, y: 100 }), 25, 6);
    expect(by.metresPerPixel).toBeCloseTo(0.05, 12);
  });

  it('of nothing cannot be fitted', () => {
    const at = { x: 7, y: 7 };
    const fit = { by: 'span', from: at, to: at, distance: 20, at: { x: 0, y: 0 }, azimuth: 0 } as const;
    expect(underlayTransform({ ...SIZE, fit }, new Map())).toEqual({
      ok: false,
      code: 'underlay-span-is-nothing',
    });
    const { underlays, findings } = derive({ ...yard(), underlays: [picture(fit)] });
    expect(underlays.size).toBe(0);
    expect(findings).toMatchObject([
      { code: 'underlay-span-is-nothing', severity: 'error', values: { underlay: 'Plat' } },
    ]);
  });
});

describe('a picture by pairs', () => {
  const truth = lies({ by: 'finger', middle: { x: 40, y: -7 }, metresPerPixel: 0.03, upAzimuth: 0.7 });
  const pixels = [
    { x: 10, y: 20 },
    { x: 780, y: 30 },
    { x: 700, y: 580 },
    { x: 15, y: 560 },
    { x: 390, y: 300 },
  ];
  const pairs = pixels.map((pixel) => pairOf(pixel, pixelToPlan(truth, pixel)));

  it('finds the lie that the pairs were made from, and goes both ways', () => {
    for (const count of [2, 3, 5]) {
      const by = lies({ by: 'pairs', pairs: pairs.slice(0, count) });
      for (const pixel of [{ x: 0, y: 0 }, ...pixels]) {
        expect(distance(pixelToPlan(by, pixel), pixelToPlan(truth, pixel))).toBeLessThan(1e-9);
        expect(distance(planToPixel(by, pixelToPlan(by, pixel)), pixel)).toBeLessThan(1e-8);
      }
      expect(by.residuals).toHaveLength(count);
      expect(by.sigma === null).toBe(count === 2);
    }
  });

  it('follows the points of the plan that it is fitted to', () => {
    const fit: UnderlayFit = {
      by: 'pairs',
      pairs: [
        { pixel: { x: 0, y: 600 }, to: { is: 'point', point: ref('A') } },
        { pixel: { x: 800, y: 600 }, to: { is: 'point', point: ref('B') } },
      ],
    };
    const posts = (x: number) => [
      thing('A', 'reference-point', [typed(0, 0)]),
      thing('B', 'reference-point', [typed(x, 0)]),
    ];
    const scaleFor = (x: number) =>
      derive({ ...yard({ features: posts(x) }), underlays: [picture(fit)] }).underlays.get('u')
        ?.metresPerPixel;
    expect(scaleFor(16)).toBeCloseTo(0.02, 12);
    expect(scaleFor(40)).toBeCloseTo(0.05, 12);
  });

  it('names the pair that the others contradict', () => {
    const wrong = pairs.map((p, i) =>
      i === 2
        ? pairOf(p.pixel, { x: p.to.at.x + 1.5, y: p.to.at.y })
        : pairOf(p.pixel, { ...p.to.at, x: p.to.at.x + 0.01 * (i % 2) }),
    );
    const { findings } = derive({ ...yard(), underlays: [picture({ by: 'pairs', pairs: wrong })] });
    expect(findings).toMatchObject([
      { code: 'underlay-pair-disagrees', values: { underlay: 'Plat', pair: 3 } },
    ]);
    const by = findings[0]?.code === 'underlay-pair-disagrees' ? findings[0].values.by : 0;
    expect(Math.abs(by - 1.5)).toBeLessThan(0.05);
    expect(derive({ ...yard(), underlays: [picture({ by: 'pairs', pairs })] }).findings).toEqual([]);
  });

  it('cannot be fitted to one place', () => {
    const same = pixels.map((pixel) => pairOf(pixel, { x: 1, y: 1 }));
    expect(derive({ ...yard(), underlays: [picture({ by: 'pairs', pairs: same })] }).findings).toMatchObject([
      { code: 'underlay-pairs-coincide' },
    ]);
  });
});
