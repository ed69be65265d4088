// Turns of a hand-drawn pipe: handbook ratios of offsets with equal bends (travel = offset × 1.41421 at 45°, × 2.61313 at 22.5°).
import { movePlanned, turnPlace } from '@footmark/reroute';
import { derive, type Path, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { at, straightDrain } from './drain';

const REACH = 0.5;

describe('a point that is dragged', () => {
  // 1 m aside, from a leg to the north to another one
  const offset = (to: { x: number; y: number }) => [{ x: 0, y: -5 }, { x: 0, y: 0 }, to, { x: 1, y: 10 }];

  it.each([
    ['1/8', 1.2, 1, Math.SQRT2],
    ['1/16', 0.8, 1 / Math.tan(Math.PI / 8), 2.61313],
  ])('is put where two bends of %s make the offset', (_, x, run, travel) => {
    const found = turnPlace(offset({ x: 1, y: 4 }), 2, { x, y: run + 0.2 }, REACH);
    expect(found?.x).toBeCloseTo(1, 9);
    expect(found?.y).toBeCloseTo(run, 9);
    expect(Math.hypot(found?.x ?? 0, found?.y ?? 0)).toBeCloseTo(travel, 4);
  });

  it('between two legs that have no others turns by the bend alone: every such place sees them under one angle', () => {
    const [a, b] = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
    ];
    for (const p of [
      { x: 5, y: 2.2 },
      { x: 3, y: -1.7 },
      { x: 7, y: 1 },
    ]) {
      const found = turnPlace([a, p, b], 1, p, REACH) ?? { x: NaN, y: NaN };
      const turn = Math.abs(
        Math.atan2(found.y - a.y, found.x - a.x) - Math.atan2(b.y - found.y, b.x - found.x),
      );
      const bends = [1 / 16, 1 / 8, 1 / 6, 1 / 4].map((share) => 2 * Math.PI * share);
      expect(Math.min(...bends.map((bend) => Math.abs(bend - turn)))).toBeLessThan(1e-9);
    }
  });

  it('is left where the hand is when no such place is near', () => {
    expect(turnPlace(offset({ x: 1, y: 4 }), 2, { x: 6, y: 3 }, 0.05)).toBeNull();
  });

  it('at an end is drawn to the lines that leave its neighbour by a bend', () => {
    const found = turnPlace(
      [
        { x: 0, y: 0 },
        { x: 0, y: 5 },
        { x: 3, y: 9 },
      ],
      2,
      { x: 3, y: 8.2 },
      REACH,
    );
    expect((found?.y ?? 0) - 5).toBeCloseTo(found?.x ?? NaN, 9);
  });

  it('does the same mirrored', () => {
    const mirrored = (p: { x: number; y: number }) => ({ x: -p.x, y: p.y });
    const found = turnPlace(offset({ x: 1, y: 4 }), 2, { x: 1.2, y: 1.2 }, REACH);
    const other = turnPlace(offset({ x: 1, y: 4 }).map(mirrored), 2, { x: -1.2, y: 1.2 }, REACH);
    expect(other).toEqual({ x: -(found?.x ?? 0), y: found?.y });
  });
});

it('the fittings of a planned pipe follow: a turn that is a bend is one, another is none', () => {
  const eighth = Math.PI / 4;
  const path: Path = {
    id: 'n',
    name: 'New',
    state: 'proposed',
    bendRadius: 0.2286,
    vertices: [
      { id: 'a', spot: at(0, 0) },
      { id: 'b', spot: at(0, 5), bend: eighth, bendRadius: 0.2286 },
      { id: 'c', spot: at(3, 8), bend: eighth, bendRadius: 0.2286 },
      { id: 'd', spot: at(3, 14) },
    ],
    stretches: [{ from: 0, material: 'plastic', diameter: 0.1, slope: 0.02 }],
  };
  const site: Site = { ...straightDrain(), paths: [path] };
  const moved = (x: number, y: number) =>
    movePlanned(site, { ref: { of: 'n', at: 'c' }, to: { x, y }, places: derive(site).points }).paths[0]
      ?.vertices;
  // straight on, then an eighth at the third point
  expect(moved(3, 3 / Math.tan(Math.PI / 8) + 5)?.map((v) => v.bend)).toEqual([
    undefined,
    expect.closeTo(Math.PI / 8, 12),
    expect.closeTo(Math.PI / 8, 12),
    undefined,
  ]);
  expect(moved(3, 9)?.map((v) => v.bend)).toEqual([undefined, undefined, undefined, undefined]);
  expect(moved(3, 9)?.[2]?.spot).toEqual({ by: 'finger', x: 3, y: 9 });
});
