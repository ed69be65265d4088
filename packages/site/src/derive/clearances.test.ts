import type { Point } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Feature } from '../document/feature';
import { square, thing, typed, yard } from '../testing/yard';
import { nearestClearances, obstacleGroups } from './clearances';
import { derive } from './derive';

function clearances(mark: Point, ...features: readonly Feature[]) {
  const derived = [...derive(yard({ features: [...features] })).features.values()];
  return nearestClearances(mark, obstacleGroups(derived));
}

const ORIGIN = { x: 0, y: 0 };

describe('nearestClearances', () => {
  it('measures to the face of a trunk', () => {
    const [tree] = clearances(ORIGIN, thing('oak', 'tree', [typed(3, 4)], { trunkDiameter: 1 }));
    expect(tree).toMatchObject({ feature: 'oak', kind: 'tree', distance: 4.5, toCentre: false });
    expect(tree?.at.x).toBeCloseTo(2.7, 12);
    expect(tree?.at.y).toBeCloseTo(3.6, 12);
  });

  it('is negative within the trunk', () => {
    const [tree] = clearances(ORIGIN, thing('oak', 'tree', [typed(0, 0.3)], { trunkDiameter: 1 }));
    expect(tree?.distance).toBeCloseTo(-0.2, 12);
  });

  it('measures to the centre when no diameter is given, and says so', () => {
    expect(clearances(ORIGIN, thing('oak', 'tree', [typed(3, 4)]))).toMatchObject([
      { distance: 5, toCentre: true },
    ]);
  });

  it('takes the thicker trunk further away when its face is nearer', () => {
    const near = thing('near', 'tree', [typed(2, 0)], { trunkDiameter: 0.1 });
    const thick = thing('thick', 'tree', [typed(0, 3)], { trunkDiameter: 4 });
    expect(clearances(ORIGIN, near, thick)).toMatchObject([{ feature: 'thick', distance: 1 }]);
  });

  it('measures to a boundary from either side, never negative, also to its closing leg', () => {
    const lot = square('lot', 'boundary', -2, -5, 20);
    expect(clearances(ORIGIN, lot)).toMatchObject([{ kind: 'boundary', distance: 2, at: { x: -2, y: 0 } }]);
    expect(clearances({ x: -5, y: 0 }, lot)).toMatchObject([{ distance: 3, at: { x: -2, y: 0 } }]);
  });

  it('takes a boundary drawn as a line and one drawn as a lot as one question', () => {
    const line = thing('line', 'boundary-line', [typed(-9, 1), typed(9, 1)]);
    expect(clearances(ORIGIN, square('lot', 'boundary', -2, -5, 20), line)).toMatchObject([
      { feature: 'line', distance: 1 },
    ]);
  });

  it('is negative inside an outline, by the depth', () => {
    expect(clearances(ORIGIN, square('house', 'building', -1, -3, 10))).toMatchObject([{ distance: -1 }]);
  });

  it('keeps the deepest of two outlines that hold the mark, in either order', () => {
    const [shallow, deep] = [
      square('shallow', 'easement', -1, -5, 10),
      square('deep', 'easement', -4, -5, 10),
    ];
    expect(clearances(ORIGIN, shallow, deep)).toMatchObject([{ feature: 'deep', distance: -4 }]);
    expect(clearances(ORIGIN, deep, shallow)).toMatchObject([{ feature: 'deep', distance: -4 }]);
  });

  it('lists the nearest of each kind, nearest first', () => {
    const found = clearances(
      ORIGIN,
      thing('pole', 'pole', [typed(0, 9)], { diameter: 0.5 }),
      thing('gas', 'service', [typed(-5, 2), typed(5, 2)], { carries: 'gas' }),
      thing('water', 'service', [typed(-5, 4), typed(5, 4)], { carries: 'water' }),
      square('house', 'building', 6, 0, 5),
    );
    expect(found.map((c) => [c.feature, c.distance])).toEqual([
      ['gas', 2],
      ['house', 6],
      ['pole', 8.75],
    ]);
  });
});
