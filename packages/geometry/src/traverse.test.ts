import { describe, expect, it } from 'vitest';
import { radians } from './angle';
import { compassBalance, type TraverseLeg, traverseClosure } from './traverse';

const straight = (azimuth: number, distance: number): TraverseLeg => ({
  kind: 'straight',
  azimuth: radians(azimuth),
  distance,
});

describe('traverseClosure', () => {
  it('comes back round a stadium of two sides and two half circles', () => {
    const half = (azimuth: number): TraverseLeg => ({
      kind: 'arc',
      radius: 5,
      sweep: Math.PI,
      chordAzimuth: radians(azimuth),
    });
    const closure = traverseClosure([straight(0, 20), half(90), straight(180, 20), half(270)]);
    expect(closure.misclosureLength).toBeLessThan(1e-12);
    expect(closure.perimeter).toBeCloseTo(40 + 10 * Math.PI, 12);
  });

  it('has the whole of one side for its misclosure, and nothing for none', () => {
    expect(traverseClosure([straight(90, 7)])).toMatchObject({ misclosureLength: 7, ratio: 1 });
    expect(traverseClosure([])).toMatchObject({ misclosureLength: 0, perimeter: 0, ratio: Infinity });
    expect(compassBalance([])).toEqual([]);
  });
});

describe('compassBalance', () => {
  it('lets an arc share by its length along, not by its chord', () => {
    const arc: TraverseLeg = { kind: 'arc', radius: 10, sweep: -Math.PI, chordAzimuth: radians(180) };
    const legs = [straight(0, 20.6), arc]; // 0.6 too far north; 20.6 of straight and 10π of arc
    const perimeter = 20.6 + 10 * Math.PI;
    const [up, down] = compassBalance(legs);
    expect(up?.y).toBeCloseTo(20.6 - (0.6 * 20.6) / perimeter, 12);
    expect(down?.y).toBeCloseTo(-20 - (0.6 * 10 * Math.PI) / perimeter, 12);
    expect((up?.y ?? 0) + (down?.y ?? 1)).toBeCloseTo(0, 12);
  });
});
