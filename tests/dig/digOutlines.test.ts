import { digOutlines } from '@footmark/dig';
import { ringArea } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { pipe, typed } from '../../packages/site/src/testing/yard';
import { dug, feet, inFeet, spot, trench } from './digSite';

describe('digOutlines', () => {
  it('are the tops of digs, with the stretch that a trench follows; the bottom where its depth is not known', () => {
    const paths = [pipe('p', [spot(0, 0), spot(100, 0)])];
    const digs = [
      trench(10, 40, { depth: feet(6), bottomWidth: feet(2) }),
      trench(50, 60, { id: 'unknown' }),
    ];
    const { all } = dug({ things: { paths }, digging: { soil: 'b', digs } });
    const [only, unknown, ...others] = digOutlines(all);
    expect(others).toEqual([]);
    expect(unknown).toMatchObject({ id: 'unknown', depth: null });
    expect(unknown?.along?.halfWidth).toBeCloseTo(feet(1), 9);
    expect(ringArea(unknown?.ring ?? [])).toBeCloseTo(feet(2) * feet(10), 9);
    expect(only).toMatchObject({ id: 'trench', depth: feet(6) });
    expect(only?.along?.halfWidth).toBeCloseTo(feet(7), 9);
    // cut back 1 to 1 at the ends, too: 6 ft past the bottom
    expect(only?.along?.line.map(({ x, y }) => [inFeet(x), inFeet(y)])).toEqual(
      [4, 10, 40, 46].map((x) => [expect.closeTo(x, 9), expect.closeTo(0, 9)]),
    );
    expect(ringArea(only?.ring ?? [])).toBeCloseTo(feet(14) * feet(42), 9);
  });

  it('leave out ground that a dig only goes round', () => {
    const corners: readonly [number, number][] = [
      [0, 0],
      [20, 0],
      [20, 20],
      [0, 20],
      [0, 0.5],
    ];
    const paths = [
      pipe(
        'p',
        corners.map(([x, y]) => typed(x, y)),
      ),
    ];
    const digs = [{ ...trench(0, 999, { depth: 1, bottomWidth: 1, protection: 'shield' }) }];
    const { all } = dug({ things: { paths }, digging: { digs } });
    expect(all[0]?.top?.outline).toHaveLength(2);
    expect(digOutlines(all)).toHaveLength(1);
  });
});
