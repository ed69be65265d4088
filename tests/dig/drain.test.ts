// What codes ask of a drain, against the printed values and the worked examples of the codes that are named beside each.

import type { DrainCheck } from '@footmark/dig';
import { INCH_M, type SiteRules } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { DEGREE, thing } from '../../packages/site/src/testing/yard';
import { feet, inFeet, spot } from './digSite';
import { drain, type Facts, four, type Levels, topDepth } from './drainSite';

/** Legs of a length (ft), each turned by so many degrees from the one before, to alternating sides or to one. */
function turning(leg: number, turns: readonly number[]): readonly (readonly [number, number])[] {
  const places: [number, number][] = [[0, 0]];
  let [x, y, heading] = [0, 0, 0];
  for (const turn of [0, ...turns]) {
    heading += turn * DEGREE;
    [x, y] = [x + leg * Math.cos(heading), y + leg * Math.sin(heading)];
    places.push([x, y]);
  }
  return places;
}

const ipc: Facts = { rules: { set: 'us-ipc' } };
const upc: Facts = { rules: { set: 'us-upc' } };
const asked = ({ check }: { check: DrainCheck }) =>
  check.cleanouts.map((c) => [c.reason, Number(inFeet(c.station).toFixed(3))] as const);
const forTurns = (result: { check: DrainCheck }) =>
  asked(result).filter(([r]) => r === 'turn' || r === 'turns');

describe('cleanouts at turns', () => {
  // IPC 708.1.4 (2018): at each change of direction over 45 degrees; UPC 707.4 (2012): for each aggregate change over 135 degrees
  it('one at a turn of 90 degrees by the IPC, none by the UPC', () => {
    expect(forTurns(drain(turning(20, [90]), ipc))).toEqual([['turn', 20]]);
    expect(forTurns(drain(turning(20, [90]), upc))).toEqual([]);
  });

  it('none for turns of 45 degrees by the IPC, however many', () => {
    expect(forTurns(drain(turning(10, [45, 45, 45, 45]), ipc))).toEqual([]);
    expect(forTurns(drain(turning(10, [45, -45]), ipc))).toEqual([]);
  });

  it('none for 45 + 45 + 45 = 135 degrees by the UPC, one for four of them', () => {
    expect(forTurns(drain(turning(10, [45, 45, 45]), upc))).toEqual([]);
    expect(forTurns(drain(turning(10, [45, 45, 45, 45]), upc))).toEqual([['turns', 40]]);
    expect(drain(turning(10, [45, -45, 45, -45]), upc).check.cleanouts.at(-1)?.turn).toBeCloseTo(Math.PI, 9);
  });

  // IPC 708.1.4: the first serves all such changes within 40 ft of developed length
  it('one for all sharp turns within 40 ft, a further one past that', () => {
    expect(forTurns(drain(turning(20, [90, -90, 90]), ipc))).toEqual([['turn', 20]]);
    expect(forTurns(drain(turning(20, [90, -90, 90, -90]), ipc))).toEqual([
      ['turn', 20],
      ['turn', 80],
    ]);
  });

  it('goes by what a fitting is known to turn', () => {
    const [a, b, c] = turning(20, [50]);
    if (a === undefined || b === undefined || c === undefined) throw new Error('three places');
    expect(forTurns(drain([a, b, c], ipc))).toHaveLength(1);
    expect(forTurns(drain([a, [...b, { bend: 45 * DEGREE }], c], ipc))).toHaveLength(0);
  });

  it('finds the one that is there, and starts the sum of turns anew at it', () => {
    const cleanout = (x: number, y: number) => thing('c', 'cleanout', [spot(x, y)]);
    const at = drain(turning(20, [90]), { ...ipc, features: [cleanout(20, 0)] });
    expect(at.check.cleanouts.find((c) => c.reason === 'turn')?.by).toBe('c');
    expect(at.codes).not.toContain('cleanout-at-turn');
    const [, , third = [0, 0]] = turning(10, [45, 45, 45, 45]);
    expect(
      forTurns(drain(turning(10, [45, 45, 45, 45]), { ...upc, features: [cleanout(...third)] })),
    ).toEqual([]);
  });
});

describe('cleanouts along a drain', () => {
  // UPC 707.4 (2012): at the upper end and for each 100 ft or fraction: 101 ft have two
  it('are two on 101 ft by the UPC, one on 100 ft', () => {
    expect(
      asked(
        drain(
          [
            [0, 0],
            [101, 0],
          ],
          upc,
        ),
      ),
    ).toEqual([
      ['head', 0],
      ['spacing', 100],
    ]);
    expect(
      asked(
        drain(
          [
            [0, 0],
            [100, 0],
          ],
          upc,
        ),
      ),
    ).toEqual([['head', 0]]);
  });

  // IPC 708.1.1 and 708.1.2 (from memory): not more than 100 ft apart; 115 ft have one between
  it('are one between the ends of 115 ft by the IPC', () => {
    const { check, codes } = drain(
      [
        [0, 0],
        [115, 0],
      ],
      ipc,
    );
    expect(check.cleanouts.filter((c) => c.reason === 'spacing').map((c) => inFeet(c.station))).toEqual([
      100,
    ]);
    expect(codes).toContain('cleanout-along');
    const between = { ...ipc, features: [thing('c', 'cleanout', [spot(60, 0)])] };
    expect(
      asked(
        drain(
          [
            [0, 0],
            [115, 0],
          ],
          between,
        ),
      ),
    ).toEqual([['head', 0]]);
  });

  // IPC 708.1.3: none at the upper end where one on a stack lies within 10 ft
  it('is none at the upper end with a stack within 10 ft', () => {
    const stack = (x: number) => ({ ...ipc, features: [thing('s', 'stack', [spot(x, 0)])] });
    expect(
      drain(
        [
          [0, 0],
          [50, 0],
        ],
        stack(9),
      ).codes,
    ).not.toContain('cleanout-at-head');
    expect(
      drain(
        [
          [0, 0],
          [50, 0],
        ],
        stack(11),
      ).codes,
    ).toContain('cleanout-at-head');
  });

  // UPC 707.4 (2012): a cleanout at the upper terminal, whatever stands there
  it('is one at the upper end by the UPC, also with a stack there', () => {
    const stack = thing('s', 'stack', [spot(0, 0)]);
    const places = [
      [0, 0],
      [50, 0],
    ] as const;
    expect(drain(places, { ...upc, features: [stack] }).codes).toContain('cleanout-at-head');
    expect(drain(places, { ...ipc, features: [stack] }).codes).not.toContain('cleanout-at-head');
  });
});

describe('fittings', () => {
  // IRC Table P3005.1: sixth bend yes, quarter bend only in fixture drains of 2 in and less (note a), long sweep yes
  it.each([
    [22.5, 4, 0, 0],
    [45, 4, 0, 0],
    [60, 4, 0, 0],
    [90, 4, 0, 1],
    [90, 2, 0, 0],
    [90, 4, 9, 0],
  ])('a turn of %d degrees in %d in with a radius of %d in: %d to look at', (turn, size, radius, notes) => {
    const { check, codes } = drain(turning(20, [turn]), {
      bendRadius: radius * INCH_M,
      stretches: [{ ...four, diameter: size * INCH_M }],
    });
    expect(check.sharpTurns).toHaveLength(notes);
    expect(codes.filter((c) => c === 'turn-needs-sweep')).toHaveLength(notes);
  });
});

describe('fall', () => {
  // IPC Table 704.1: 1/8 in per foot for 3 to 6 in: 50 ft of 4 in fall 6.25 in; 1/4 in per foot for 2 1/2 in and less: 12.5 in
  it.each([
    [4, 6.25],
    [2, 12.5],
    [8, 3.125],
  ])('of 50 ft of %d in is asked to be %d in', (size, inches) => {
    const { check } = drain(
      [
        [0, 0],
        [50, 0],
      ],
      { stretches: [{ ...four, diameter: size * INCH_M }] },
    );
    expect(check.fall.required / INCH_M).toBeCloseTo(inches, 9);
    expect(check.fall.available).toBeNull();
  });

  // UPC 708.1 (2015): 1/4 in per foot; 1/8 only once approved, for 3 in and larger (4 in and larger in earlier editions, from memory)
  const approved = (rule: 'fallMiddle' | 'fallMiddleFrom', value: number) =>
    ({ rule, value, who: 'code officer', why: 'the street sewer lies high' }) as const;
  const eighth = approved('fallMiddle', 1 / 96);
  it.each([
    [2, [], 12.5],
    [4, [], 12.5],
    [8, [], 12.5],
    [2, [eighth], 12.5],
    [3, [eighth], 6.25],
    [3, [eighth, approved('fallMiddleFrom', 4 * INCH_M)], 12.5],
    [4, [eighth, approved('fallMiddleFrom', 4 * INCH_M)], 6.25],
  ])('of 50 ft of %d in by the UPC, with %o changed, is asked to be %d in', (size, changed, inches) => {
    const { check } = drain(
      [
        [0, 0],
        [50, 0],
      ],
      { stretches: [{ ...four, diameter: size * INCH_M }], rules: { set: 'us-upc', changed } },
    );
    expect(check.fall.required / INCH_M).toBeCloseTo(inches, 9);
  });

  it('of 4 in at 3/16 in per foot is enough by the IPC and too flat by the UPC', () => {
    const invert = (level: number): Levels => ({
      level: { is: 'invert', level: level * INCH_M, sigma: 1e-6 },
    });
    const { fall } = drain(
      [
        [0, 0, invert(100)],
        [50, 0, invert(100 - (50 * 3) / 16)],
      ],
      upc,
    ).check;
    expect([fall.available?.verdict, fall.slopes[0]?.verdict]).toEqual(['too-flat', 'too-flat']);
    expect(fall.slopes[0]?.least).toMatchObject({ name: 'fallMiddle', row: { title: 'UPC' } });
    const there = drain(
      [
        [0, 0, invert(100)],
        [50, 0, invert(100 - (50 * 3) / 16)],
      ],
      ipc,
    ).check.fall;
    expect([there.available?.verdict, there.slopes[0]?.verdict]).toEqual(['enough', 'enough']);
  });

  it('that is there is held against it, size by size', () => {
    const invert = (level: number): Levels => ({
      level: { is: 'invert', level: level * INCH_M, sigma: 0.001 },
    });
    const stretches = [
      { ...four, diameter: 2 * INCH_M },
      { ...four, from: feet(20) },
    ];
    const { check } = drain(
      [
        [0, 0, invert(100)],
        [50, 0, invert(90)],
      ],
      { stretches },
    );
    // 20 ft at 1/4 and 30 ft at 1/8 in per foot
    expect((check.fall.available?.required ?? 0) / INCH_M).toBeCloseTo(20 / 4 + 30 / 8, 9);
    expect((check.fall.available?.available ?? 0) / INCH_M).toBeCloseTo(10, 9);
  });
});

describe('cover', () => {
  // UPC 718.3 (2012): not less than 1 ft below the surface
  it('meets a foot and misses it, by depths to the top', () => {
    const deep = drain([
      [0, 0, topDepth(24)],
      [50, 0, topDepth(36)],
    ]);
    expect(deep.check.cover.leastCover.verdict).toBe('meets');
    expect(deep.check.cover.head).toMatchObject({ station: 0, cover: expect.closeTo(24 * INCH_M, 5) });
    expect(deep.check.cover.end).toMatchObject({ cover: expect.closeTo(36 * INCH_M, 5) });
    const thin = drain([
      [0, 0, topDepth(24)],
      [30, 0, topDepth(8)],
      [50, 0, topDepth(36)],
    ]);
    expect(thin.check.cover.leastCover.verdict).toBe('misses');
    expect(thin.check.cover.least?.cover).toBeCloseTo(8 * INCH_M, 5);
    expect(inFeet(thin.check.cover.least?.station ?? 0)).toBeCloseTo(30, 5);
    expect(thin.codes).toContain('cover-too-thin');
  });

  // Michigan R 408.30533b: 42 in below grade, as a site's own value of how deep frost goes
  it('is held against frost where somebody has said how deep it goes', () => {
    const places = [
      [0, 0, topDepth(36)],
      [50, 0, topDepth(48)],
    ] as const;
    expect(drain(places).check.cover.frost).toBeNull();
    const changed = [
      { rule: 'frostDepth', value: 42 * INCH_M, who: 'inspector', why: 'local code' },
    ] as const;
    const frozen = drain(places, { rules: { changed: [...changed] as SiteRules['changed'] } });
    expect(frozen.check.cover.frost?.verdict).toBe('misses');
    expect(frozen.codes).toContain('cover-above-frost');
  });

  it('is not known without a depth, which is said', () => {
    const { check, codes } = drain([
      [0, 0],
      [50, 0],
    ]);
    expect(check.cover.leastCover.verdict).toBe('not-known');
    expect(check.cover.least).toBeNull();
    expect(check.cover.gaps).toMatchObject([{ because: 'no-pipe-level' }]);
    expect(codes).toContain('cover-not-known');
  });

  it('is told at the tap as a depth to the invert', () => {
    const tap = { features: [thing('t', 'tap', [spot(50, 0)])] };
    const { check } = drain(
      [
        [0, 0, topDepth(24)],
        [50, 0, topDepth(60)],
      ],
      tap,
    );
    // 60 in, a wall of 0.12/3.975 of the bore (ASTM D3034, SDR 35) and the bore
    expect((check.tap?.depth?.depth ?? 0) / INCH_M).toBeCloseTo(60 + 4 + (4 * 0.12) / 3.975, 6);
    expect(
      drain(
        [
          [0, 0],
          [50, 0],
        ],
        tap,
      ).check.tap?.depth,
    ).toBeNull();
  });
});
