// A pipe in elevation, against the model codes' tables, arithmetic by hand, and simulation of the measurements with known truth.

import {
  type Derived,
  derive,
  type Feature,
  FOOT_M,
  leastFall,
  type Path,
  type PathProfile,
  type PathVertex,
  profileAt,
  profileRules,
  type Run,
  type Site,
  sigmas,
  slopeVerdict,
  wallShares,
} from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { pipe, push, ref, square, thing, typed, yard } from '../../packages/site/src/testing/yard';

const INCH_M = 0.0254;

/** Uniform in [0, 1), the same for a seed everywhere (Park and Miller's generator). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Normal with mean 0 and deviation 1 (Box and Muller). */
function normal(next: () => number): number {
  return Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

type Point = Omit<PathVertex, 'id'>;

/** A straight pipe to the east with a point at each station (m). */
function straight(
  points: readonly (Partial<Point> & { readonly s: number })[],
  facts: Partial<Path> = {},
): Path {
  return pipe(
    'p',
    points.map(({ s, ...known }) => ({ spot: typed(s, 0), ...known })),
    facts,
  );
}

const invert = (level: number, sigma = 0.001) => ({ level: { is: 'invert', level, sigma } }) as const;
const size = (diameter: number, slope = 0) =>
  ({ stretches: [{ from: 0, material: 'clay', diameter, slope }] }) as const satisfies Partial<Path>;
const spotLevel = (id: string, x: number, y: number, level: number) =>
  thing(id, 'spot-level', [typed(x, y)], { level });

function derived(
  parts: Partial<Pick<Site, 'features' | 'paths' | 'runs'>>,
  facts: Partial<Site> = {},
): Derived {
  return derive({ ...yard(parts), ...facts });
}

function profileOf(path: Path, features: readonly Feature[] = [], runs: readonly Run[] = []): PathProfile {
  const found = derived({ paths: [path], features: [...features], runs: [...runs] }).profiles.get('p');
  if (found === undefined) throw new Error('no profile');
  return found;
}

const codes = ({ findings }: Derived) => findings.map((f) => f.code);

describe('least slopes by size', () => {
  // IPC Table 704.1 as adopted by Chicago (18-29-704.1), IRC P3005.3: read
  it.each([
    [1.5, 1 / 4],
    [2.5, 1 / 4],
    [3, 1 / 8],
    [4, 1 / 8],
    [6, 1 / 8],
    [8, 1 / 16],
    [12, 1 / 16],
  ])('%d in asks for %d in/ft', (inches, inchesPerFoot) => {
    expect(leastFall(yard(), inches * INCH_M).value).toBeCloseTo(inchesPerFoot / 12, 12);
  });

  it('counts inside diameters with the nominal size that they belong to', () => {
    // ASTM D1785: 3 in nominal is 3.068 inside; ASTM D3034: 6 in is 5.915, 8 in is 7.92 (8.400 less two walls of 0.240)
    expect(leastFall(yard(), 3.068 * INCH_M).value).toBe(1 / 96);
    expect(leastFall(yard(), 5.915 * INCH_M).value).toBe(1 / 96);
    expect(leastFall(yard(), 7.92 * INCH_M).value).toBe(1 / 192);
  });

  it.each(Object.entries({ ...profileRules, ...wallShares }))(
    '%s has its source, or says it has none',
    (_, row) => {
      if (row.basis === 'practice') expect(row.title).toBe('common practice, no source');
      else expect(row.clause).not.toBe('');
    },
  );
});

describe('the slope between two levels', () => {
  it('is as unsure as their errors over the distance: 0.2 ft each over 50 ft leave 0.57 %', () => {
    // √2 · 0.2 / 50 = 0.5657 %
    const { slopes } = profileOf(
      straight([
        { s: 0, ...invert(100, 0.2 * FOOT_M) },
        { s: 50 * FOOT_M, ...invert(100 - 0.01 * 50 * FOOT_M, 0.2 * FOOT_M) },
      ]),
    );
    expect(slopes).toHaveLength(1);
    expect(slopes[0]?.slope).toBeCloseTo(0.01, 9);
    expect(100 * (slopes[0]?.sigma ?? 0)).toBeCloseTo(0.5657, 4);
    expect(slopes[0]?.verdict).toBe('cannot-tell');
  });

  // IPC 704.1: 50 ft of 4 in at 1/8 in/ft falls 6.25 in, at 1/4 in/ft 12.5 in
  it.each([
    [6.25, 'enough'],
    [12.5, 'enough'],
    [6, 'too-flat'],
    [-1, 'against-flow'],
  ] as const)('50 ft of 4 in that fall %d in: %s', (fall, verdict) => {
    const sure = { sigma: 1e-9 };
    const path = straight(
      [
        { s: 0, level: { is: 'invert', level: 30, ...sure } },
        { s: 50 * FOOT_M, level: { is: 'invert', level: 30 - fall * INCH_M, ...sure } },
      ],
      size(4 * INCH_M),
    );
    const { profiles, findings } = derived({ paths: [path] });
    expect(profiles.get('p')?.slopes.map((s) => s.verdict)).toEqual([verdict]);
    const expected = { enough: [], 'too-flat': ['slope-too-flat'], 'against-flow': ['slope-against-flow'] };
    expect(findings.map((f) => f.code)).toEqual(expected[verdict]);
  });

  it('is held against the strictest size between them', () => {
    const path = straight(
      [
        { s: 0, ...invert(10) },
        { s: 10, ...invert(9.85) },
      ],
      {
        stretches: [
          { from: 0, material: 'clay', diameter: 0.1, slope: 0 },
          { from: 9, material: 'cast-iron', diameter: 0.05, slope: 0 },
          { from: 10, material: 'cast-iron', diameter: 0.03, slope: 0 },
        ],
      },
    );
    const [slope] = profileOf(path).slopes;
    expect(slope?.least.value).toBe(1 / 48);
    expect(slope?.verdict).toBe('too-flat');
  });

  it('leaves out what the pipe drops straight down', () => {
    const path = straight([
      { s: 0, ...invert(10) },
      { s: 5, drop: 0.4 },
      { s: 10, drop: 0.1, ...invert(9.3) },
    ]);
    // 0.7 m down, of which 0.5 straight down: 0.2 in 10
    expect(profileOf(path).slopes[0]?.slope).toBeCloseTo(0.02, 9);
  });

  it('is called enough or too flat of a pipe that just meets the rule in about 1 of 40 sets of levels each', () => {
    // of a normal error 2.5 % lies past 1.96 standard deviations on either side
    const next = seeded(20260414);
    const [sets, sigma] = [20_000, 0.003];
    const count = { enough: 0, 'too-flat': 0, 'cannot-tell': 0, 'against-flow': 0 };
    for (let i = 0; i < sets; i++) count[slopeVerdict(1 / 96 + sigma * normal(next), sigma, 1 / 96)]++;
    expect(count.enough / sets).toBeGreaterThan(0.021);
    expect(count.enough / sets).toBeLessThan(0.029);
    expect((count['too-flat'] + count['against-flow']) / sets).toBeGreaterThan(0.021);
    expect((count['too-flat'] + count['against-flow']) / sets).toBeLessThan(0.029);
  });
});

describe('the line of a pipe', () => {
  const path = straight([{ s: 2, ...invert(20, 0.04) }, { s: 12, ...invert(19.8, 0.02) }, { s: 30 }], {
    stretches: [
      { from: 0, material: 'clay', diameter: 0.1, slope: 0.02 },
      { from: 15, material: 'clay', diameter: 0.1, slope: 0.01 },
    ],
  });

  it('is as unsure between two levels as a simulation of their errors says', () => {
    const next = seeded(7);
    const at = profileAt(profileOf(path), 0 + 4); // the path begins at its first point: 4 m on is x = 6
    const errors = Array.from(
      { length: 40_000 },
      () => 0.6 * 0.04 * normal(next) + 0.4 * 0.02 * normal(next),
    );
    const deviation = Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
    expect(at.pipe?.invert).toBeCloseTo(19.92, 9);
    expect(at.pipe?.by).toBe('between');
    expect(Math.abs((at.pipe?.sigma ?? 0) / deviation - 1)).toBeLessThan(0.02);
  });

  it('goes on past the last level at the slope that was said, ever less sure', () => {
    const profile = profileOf(path);
    const end = profileAt(profile, 28).pipe;
    // from station 10: 5 m at 2 %, then 13 m at 1 %
    expect(end?.invert).toBeCloseTo(19.8 - 5 * 0.02 - 13 * 0.01, 9);
    expect(end?.by).toBe('beyond');
    expect(end?.sigma).toBeCloseTo(Math.hypot(0.02, 18 * profileRules.assumedSlope.value), 9);
  });

  it('steps down at a drop, and a level there is the one below it', () => {
    const dropped = profileOf(
      straight([
        { s: 0, ...invert(10) },
        { s: 5, drop: 0.5, ...invert(9.4) },
        { s: 10, ...invert(9.3) },
      ]),
    );
    expect(profileAt(dropped, 5, 'before').pipe?.invert).toBeCloseTo(9.9, 9);
    expect(profileAt(dropped, 5).pipe?.invert).toBeCloseTo(9.4, 9);
    expect(profileAt(dropped, 2.5).pipe?.invert).toBeCloseTo(9.95, 9);
    expect(profileAt(dropped, 7.5).pipe?.invert).toBeCloseTo(9.35, 9);
    expect(dropped.slopes.map((s) => Number(s.slope.toFixed(9)))).toEqual([0.02, 0.02]);
  });

  it('is nowhere when nothing is known of its depth', () => {
    const nothing = profileOf(straight([{ s: 0 }, { s: 10 }]));
    expect(profileAt(nothing, 5)).toMatchObject({ pipe: null, ground: null, cover: null });
    expect(nothing.slopes).toEqual([]);
  });

  it('is not bent by a rough depth that agrees with good levels on both sides, but by one that does not', () => {
    const rough = (level: number) =>
      profileOf(
        straight([
          { s: 0, ...invert(10, 0.02) },
          { s: 5, ...invert(level, 0.15) },
          { s: 10, ...invert(9.8, 0.02) },
        ]),
      );
    expect(profileAt(rough(9.8), 5).pipe?.invert).toBeCloseTo(9.9, 9);
    expect(rough(9.8).slopes).toHaveLength(1);
    expect(rough(9.8).points).toHaveLength(3);
    expect(profileAt(rough(9.4), 5).pipe?.invert).toBeCloseTo(9.4, 9);
    expect(rough(9.4).slopes.map((s) => s.verdict)).toEqual(['enough', 'against-flow']);
  });

  it('weighs two levels of one place by how sure they are, and does not count one twice that was written twice', () => {
    const cleanout = (level: number) => thing('co', 'cleanout', [typed(0, 0)], { invert: level });
    const at = { spot: { by: 'at', point: ref('co') } } as const;
    const both = (own: number, things: number) =>
      derived({
        features: [cleanout(things)],
        paths: [pipe('p', [{ ...at, ...invert(own, 0.03) }, { spot: typed(10, 0) }])],
      }).profiles.get('p')?.points[0];
    // weights 1/0.03² alike (a taped level has 0.03): the mean, and 0.03/√2
    expect(both(10, 10.04)?.invert).toBeCloseTo(10.02, 9);
    expect(both(10, 10.04)?.sigma).toBeCloseTo(0.03 / Math.SQRT2, 9);
    expect(both(10, 10)?.sigma).toBeCloseTo(0.03, 9);
    expect(both(10, 10)?.known).toHaveLength(2);
  });
});

describe('the ground', () => {
  const level = straight([
    { s: 0, ...invert(10) },
    { s: 40, ...invert(9.2) },
  ]);

  it('runs straight between levelled points near the pipe, and is not made up elsewhere', () => {
    const profile = profileOf(level, [
      spotLevel('a', 5, 1, 12),
      spotLevel('b', 15, -1, 11.8),
      spotLevel('far', 10, 8, 20), // further aside than 3 m
      thing('m', 'manhole', [typed(40, 0)], { rimLevel: 11.2 }), // 25 m further on: more than a gap of 20 m
    ]);
    expect(profileAt(profile, 10).ground?.level).toBeCloseTo(11.9, 9);
    expect(profileAt(profile, 17).ground).toMatchObject({ level: 11.8, between: false });
    expect(profileAt(profile, 25).ground).toBeNull();
    expect(profileAt(profile, 25).cover).toBeNull();
    expect(profileAt(profile, 40).ground?.level).toBe(11.2);
    expect(profileAt(profile, 0).ground).toBeNull(); // 5 m before the first
  });

  it('is less sure away from levelled points', () => {
    const profile = profileOf(level, [spotLevel('a', 5, 0, 12), spotLevel('b', 15, 0, 12)]);
    const sigma = (s: number) => profileAt(profile, s).ground?.sigma ?? Number.NaN;
    expect(sigma(5)).toBeCloseTo(0.03, 9);
    expect(sigma(10)).toBeGreaterThan(sigma(7));
    // held level from one point it strays by its fall alone: 3 % of 2 m
    expect(sigma(3)).toBeCloseTo(Math.hypot(0.03, 0.06), 9);
  });

  it('is not a floor: a level in a house tells nothing of it, and under a house there is none', () => {
    const profile = profileOf(level, [
      square('house', 'building', 2, -4, 8),
      spotLevel('in', 5, 0, 13),
      spotLevel('out', 11, 0, 12),
    ]);
    expect(profileAt(profile, 5).ground).toBeNull();
    expect(profileAt(profile, 10.5).ground?.level).toBe(12);
    expect(profile.ground.indoors).toHaveLength(1);
    expect(profile.ground.indoors[0]?.from).toBeCloseTo(2, 6);
    expect(profile.ground.indoors[0]?.to).toBeCloseTo(10, 6);
  });

  it('less the pipe, wall and all, is the cover', () => {
    // SDR 35 of 4 in is 4.215 in outside: inside 3.975 and one wall of 0.120 above the bore (ASTM D3034)
    const path = straight(
      [
        { s: 0, ...invert(10) },
        { s: 10, ...invert(10) },
      ],
      {
        stretches: [{ from: 0, material: 'plastic', diameter: 3.975 * INCH_M, slope: 0 }],
      },
    );
    const profile = profileOf(path, [spotLevel('a', 0, 0, 11), spotLevel('b', 10, 0, 11)]);
    const { cover } = profileAt(profile, 5);
    expect(cover?.depth).toBeCloseTo(1 - (3.975 + 0.12) * INCH_M, 9);
  });
});

describe('depths', () => {
  const ground = [spotLevel('a', 0, 0, 12), spotLevel('b', 10, 0, 11.5)];

  it('below the ground become inverts: to the invert, to the top, down a riser, to a tap', () => {
    const site = derived({
      features: [
        ...ground,
        thing('co', 'cleanout', [typed(4, 0)], { riserDepth: 1.5 }),
        thing('tap', 'tap', [typed(10, 0)], { depth: 2 }),
      ],
      paths: [
        pipe(
          'p',
          [
            { spot: typed(0, 0), level: { is: 'depth-to-invert', depth: 1.4 } },
            { spot: typed(2, 0), level: { is: 'depth-to-top', depth: 1.3 } },
            { spot: { by: 'at', point: ref('co') } },
            { spot: { by: 'at', point: ref('tap') } },
          ],
          size(0.1),
        ),
      ],
    });
    const at = (s: number) =>
      site.profiles.get('p')?.points.find((p) => Math.abs(p.station - s) < 1e-6)?.invert ?? Number.NaN;
    expect(at(0)).toBeCloseTo(12 - 1.4, 9);
    // top + bore + wall of clay (15 % of the bore: common practice, no source)
    expect(at(2)).toBeCloseTo(11.9 - 1.3 - 0.1 - 0.015, 9);
    expect(at(4)).toBeCloseTo(11.8 - 1.5, 9);
    expect(at(10)).toBeCloseTo(11.5 - 2, 9);
  });

  it('of a locate are to the middle of the sonde, of a pipe that was dug up to its top', () => {
    const locate = (fields: object) =>
      profileOf(straight([{ s: 0 }, { s: 10 }], size(0.1)), [
        ...ground,
        thing('l', 'locate', [typed(5, 0.3)], { depth: 1.5, ...fields }),
      ]).points[0];
    expect(locate({})?.invert).toBeCloseTo(11.75 - 1.5 - profileRules.sondeRide.value, 9);
    // PAS 128 (2014), Table 1, from memory: depth within 15 % (peak and null agree), 40 % (the rest), not stated where found in passing
    const taped = sigmas.tapedLevel.value;
    const ofGround = Math.sqrt((locate({ method: 'exposed' })?.sigma ?? 0) ** 2 - taped ** 2);
    const from = (share: number) => Math.hypot((share * 1.5) / 1.96, ofGround);
    expect(locate({ method: 'crossed' })?.sigma).toBeCloseTo(from(0.15), 6);
    expect(locate({ method: 'peak' })?.sigma).toBeCloseTo(from(0.4), 6);
    expect(locate({})?.sigma).toBe(locate({ method: 'peak' })?.sigma);
    expect(locate({ method: 'rough' })).toBeUndefined();
    expect(locate({ method: 'exposed' })?.invert).toBeCloseTo(11.75 - 1.5 - 0.115, 9);
    expect(locate({ method: 'exposed' })?.sigma).toBeLessThan(0.1);
  });

  it('of a locate that was set aside, or far from the pipe without a reading, tell nothing', () => {
    const path = straight([{ s: 0 }, { s: 10 }]);
    const far = thing('l', 'locate', [typed(5, 2)], { depth: 1.5 });
    expect(profileOf(path, [...ground, far]).points).toEqual([]);
    const near = thing('l', 'locate', [typed(5, 0)], { depth: 1.5 });
    const aside = derived({ paths: [path], features: [...ground, near] }, { setAside: ['locate/l'] });
    expect(aside.profiles.get('p')?.points).toEqual([]);
  });

  it('without any level are shown below a ground taken as even, without a word about slopes', () => {
    const site = derived({
      paths: [
        straight([
          { s: 0, level: { is: 'depth-to-invert', depth: 1 } },
          { s: 10, level: { is: 'depth-to-invert', depth: 0.5 } },
        ]),
      ],
    });
    const profile = site.profiles.get('p');
    expect(profile?.heights).toBe('below-ground');
    expect(profile?.points.map((p) => p.invert)).toEqual([-1, -0.5]);
    expect(profile?.slopes).toEqual([]);
    expect(codes(site)).toEqual([]);
  });

  it('that have no ground to count from are named as unused', () => {
    const profile = profileOf(
      straight([
        { s: 0, ...invert(10) },
        { s: 5, level: { is: 'depth-to-invert', depth: 1 } },
        { s: 10, ...invert(9.8) },
      ]),
    );
    expect(profile.heights).toBe('levels');
    expect(profile.points).toHaveLength(2);
    expect(profile.unused.map((u) => u.source)).toEqual([
      { is: 'point', vertex: 'b', measured: 'depth-to-invert' },
    ]);
  });
});

describe('a branch', () => {
  it('ends at the level of the pipe that it joins, within its bore', () => {
    const main = pipe('main', [
      { spot: typed(0, 0), ...invert(10, 0.01) },
      { spot: typed(10, 0) },
      { spot: typed(20, 0), ...invert(9.6, 0.01) },
    ]);
    const branch = pipe(
      'p',
      [typed(10, 5), { spot: { by: 'at', point: ref('main', 'b') } }],
      size(0.1, 0.02),
    );
    // the branch stands first in the file: what it joins is computed before it all the same
    const profile = derived({ paths: [branch, main] }).profiles.get('p');
    expect(profile?.points.map((p) => [p.station, Number(p.invert.toFixed(9))])).toEqual([[5, 9.8]]);
    expect(profile?.points[0]?.sigma).toBeGreaterThan(0.02);
    expect(profile && profileAt(profile, 0).pipe?.invert).toBeCloseTo(9.9, 9);
  });
});

describe('a sag', () => {
  const path = straight(
    [
      { s: 0, ...invert(10) },
      { s: 20, ...invert(9.6) },
    ],
    size(0.1),
  );
  const run = (readings: Parameters<typeof push>[1]) =>
    push({ entry: 'co', path: 'p', direction: 'with-flow' }, readings);
  const cleanout = thing('co', 'cleanout', [typed(0, 0)]);
  const profileWith = (readings: Parameters<typeof push>[1]) => profileOf(path, [cleanout], [run(readings)]);

  it('lies below level water, by the share of the bore that it stood in', () => {
    const profile = profileWith([
      { counter: 5, water: 0 },
      { counter: 7, water: 0.3 },
      { counter: 8, water: 0.5 },
      { counter: 10, water: 0 },
      { counter: 15, water: 0 },
    ]);
    expect(profile.sags).toHaveLength(1);
    // it runs over at 10 m, where the grade is at 9.8
    expect(profile.sags[0]?.level).toBeCloseTo(9.8, 9);
    expect(profileAt(profile, 7).pipe?.invert).toBeCloseTo(9.8 - 0.03, 9);
    expect(profileAt(profile, 8).pipe?.invert).toBeCloseTo(9.8 - 0.05, 9);
    expect(profileAt(profile, 9).pipe).toMatchObject({ by: 'sag' });
    expect(profileAt(profile, 10).pipe?.invert).toBeCloseTo(9.8, 9);
    expect(profileAt(profile, 15).pipe?.invert).toBeCloseTo(9.7, 9);
    // up to it the pipe comes straight from the level before it
    expect(profileAt(profile, 5).pipe?.invert).toBeCloseTo(9.8, 9);
    expect(profileAt(profile, 2.5).pipe?.invert).toBeCloseTo(9.9, 9);
  });

  it('of one reading from a count to another is deepest in the middle', () => {
    const profile = profileWith([{ counter: 6, to: 10, seen: 'sag', water: 0.4 }]);
    expect(profile.sags[0]?.depths.map((d) => [d.station, Number(d.depth.toFixed(9))])).toEqual([
      [6, 0],
      [8, 0.04],
      [10, 0],
    ]);
  });

  it('is the same when the camera goes against the flow', () => {
    const upstream = push({ entry: 'co', path: 'p', direction: 'against-flow' }, [
      { counter: 10, to: 14, seen: 'sag', water: 0.4 },
    ]);
    const profile = profileOf(path, [thing('co', 'cleanout', [typed(20, 0)])], [upstream]);
    expect(profile.sags[0]?.depths.map((d) => d.station)).toEqual([6, 8, 10]);
  });

  it('whose ends nobody saw has no more than its water', () => {
    const profile = profileWith([{ counter: 8, water: 0.5 }]);
    expect(profile.sags[0]).toMatchObject({ shapes: false });
    expect(profileAt(profile, 8).pipe?.invert).toBeCloseTo(9.84, 9);
  });
});

describe('levels that cannot be', () => {
  it('an invert above the ground', () => {
    const site = derived({
      features: [spotLevel('a', 0, 0, 9.5)],
      paths: [
        straight([
          { s: 0, ...invert(10) },
          { s: 10, ...invert(9) },
        ]),
      ],
    });
    expect(site.findings).toMatchObject([
      { code: 'invert-above-ground', at: { kind: 'path', id: 'p', vertex: 'a' }, values: { by: 0.5 } },
    ]);
  });

  it('two levels of one place further apart than their errors allow (95 %)', () => {
    const apart = (by: number) =>
      derived({
        features: [thing('co', 'cleanout', [typed(0, 0)], { invert: 10 + by })],
        paths: [
          pipe('p', [
            { spot: { by: 'at', point: ref('co') }, ...invert(10, 0.04) },
            { spot: typed(10, 0), ...invert(9) },
          ]),
        ],
      });
    // 1.96 · √(0.04² + 0.03²) = 0.098
    expect(codes(apart(0.097))).toEqual([]);
    expect(apart(0.099).findings).toMatchObject([{ code: 'levels-disagree', values: { a: 'p A', b: 'co' } }]);
  });

  it('one note for all stretches that cannot be told, about the surest of them', () => {
    const site = derived({
      paths: [
        straight([
          { s: 0, ...invert(10, 0.05) },
          { s: 5, ...invert(9.9, 0.05) },
          { s: 15, ...invert(9.8, 0.05) },
        ]),
      ],
    });
    expect(site.findings).toMatchObject([
      { code: 'slope-unsure', severity: 'note', values: { from: 5, to: 15, others: 1 } },
    ]);
  });
});
