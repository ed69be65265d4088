// What is said of a drain's fall: against IPC Table 704.1 (as adopted by Chicago, 18-29-704.1) and UPC 708.1, worked by hand.

import { type DrainFinding, drainChecks } from '@footmark/dig';
import { derive, FOOT_M, INCH_M, type Path } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { pipe, ref, thing } from '../../packages/site/src/testing/yard';
import { digSite, feet, inFeet, spot } from './digSite';
import { drain, type Facts, four, type Levels, topDepth } from './drainSite';

const invert = (inches: number, sigma: number | undefined = 0.0001): Levels => ({
  level: { is: 'invert', level: inches * INCH_M, sigma },
});

/** 50 ft of a drain of 4 in that falls by so many inches. */
function falling(inches: number, state: Path['state'] = 'proposed', facts: Facts = {}, sigma?: number) {
  const ends = [
    [0, 0, invert(300, sigma)],
    [50, 0, invert(300 - inches, sigma)],
  ] as const;
  return onlyFall(drain(ends, { state, ...facts }).findings);
}

const onlyFall = (findings: readonly DrainFinding[]) =>
  findings.filter((f) => f.code.startsWith('fall-') && f.code !== 'fall-less-than-elsewhere');

describe('the fall that levels tell', () => {
  // 1/8 in per foot for 3 to 6 in: 50 ft fall 6.25 in; an inch per 50 ft is short of it by 5.25 in
  it('of a planned drain has to be what is asked, and says how much is short, by which rule', () => {
    const [finding, ...others] = falling(1);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      code: 'fall-too-little',
      severity: 'must',
      at: { kind: 'path', id: 'p' },
      rule: 'fallMiddle',
      place: { x: expect.closeTo(feet(25), 6), y: expect.closeTo(0, 6) },
      values: { state: 'proposed', short: expect.closeTo(5.25 * INCH_M, 6) },
    });
    expect(falling(7)).toEqual([]);
  });

  it('against the flow is worse than none', () => {
    expect(falling(-2)).toMatchObject([
      {
        code: 'fall-against-flow',
        severity: 'must',
        rule: 'fallMiddle',
        values: { short: expect.closeTo(8.25 * INCH_M, 6) },
      },
    ]);
  });

  it('of a pipe that lies is something to look at', () => {
    for (const state of ['existing', 'as-built'] as const) {
      expect(falling(1, state)).toMatchObject([{ code: 'fall-too-little', severity: 'should' }]);
      expect(falling(-2, state)).toMatchObject([{ code: 'fall-against-flow', severity: 'should' }]);
    }
  });

  // UPC 708.1: 1/4 in per foot: 50 ft fall 12.5 in
  it('is held against the code of the site', () => {
    expect(falling(7, 'proposed', { rules: { set: 'us-upc' } })).toMatchObject([
      { code: 'fall-too-little', values: { short: expect.closeTo(5.5 * INCH_M, 6) } },
    ]);
  });

  // two levels of 0.1 ft: 1.96 × 0.1 ft × √2 = 3.3 in either way, and 7 in is 0.75 in more than is asked
  it('that levels cannot tell is said too', () => {
    const open = falling(7, 'proposed', {}, 0.1 * FOOT_M);
    expect(open).toMatchObject([
      { code: 'fall-not-sure', severity: 'should', rule: 'fallMiddle', values: { others: 0 } },
    ]);
    expect(falling(7, 'existing', {}, 0.1 * FOOT_M)).toMatchObject([{ severity: 'note' }]);
  });

  // 50 ft, 50 ft and 100 ft, by hand: 1/8 in per foot asks for 6.25 in of 50 ft; levels of 0.01 ft leave 0.33 in either way open
  it('is told of the same pieces in the same numbers as the checks of the levels do, and whether all of it falls enough', () => {
    const rough = 0.01 * FOOT_M;
    const { site, findings } = drain([
      [0, 0, invert(300, rough)],
      [50, 0, invert(293.8, rough)],
      [100, 0, invert(293, rough)],
      [150, 0, invert(294, rough)],
      [200, 0, invert(287.8, rough)],
      [400, 0, invert(240, rough)],
    ]);
    const told = derive(site).findings.filter((f) => f.code.startsWith('slope-'));
    const same = {
      'slope-too-flat': 'fall-too-little',
      'slope-against-flow': 'fall-against-flow',
      'slope-unsure': 'fall-not-sure',
    };
    expect(told.map((f) => f.code).toSorted()).toEqual(Object.keys(same).toSorted());
    const falls = onlyFall(findings);
    expect(falls).toHaveLength(3);
    for (const { code, values } of told)
      expect(falls.find((f) => f.code === same[code as keyof typeof same])?.values).toMatchObject(values);
    expect(falls.find((f) => f.code === 'fall-not-sure')?.values).toMatchObject({ others: 1, whole: true });
  });
});

// 10 NYCRR 75-A.5: house sewers fall 1/4 in per foot
describe('what other codes ask', () => {
  const noted = (inches: number, state: Path['state'] = 'proposed') =>
    drain(
      [
        [0, 0, invert(300)],
        [50, 0, invert(300 - inches)],
      ],
      { state },
    ).findings.filter((f) => f.code === 'fall-less-than-elsewhere');

  it('is told of a planned drain that has what is asked here', () => {
    expect(noted(7)).toMatchObject([{ severity: 'note', rule: 'fallLocal' }]);
    expect(noted(12.5)).toEqual([]);
    expect(noted(1)).toEqual([]);
    expect(noted(7, 'existing')).toEqual([]);
  });
});

describe('the fall that is planned without levels', () => {
  const planned = (slope: number, state: Path['state'] = 'proposed') =>
    onlyFall(
      drain(
        [
          [0, 0],
          [50, 0],
        ],
        { state, stretches: [{ ...four, slope }] },
      ).findings,
    ).map((f) => [f.code, f.severity]);

  it('has to be what is asked', () => {
    expect(planned(0.001)).toEqual([
      ['fall-said-too-little', 'must'],
      ['fall-not-known', 'note'],
    ]);
  });

  // IRC P3005.3 calls 1/8 in 12 "1 percent", though it is 1.04 %
  it('may be rounded as the code rounds it', () => {
    expect(planned(0.01)).toEqual([['fall-not-known', 'note']]);
    expect(planned(0.009)).toContainEqual(['fall-said-too-little', 'must']);
  });

  it('counts for nothing of a pipe that lies', () => {
    expect(planned(0.001, 'existing')).toEqual([]);
  });

  it('counts past the last level', () => {
    const { findings } = drain(
      [
        [0, 0, invert(300)],
        [50, 0, invert(290)],
        [80, 0],
      ],
      { state: 'proposed', stretches: [{ ...four, slope: 0.001 }] },
    );
    const [said, ...others] = onlyFall(findings);
    expect(others).toEqual([]);
    expect(said).toMatchObject({ code: 'fall-said-too-little' });
    if (said?.code === 'fall-said-too-little')
      expect([said.values.from, said.values.to].map(inFeet)).toEqual([
        expect.closeTo(50, 6),
        expect.closeTo(80, 6),
      ]);
  });
});

// a drain cannot run uphill into the main (hydraulics, no source needed): its invert at the end lies no lower than the tap's
describe('where it comes out', () => {
  function ending(
    inches: number,
    { tied = false, state = 'proposed' as Path['state'], sigma = 0.0001 } = {},
  ) {
    const end = {
      spot: tied ? ({ by: 'at', point: ref('t') } as const) : spot(50, 0),
      ...invert(inches, sigma),
    };
    const site = digSite({
      things: {
        paths: [pipe('p', [{ spot: spot(0, 0), ...invert(300) }, end], { state, stretches: [four] })],
        features: [thing('t', 'tap', [spot(50, tied ? 0 : 1)], { invert: 250 * INCH_M })],
      },
    });
    return drainChecks(site, derive(site)).findings.filter((f) => f.code === 'end-below-tap');
  }

  it.each([true, false])('lies no lower than the tap (tied to it: %s)', (tied) => {
    expect(ending(238, { tied })).toMatchObject([
      {
        severity: 'must',
        place: { x: expect.closeTo(feet(50), 6), y: expect.closeTo(0, 6) },
        values: { tap: 't', by: expect.closeTo(12 * INCH_M, 6), sure: true },
      },
    ]);
    expect(ending(251, { tied })).toEqual([]);
  });

  it('is to be looked at where it lies already, or where the levels leave it open', () => {
    expect(ending(238, { state: 'existing' })).toMatchObject([{ severity: 'should' }]);
    expect(ending(249, { sigma: 0.03 })).toMatchObject([{ severity: 'should', values: { sure: false } }]);
  });

  // by hand: 1/4 in per foot over 50 ft falls 12.5 in, 1/8 in per foot over 60 ft 7.5 in
  it.each([
    [50, 1 / 48, 12.5],
    [60, 1 / 96, 7.5],
  ])('at the tap, %d ft of a fall that leads to it, is not below it', (long, slope, fall) => {
    const { check, codes } = drain(
      [
        [0, 0, invert(48)],
        [long, 0],
      ],
      {
        state: 'proposed',
        stretches: [{ ...four, slope }],
        features: [thing('t', 'tap', [spot(long, 1)], { invert: (48 - fall) * INCH_M })],
      },
    );
    expect(check.tap?.below?.by).toBeCloseTo(0, 9);
    expect(codes).not.toContain('end-below-tap');
  });

  it('is told by depths below one ground too', () => {
    const depths = (end: number) => {
      const { findings } = drain(
        [
          [0, 0, topDepth(24)],
          [50, 0, topDepth(end)],
        ],
        { state: 'proposed', features: [thing('t', 'tap', [spot(50, 0)], { depth: 60 * INCH_M })] },
      );
      return findings.filter((f) => f.code === 'end-below-tap');
    };
    // the invert lies the bore and the wall below the top: 4 in and 0.12 in of 3.975 (ASTM D3034)
    expect(depths(60)).toMatchObject([
      { values: { by: expect.closeTo((4 + (4 * 0.12) / 3.975) * INCH_M, 5) } },
    ]);
    expect(depths(50)).toEqual([]);
  });
});
