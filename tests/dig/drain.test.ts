// What codes ask of a drain, against the printed values and the worked examples of the codes that are named beside each.

import { type DrainCheck, drainChecks } from '@footmark/dig';
import {
  derive,
  type Feature,
  INCH_M,
  type Path,
  type PathVertex,
  type Site,
  type SiteRules,
} from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { DEGREE, pipe, square, thing } from '../../packages/site/src/testing/yard';
import { digSite, feet, inFeet, spot } from './digSite';

type Facts = Partial<Path> & { readonly rules?: Partial<SiteRules>; readonly features?: readonly Feature[] };
type Levels = Pick<PathVertex, 'level' | 'bend'>;

const four = { from: 0, material: 'plastic', diameter: 4 * INCH_M, slope: 0 } as const;
const topDepth = (inches: number): Levels => ({ level: { is: 'depth-to-top', depth: inches * INCH_M } });

/** A drain of 4 in through places in feet. */
function drain(
  places: readonly (readonly [number, number, Levels?])[],
  { rules = {}, features = [], ...facts }: Facts = {},
): { readonly site: Site; readonly check: DrainCheck; readonly codes: readonly string[] } {
  const vertices = places.map(([x, y, levels = {}]) => ({ spot: spot(x, y), ...levels }));
  const site = digSite({
    things: { paths: [pipe('p', vertices, { stretches: [four], ...facts })], features: [...features] },
    rules,
  });
  const { paths, findings } = drainChecks(site, derive(site));
  const [check] = paths;
  if (check === undefined) throw new Error('no path');
  return { site, check, codes: findings.map((f) => f.code) };
}

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

describe('water beside a sewer', () => {
  const outside = (4 * (1 + (2 * 0.12) / 3.975)) / 2 / 12;

  /** A water pipe of 1 in, this far (ft) from the sewer edge to edge, its bottom so many inches over the sewer's top. */
  function beside(apart: number, above: number | null, fields: object = {}, levels = topDepth(40)) {
    const y = outside + apart + 0.5 / 12;
    const depth = above === null ? {} : { depth: (40 - above - 1) * INCH_M };
    const water = thing('w', 'service', [spot(0, y), spot(50, y)], {
      carries: 'water',
      diameter: INCH_M,
      ...depth,
      ...fields,
    });
    const result = drain(
      [
        [0, 0, levels],
        [50, 0, levels],
      ],
      { features: [water] },
    );
    const [one] = result.check.water;
    if (one === undefined) throw new Error('no water');
    return { ...result, one };
  }

  // IPC 603.2: 5 ft apart; exception 1 (from memory): the water's bottom 12 in over the sewer's top
  it.each([
    [4, 14, 'by-exception'],
    [4, 12, 'by-exception'],
    [4, 11, 'misses'],
    [4, 0, 'misses'],
    [4, -14, 'misses'],
    [6, 0, 'meets'],
    [5, 0, 'meets'],
  ] as const)('%d ft apart and %d in above: %s', (apart, above, verdict) => {
    const { one, codes } = beside(apart, above);
    expect(inFeet(one.distance)).toBeCloseTo(apart, 6);
    expect(one.verdict).toBe(verdict);
    expect(codes.includes('water-too-near')).toBe(verdict === 'misses');
    if (verdict !== 'meets') expect((one.above ?? 0) / INCH_M).toBeCloseTo(above, 6);
  });

  it('says what is not known of the depths that decide', () => {
    expect(beside(4, null).one).toMatchObject({ verdict: 'cannot-tell', missing: ['service-depth'] });
    expect(beside(4, 14, {}, {}).one).toMatchObject({ verdict: 'cannot-tell', missing: ['pipe-level'] });
    expect(beside(4, null).codes).toContain('water-depth-not-known');
    const unsized = { diameter: undefined };
    expect(beside(4, 12, unsized).one).toMatchObject({
      verdict: 'cannot-tell',
      missing: ['service-diameter'],
    });
    expect(beside(4, 20, unsized).one.verdict).toBe('by-exception');
  });

  it('is judged by the sewer out of doors', () => {
    const house = square('house', 'building', -3, -3, 6);
    const water = thing('w', 'service', [spot(0, 4), spot(50, 4)], {
      carries: 'water',
      diameter: INCH_M,
      depth: 20 * INCH_M,
    });
    const levels = [topDepth(40), topDepth(40)] as const;
    const through = (to: number) =>
      drain(
        [
          [0, 0, levels[0]],
          [to, 0, levels[1]],
        ],
        { features: [house, water] },
      ).check.water[0];
    expect(through(50)).toMatchObject({ verdict: 'by-exception' });
    expect(through(9)).toMatchObject({ verdict: 'cannot-tell', missing: ['ground'] });
  });

  // Ten States Standards, Water Works 8.8.2 and 8.8.3 (numbers of sections from memory): mains 10 ft apart, crossings 18 in
  it('is asked for more of a main', () => {
    const main = { diameter: 6 * INCH_M, depth: 10 * INCH_M };
    const one = beside(8, 0, main).one;
    expect(one).toMatchObject({ isMain: true, rule: 'waterMain', verdict: 'by-exception' });
    expect((one.above ?? 0) / INCH_M).toBeCloseTo(40 - 10 - 6, 6);
    expect(beside(8, 0, { ...main, depth: 20 * INCH_M }).one.verdict).toBe('misses');
  });

  it('that crosses is told as crossing, and judged by height alone', () => {
    const cross = (depth: number, fields: object = {}) => {
      const water = thing('w', 'service', [spot(25, -20), spot(25, 20)], {
        carries: 'water',
        diameter: INCH_M,
        depth: depth * INCH_M,
        ...fields,
      });
      return drain(
        [
          [0, 0, topDepth(40)],
          [50, 0, topDepth(40)],
        ],
        { features: [water] },
      ).check.water[0];
    };
    expect(cross(27)).toMatchObject({ crosses: true, verdict: 'by-exception', sure: false });
    expect(cross(30)).toMatchObject({ crosses: true, verdict: 'misses' });
    // below the sewer: a main may cross there by 8.8.3, a service not by exception 1
    const under = 40 + 4.3 + 19;
    expect(cross(under)?.verdict).toBe('misses');
    expect(cross(under, { diameter: 6 * INCH_M })?.verdict).toBe('by-exception');
    expect(cross(under - 3, { diameter: 6 * INCH_M })?.verdict).toBe('misses');
  });
});

describe('turned and mirrored', () => {
  const build = (to: (x: number, y: number) => readonly [number, number]) => {
    const at = (x: number, y: number, levels: Levels = {}) => [...to(x, y), levels] as const;
    return drain(
      [at(0, 0, topDepth(30)), at(40, 0), at(40, 60, topDepth(9)), at(110, 130, topDepth(50)), at(170, 130)],
      {
        features: [
          thing('c', 'cleanout', [spot(...to(0.5, 0))]),
          thing('t', 'tap', [spot(...to(170, 130))]),
          thing('w', 'service', [spot(...to(-5, 3)), spot(...to(200, 40))], { carries: 'water', depth: 0.5 }),
        ],
      },
    );
  };
  const said = ({ check, codes }: ReturnType<typeof build>) => ({
    codes,
    cleanouts: check.cleanouts.map(({ reason, station, by }) => ({
      reason,
      station: station.toFixed(6),
      by,
    })),
    least: check.cover.least?.cover.toFixed(6),
    tap: check.tap?.depth?.depth.toFixed(6),
    water: check.water.map((w) => [w.verdict, w.distance.toFixed(6), w.above?.toFixed(6), w.crosses]),
  });
  const plain = said(build((x, y) => [x, y]));

  it.each([
    ['turned', (x: number, y: number) => [x * 0.6 - y * 0.8 + 30, x * 0.8 + y * 0.6 - 70] as const],
    ['mirrored', (x: number, y: number) => [-x, y] as const],
  ])('the same is found of a drain that is %s', (_, to) => {
    expect(plain.codes.length).toBeGreaterThan(2);
    expect(said(build(to))).toEqual(plain);
  });
});
