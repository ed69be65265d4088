import { describe, expect, it } from 'vitest';
import { fitRuns } from '../fit/fitRuns';
import { find, foundYard, given } from '../testing/foundYard';
import { derive } from './derive';
import { findInHole, findsOutside } from './findInHole';

function verdictAt(along: number, right: number) {
  const site = foundYard([find({ id: 'f1', given, where: { by: 'paint', along, right } })]);
  const derived = derive(site);
  const fit = fitRuns(site, derived);
  const zone = fit?.marks.get('r1')?.zone;
  const [place] = derived.found;
  if (fit === null || zone === undefined || place === undefined) return expect.fail('the mark has no zone');
  return { zone, verdict: findInHole(place, fit), outside: findsOutside(derived, fit) };
}

describe('a find', () => {
  const { zone } = verdictAt(0, 0);

  it('at its mark is in the zone', () => {
    expect(verdictAt(0, 0).verdict).toBe('in-zone');
  });

  it('in a corner of the hole is out of the ellipse', () => {
    const corner = verdictAt(0.49 * zone.hole.length, -0.49 * zone.hole.width);
    expect(corner.verdict).toBe('in-hole');
    expect(corner.outside).toEqual([]);
  });

  it('past an end or a side of the hole is outside, and that is said', () => {
    for (const [along, right] of [
      [0.51 * zone.hole.length, 0],
      [0, 0.51 * zone.hole.width],
    ] as const) {
      const { verdict, outside } = verdictAt(along, right);
      expect(verdict).toBe('outside');
      expect(outside).toMatchObject([
        {
          code: 'as-found-outside',
          at: { kind: 'reading', run: 'run', id: 'r1' },
          values: { along: expect.closeTo(along, 9), across: expect.closeTo(right, 9) },
        },
      ]);
    }
  });

  it('is in the zone just where its points on the plan are within the ellipse', () => {
    // the ellipse on the plan, point by point: half axes about the mark, the longer in its azimuth
    for (let i = 0; i < 24; i++) {
      const t = (i / 24) * 2 * Math.PI;
      for (const [scale, verdict] of [
        [0.98, true],
        [1.02, false],
      ] as const) {
        const [u, v] = [scale * zone.semiMajor * Math.cos(t), scale * zone.semiMinor * Math.sin(t)];
        const east = u * Math.sin(zone.azimuth) + v * Math.cos(zone.azimuth);
        const north = u * Math.cos(zone.azimuth) - v * Math.sin(zone.azimuth);
        expect(verdictAt(east, -north).verdict === 'in-zone', `${i} ${scale}`).toBe(verdict);
      }
    }
  });

  it('at no mark or without a place has no hole', () => {
    const free = find({ id: 'f1', about: { is: 'place' }, where: { by: 'coordinates', x: 4, y: 0 } });
    const site = foundYard([free, find({ id: 'f2', given })]);
    const derived = derive(site);
    const fit = fitRuns(site, derived);
    if (fit === null) return expect.fail('nobody stopped it');
    expect(derived.found.map((one) => findInHole(one, fit))).toEqual([null, null]);
  });
});
