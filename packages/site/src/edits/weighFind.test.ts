import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import { openSiteValue } from '../document/openSite';
import type { Run } from '../document/run';
import type { Site } from '../document/site';
import { fitRuns } from '../fit/fitRuns';
import { find, foundYard, given } from '../testing/foundYard';
import { thing } from '../testing/yard';
import { addFeature } from './featureEdits';
import { takeFit } from './takeFit';
import { canWeigh, weighFind } from './weighFind';

const offset = { by: 'paint', along: 0.5, right: 0.2 } as const;

function weighed(site: Site): Site {
  const after = weighFind(site, { id: 'f1', name: 'A1 seen', derived: derive(site) });
  expect(openSiteValue(after).ok).toBe(true);
  return after;
}

const withRun = (site: Site, facts: Partial<Run>): Site => ({
  ...site,
  runs: site.runs.map((run) => ({ ...run, ...facts })),
});

describe('a find that is weighed', () => {
  it('is a locate of a pipe that was seen, and draws the fit as one that was typed does', () => {
    const loose = { ...given, ties: [] };
    const site = foundYard([
      find({ id: 'f1', given: loose, where: offset, depth: { to: 'top', depth: 1.2 } }),
    ]);
    const after = weighed(site);
    const [locate] = derive(after).locates;
    expect(locate).toMatchObject({
      method: 'exposed',
      depth: 1.2,
      along: expect.closeTo(0.5, 9),
      across: expect.closeTo(0.2, 9),
    });
    const typed = addFeature(foundYard(), {
      feature: thing('f1', 'locate', [{ by: 'coordinates', x: 4.5, y: -0.2, sigma: 0.05 }], {
        reading: { run: 'run', reading: 'r1' },
        method: 'exposed',
        depth: 1.2,
      }),
    });
    const [own, other] = [fitRuns(after, derive(after)), fitRuns(typed, derive(typed))];
    const at = (fit: typeof own) => fit?.marks.get('r1')?.fitted?.at;
    expect(own?.status).toBe('fitted');
    expect(at(own)?.x).toBeCloseTo(at(other)?.x ?? 0, 9);
    expect(at(own)?.y).toBeCloseTo(at(other)?.y ?? 0, 9);
    // the evidence draws the mark to where it was found, away from where it was computed
    expect(at(own)?.x).toBeGreaterThan(4.05);
    expect(at(own)?.y).toBeLessThan(-0.1);
  });

  it('lies at the lens, a head’s length ahead of the sonde, whichever way the camera went', () => {
    const here = { by: 'paint', along: 0, right: 0 } as const;
    const head = { length: 0.4, zeroed: 'lens' } as const;
    const down = withRun(foundYard([find({ id: 'f1', given, where: here })]), { head });
    expect(derive(weighed(down)).locates[0]?.distance).toBeCloseTo(0, 9);
    const up = withRun(
      foundYard([find({ id: 'f1', given: { ...given, at: { x: 16, y: 0 }, ties: [] }, where: here })]),
      {
        head,
        entry: 'mh',
        direction: 'against-flow',
      },
    );
    const after = weighed(up);
    expect(derive(after).locates[0]?.distance).toBeCloseTo(0, 9);
    expect(after.features.at(-1)?.vertices[0]?.spot).toMatchObject({ x: expect.closeTo(16.4, 9) });
  });

  it('tells its depth to the top, also when it was measured to the invert', () => {
    const site = foundYard([find({ id: 'f1', given, where: offset, depth: { to: 'invert', depth: 1.3 } })]);
    const locate = weighed(site).features.at(-1);
    // clay of 0.1 m inside: less that and the share of it that its wall is taken as
    const depth = locate?.kind === 'locate' ? (locate.fields.depth ?? 0) : 0;
    expect(depth).toBeGreaterThan(1.15);
    expect(depth).toBeLessThan(1.2);
  });

  it('hangs on the references of its paint', () => {
    const site = foundYard([find({ id: 'f1', given, where: offset })]);
    const spot = weighed(site).features.at(-1)?.vertices[0]?.spot;
    // from the poles at (0, 3) and (8, 3) to (4.5, -0.2)
    expect(spot).toMatchObject({
      by: 'tapes',
      side: 'right',
      tapes: [
        { from: { of: 'p1' }, distance: expect.closeTo(Math.hypot(4.5, 3.2), 9) },
        { from: { of: 'p2' }, distance: expect.closeTo(Math.hypot(3.5, 3.2), 9) },
      ],
    });
  });

  it('keeps the tapes that it was found by', () => {
    const tapes = given.ties;
    const site = foundYard([find({ id: 'f1', where: { by: 'tapes', tapes, side: 'right' } })]);
    expect(weighed(site).features.at(-1)?.vertices[0]?.spot).toEqual({ by: 'tapes', tapes, side: 'right' });
  });

  it('is no second opinion of a fit that was taken with it', () => {
    const site = weighed(foundYard([find({ id: 'f1', given, where: offset })]));
    const before = derive(site);
    expect(before.foundAccuracy?.independent).toBe(true);
    const fit = fitRuns(site, before);
    if (fit === null) return expect.fail('nobody stopped it');
    const taken = derive(takeFit(site, { fit, places: before.points }));
    expect(taken.foundAccuracy).toMatchObject({ count: 1, independent: false });
    expect(taken.foundAccuracy?.rmse).toBeLessThan(before.foundAccuracy?.rmse ?? 0);
  });

  it('is weighed once, and only what was laid bare at a mark with a place', () => {
    const site = foundYard([
      find({ id: 'f1', given, where: offset }),
      find({ id: 'f2', given, where: offset, state: 'dug' }),
      find({ id: 'f3', given }),
      find({ id: 'f4', about: { is: 'place' }, where: { by: 'coordinates', x: 1, y: 1 } }),
      find({ id: 'f5', about: { is: 'mark', run: 'run', reading: 'old' }, given, where: offset }),
    ]);
    const can = (of: Site) => derive(of).found.map((one) => canWeigh(of, one));
    expect(can(site)).toEqual([true, false, false, false, false]);
    const after = weighed(site);
    expect(can(after)).toEqual([false, false, false, false, false]);
    expect(() => weighFind(after, { id: 'f1', name: '', derived: derive(after) })).toThrow(RangeError);
    expect(() => weighFind(site, { id: 'gone', name: '', derived: derive(site) })).toThrow('gone');
  });
});
