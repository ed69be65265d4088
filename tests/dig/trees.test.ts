// Root zones and what is taken of them, against the printed values of the standards and ordinances that are named beside each.

import {
  boreUnder,
  encroachmentOf,
  excavationsOf,
  type TreeFinding,
  treeEncroachments,
  treeZone,
  treeZones,
} from '@footmark/dig';
import {
  type Dig,
  derive,
  type Feature,
  type FeatureOf,
  INCH_M,
  type Path,
  ruleOf,
  type SiteRules,
  stemDiameterOf,
  type TreeRuleId,
  treeRuleIds,
} from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { pipe, thing, typed } from '../../packages/site/src/testing/yard';
import { digSite, feet, inFeet } from './digSite';

const plain = digSite({});

function tree(fields: FeatureOf<'tree'>['fields'], id = 'tree', x = 0, y = 0): FeatureOf<'tree'> {
  return thing(id, 'tree', [typed(x, y)], fields) as FeatureOf<'tree'>;
}

function zone(rule: TreeRuleId, fields: FeatureOf<'tree'>['fields'], site = plain) {
  const one = tree(fields);
  return treeZone(site, one, stemDiameterOf(one) ?? Number.NaN, rule);
}

/** Radius in feet for a trunk in inches. */
const footZone = (rule: TreeRuleId, inches: number, fields: FeatureOf<'tree'>['fields'] = {}) =>
  inFeet(zone(rule, { trunkDiameter: inches * INCH_M, ...fields }).radius);

describe('BS 5837:2012 root protection area', () => {
  // 4.6.1 and Annex D: 12 stem diameters, at most 707 m² or 15 m; areas computed independently, which Annex D prints in whole m²
  it.each([
    [75, 0.9, 2.54],
    [300, 3.6, 40.7],
    [500, 6, 113.1],
    [750, 9, 254.5],
    [1250, 15, 706.9],
    [1500, 15, 706.9],
  ])('of a stem of %d mm has a radius of %d m and %d m²', (mm, radius, area) => {
    const found = zone('bs-5837', { trunkDiameter: mm / 1000 }).radius;
    expect(found).toBeCloseTo(radius, 9);
    expect(Math.abs(Math.PI * found ** 2 - area)).toBeLessThan(0.05);
  });

  // 4.6.1 a: √Σd² for two to five stems; b: √(mean² n) for more (b from memory)
  it('of several stems counts their equivalent', () => {
    expect(zone('bs-5837', { stemDiameters: [0.2, 0.25, 0.3] }).radius).toBeCloseTo(5.265, 3);
    const eight = [0.1, 0.2, 0.15, 0.15, 0.12, 0.18, 0.14, 0.16];
    expect(zone('bs-5837', { stemDiameters: eight }).radius).toBeCloseTo(12 * 0.42426, 4);
  });
});

describe('AS 4970-2009', () => {
  // 3.2: 12 × DBH, 2 m to 15 m
  it.each([
    [0.4, 4.8],
    [0.1, 2],
    [1.4, 15],
  ])('tree protection zone of a trunk of %d m has a radius of %d m', (dbh, radius) => {
    expect(zone('as-4970', { trunkDiameter: dbh }).radius).toBeCloseTo(radius, 9);
  });

  // 3.3.5: (D × 50)^0.42 × 0.64, values computed independently; below 0.15 m 1.5 m
  it.each([
    [0.1, 1.5],
    [0.15, 1.5],
    [0.3, 1.996],
    [0.5, 2.474],
    [0.8, 3.013],
    [1, 3.309],
    [1.25, 3.635],
  ])('structural root zone of a base of %d m has a radius of %d m', (base, radius) => {
    const { inner, assumed } = zone('as-4970', { trunkDiameter: 0.3, baseDiameter: base });
    expect(inner?.is).toBe('structural-root-zone');
    expect(Math.abs((inner?.radius ?? 0) - radius)).toBeLessThan(0.0006);
    expect(assumed).toEqual([]);
  });

  it('takes the trunk for the base where that was not measured, and says so', () => {
    const found = zone('as-4970', { trunkDiameter: 0.5 });
    expect(found.inner?.radius).toBeCloseTo(2.474, 3);
    expect(found.assumed).toEqual([{ fact: 'base-diameter', as: 'trunk-diameter' }]);
  });

  // 3.3.2 and 3.3.3: up to 10 % and outside the structural root zone minor, else major
  it('calls 10 % outside the structural roots minor, more or any of these major', () => {
    expect(encroachmentOf(plain, 0, false)).toBe('none');
    expect(encroachmentOf(plain, 0.05999, false)).toBe('minor');
    expect(encroachmentOf(plain, 0.1, false)).toBe('minor');
    expect(encroachmentOf(plain, 0.1001, false)).toBe('major');
    expect(encroachmentOf(plain, 0.01, true)).toBe('major');
  });
});

describe('radii in feet per inch of trunk', () => {
  // University of Minnesota Extension (1999): 1.0, older, sensitive or unhealthy 1.5; 10 in: 10 ft and 15 ft, 24 in: 24 ft and 36 ft
  it('critical root radius', () => {
    expect(footZone('critical-root-radius', 10)).toBeCloseTo(10, 9);
    expect(footZone('critical-root-radius', 24)).toBeCloseTo(24, 9);
    for (const fields of [
      { age: 'overmature' },
      { condition: 'poor' },
      { tolerance: 'poor' },
      { condition: 'dead' },
    ] as const) {
      expect(footZone('critical-root-radius', 10, fields)).toBeCloseTo(15, 9);
      expect(footZone('critical-root-radius', 24, fields)).toBeCloseTo(36, 9);
    }
    expect(
      footZone('critical-root-radius', 10, { age: 'young', condition: 'fair', tolerance: 'good' }),
    ).toBeCloseTo(10, 9);
  });

  it('critical root radius says what it took for usual', () => {
    const { assumed } = zone('critical-root-radius', { trunkDiameter: 0.3, age: 'mature' });
    expect(assumed.map((a) => a.fact)).toEqual(['condition', 'tolerance']);
    expect(zone('critical-root-radius', { trunkDiameter: 0.3, condition: 'poor' }).assumed).toEqual([]);
  });

  // NC State Extension asks for at least 1.25 ft per inch: 12 in gives 15 ft. A site may say so.
  it('critical root radius as changed on a site', () => {
    const changed: SiteRules['changed'] = [
      { rule: 'crrPerDiameter', value: 15, who: 'arborist', why: 'NC State Extension' },
    ];
    const site = digSite({ rules: { changed } });
    expect(inFeet(zone('critical-root-radius', { trunkDiameter: 12 * INCH_M }, site).radius)).toBeCloseTo(
      15,
      9,
    );
  });

  // Matheny and Clark (1998), from memory; moderate tolerance, mature, 1 ft per inch was read
  it.each([
    ['good', 'young', 10, 0.5],
    ['good', 'mature', 15, 0.75],
    ['good', 'overmature', 20, 1],
    ['moderate', 'young', 15, 0.75],
    ['moderate', 'mature', 20, 1],
    ['moderate', 'overmature', 25, 1.25],
    ['poor', 'young', 20, 1],
    ['poor', 'mature', 25, 1.25],
    ['poor', 'overmature', 30, 1.5],
  ] as const)('tolerance %s and %s: 20 in gives %d ft', (tolerance, age, radius, perInch) => {
    expect(footZone('tolerance-and-age', 20, { tolerance, age })).toBeCloseTo(radius, 9);
    expect(radius).toBe(20 * perInch);
    expect(
      ruleOf(plain, zone('tolerance-and-age', { trunkDiameter: 0.5, tolerance, age }).row).row.basis,
    ).toBe('memory');
  });

  it('tolerance and age that are not known count as what asks for most, and that is said', () => {
    const found = zone('tolerance-and-age', { trunkDiameter: 20 * INCH_M });
    expect(inFeet(found.radius)).toBeCloseTo(30, 9);
    expect(found.assumed).toEqual([
      { fact: 'tolerance', as: 'poor' },
      { fact: 'age', as: 'overmature' },
    ]);
    expect(zone('tolerance-and-age', { trunkDiameter: 0.5, age: 'young' }).assumed).toHaveLength(1);
  });

  // Ionia MI ordinance: no trench within 6 diameters, 24 in gives 12 ft; 3 diameters are commonly quoted for stability (from memory)
  it('six diameters, and three for stability', () => {
    const found = zone('six-diameters', { trunkDiameter: 24 * INCH_M });
    expect(inFeet(found.radius)).toBeCloseTo(12, 9);
    expect(inFeet(found.inner?.radius ?? 0)).toBeCloseTo(6, 9);
    expect(found.inner?.is).toBe('stability');
  });
});

describe('boring instead of trenching', () => {
  // City of Stevens Point WI, Forestry Specifications: 0–4 in 3 ft, 5–9 in 8 ft, 10–14 in 10 ft, 15–19 in 12 ft, over 19 in 15 ft, each
  // way from the trunk. The widely copied auger table (from memory) has the same last three rows.
  it.each([
    [2, 3],
    [4, 3],
    [5, 8],
    [9, 8],
    [10, 10],
    [12, 10],
    [14, 10],
    [15, 12],
    [19, 12],
    [20, 15],
    [40, 15],
  ])('from a trunk of %d in within %d ft', (inches, distance) => {
    expect(footZone('bore-distance', inches)).toBeCloseTo(distance + inches / 24, 9);
  });

  it('takes the larger row between two of the table', () => {
    expect(footZone('bore-distance', 4.5)).toBeCloseTo(8 + 4.5 / 24, 9);
    expect(footZone('bore-distance', 19.2)).toBeCloseTo(15 + 19.2 / 24, 9);
  });

  // Stevens Point: at least 3 ft deep. Arlington County VA: 4.5 ft within 10 ft of trunks to 6 in and 15 ft of larger ones
  it.each([
    [6, 10, 4.5],
    [6, 10.1, 3],
    [7, 10.1, 4.5],
    [7, 15, 4.5],
    [7, 15.1, 3],
  ])('beside a trunk of %d in, %d ft off, asks for %d ft of depth', (inches, distance, depth) => {
    const found = boreUnder(plain, { diameter: inches * INCH_M }, feet(distance), null);
    expect(inFeet(found.asked)).toBeCloseTo(depth, 9);
    expect(found.enough).toBeNull();
  });

  it('would do where the pipe has that cover', () => {
    const at = (cover: number) => boreUnder(plain, { diameter: 0.5 }, 1, feet(cover)).enough;
    expect(at(4.5)).toBe(true);
    expect(at(4.4)).toBe(false);
  });
});

describe('the zones of a site', () => {
  it('stand side by side, the chosen rule’s first: the site’s own, else that of its rule set', () => {
    const site = digSite({
      things: { features: [tree({ trunkDiameter: 0.5 })] },
      rules: { trees: 'six-diameters' },
    });
    const [found] = treeZones(site, derive(site)).trees;
    expect(found?.zones.map((z) => z.rule).sort()).toEqual([...treeRuleIds].sort());
    expect(found?.chosen.rule).toBe('six-diameters');
    expect(found?.zones[0]).toBe(found?.chosen);
    const british = digSite({
      things: { features: [tree({ trunkDiameter: 0.5 })] },
      rules: { set: 'britain' },
    });
    expect(treeZones(british, derive(british)).trees[0]?.chosen).toMatchObject({
      rule: 'bs-5837',
      radius: 6,
    });
  });

  it('say of each tree what the chosen rule took for known', () => {
    const two = [tree({ trunkDiameter: 0.5 }), tree({ trunkDiameter: 0.2, age: 'mature' }, 'other', 30)];
    const site = digSite({ things: { features: two }, rules: { trees: 'tolerance-and-age' } });
    const { findings } = treeZones(site, derive(site));
    const assumed = { tolerance: { fact: 'tolerance', as: 'poor' }, age: { fact: 'age', as: 'overmature' } };
    expect(findings).toMatchObject([
      { code: 'tree-facts-assumed', values: { tree: 'tree', assumed: [assumed.tolerance, assumed.age] } },
      { code: 'tree-facts-assumed', values: { tree: 'other', assumed: [assumed.tolerance] } },
    ]);
  });

  it('a tree without a diameter has none, and that is said', () => {
    const site = digSite({ things: { features: [tree({ crownSpread: 9 })] } });
    const { trees, findings } = treeZones(site, derive(site));
    expect(trees).toEqual([]);
    expect(findings).toMatchObject([
      { code: 'tree-without-diameter', severity: 'should', values: { tree: 'tree' } },
    ]);
  });
});

type Parts = {
  readonly features?: readonly Feature[];
  readonly paths?: readonly Path[];
  readonly digs?: readonly Dig[];
  readonly rules?: Partial<SiteRules>;
};

function encroached({ features = [], paths = [], digs = [], rules = { set: 'australia' } }: Parts) {
  const site = digSite({
    things: { features: [...features], paths: [...paths] },
    digging: { digs: [...digs], soil: 'b' },
    rules,
  });
  const derived = derive(site);
  return treeEncroachments(site, derived, excavationsOf(site, derived, new Map()));
}

function said<C extends TreeFinding['code']>(findings: readonly TreeFinding[], code: C) {
  return findings.filter((f): f is Extract<TreeFinding, { code: C }> => f.code === code);
}

const dig = (facts: object = {}): Dig =>
  ({
    is: 'trench',
    id: 'dig',
    name: '',
    note: '',
    path: 'p',
    from: 0,
    to: 40,
    depth: 1,
    bottomWidth: 0.6,
    protection: 'shield',
    spoil: 'away',
    ...facts,
  }) as Dig;

/** A pipe to the east, `y` metres north of the tree. */
const pipeAt = (y: number, facts: Partial<Path> = {}) => pipe('p', [typed(-20, y), typed(20, y)], facts);

describe('a trench beside a tree', () => {
  // 0.6 m centred 2 m from the centre of a 6 m circle takes 6.785 m², 5.999 %: two circle segments by hand
  it('takes an exact share of its zone', () => {
    const { digs, totals, findings } = encroached({
      features: [tree({ trunkDiameter: 0.5, baseDiameter: 0.3 })],
      paths: [pipeAt(2.5)],
      digs: [dig()],
    });
    const segment = (h: number) => 36 * Math.acos((6 - h) / 6) - (6 - h) * Math.sqrt(12 * h - h * h);
    expect(digs[0]?.zones[0]?.share).toBeCloseTo((segment(3.8) - segment(3.2)) / (36 * Math.PI), 9);
    const exact = encroached({
      features: [tree({ trunkDiameter: 0.5, baseDiameter: 0.05 })],
      paths: [pipeAt(2)],
      digs: [dig()],
    });
    expect((exact.totals[0]?.zones[0]?.dug ?? 0) * 36 * Math.PI).toBeCloseTo(6.785, 3);
    expect(exact.totals[0]?.zones[0]?.dug).toBeCloseTo(0.05999, 5);
    expect(totals[0]?.zones[0]).toMatchObject({ encroachment: 'minor', inner: false });
    expect(said(findings, 'minor-encroachment')[0]).toMatchObject({
      severity: 'note',
      rule: 'minorEncroachment',
      values: { limit: 0.1 },
    });
  });

  it('is major inside the structural roots, however little it takes', () => {
    const { totals, findings } = encroached({
      features: [tree({ trunkDiameter: 0.5, baseDiameter: 0.5 })],
      paths: [pipeAt(2.5)],
      digs: [dig()],
    });
    expect(totals[0]?.zones[0]).toMatchObject({ encroachment: 'major', inner: true });
    expect(said(findings, 'major-encroachment')[0]?.values.structural).toBe(true);
    expect(said(findings, 'dig-in-structural-roots')[0]).toMatchObject({
      severity: 'must',
      rule: 'srzFactor',
    });
  });

  // AS 4970-2009, 3.3.5: a trunk of 12 in (0.3048 m) has a structural root zone of 2.01 m; three diameters are 0.91 m
  it.each(['us-ipc', 'us-upc', 'britain'] as const)(
    'that cuts roots that hold a tree up is a must under %s, whose tree rule knows no such roots',
    (set) => {
      const oak = tree({ trunkDiameter: 12 * INCH_M, protected: true });
      const cut = (y: number) =>
        encroached({ features: [oak], paths: [pipeAt(y)], digs: [dig()], rules: { set } });
      const [found] = said(cut(2).findings, 'dig-in-structural-roots');
      expect(found).toMatchObject({
        severity: 'must',
        rule: 'srzFactor',
        values: { protected: true, is: 'structural-root-zone', fromTrunk: true },
      });
      expect(found?.values.radius).toBeCloseTo((0.3048 * 50) ** 0.42 * 0.64, 9);
      expect(cut(2).totals[0]?.holding).toBe(true);
      // its edge 2.1 m off
      expect(said(cut(2.4).findings, 'dig-in-structural-roots')).toEqual([]);
    },
  );

  // three diameters of a thick trunk reach further: 3.75 m against 3.635 m
  it('is held against the wider of the two where the rule knows neither', () => {
    const thick = { features: [tree({ trunkDiameter: 1.25 })], digs: [dig()] };
    const at = (rules: Partial<SiteRules>) =>
      said(encroached({ ...thick, paths: [pipeAt(4)], rules }).findings, 'dig-in-structural-roots')[0];
    expect(at({ set: 'us-ipc' })).toMatchObject({ rule: 'stabilityDiameters', values: { is: 'stability' } });
    expect(at({ set: 'us-ipc' })?.values.radius).toBeCloseTo(3.75, 9);
    expect(at({ set: 'australia' })).toBeUndefined();
  });

  it('is major when two digs together take more than 10 %, though neither does', () => {
    const paths = [pipeAt(2.5), { ...pipeAt(-2.5), id: 'q' }];
    const digs = [dig(), dig({ id: 'other', path: 'q' })];
    const {
      digs: each,
      totals,
      findings,
    } = encroached({ features: [tree({ trunkDiameter: 0.5, baseDiameter: 0.15 })], paths, digs });
    expect(each.map((d) => d.zones[0]?.encroachment)).toEqual(['minor', 'minor']);
    expect(totals[0]?.zones[0]?.encroachment).toBe('major');
    expect(said(findings, 'major-encroachment')).toHaveLength(1);
  });

  it('counts the spoil on the roots as well, and once where it lies over the dig’s own share', () => {
    const parts = { features: [tree({ trunkDiameter: 0.5, baseDiameter: 0.15 })], paths: [pipeAt(3)] };
    const [away, near, far] = (['away', 'right', 'left'] as const).map(
      (spoil) => encroached({ ...parts, digs: [dig({ spoil })] }).digs[0]?.zones[0],
    );
    expect(away?.spoil).toBe(0);
    expect(near?.spoil).toBeGreaterThan(far?.spoil ?? 1);
    expect(near?.share).toBeCloseTo((near?.dug ?? 0) + (near?.spoil ?? 0), 9);
    expect(
      said(encroached({ ...parts, digs: [dig({ spoil: 'right' })] }).findings, 'spoil-in-root-zone'),
    ).toHaveLength(1);
  });

  it('whose depth is not known takes at least what its bottom does', () => {
    const { depth: _, ...noDepth } = dig() as Extract<Dig, { is: 'trench' }>;
    const { digs, findings } = encroached({
      features: [tree({ trunkDiameter: 0.5, baseDiameter: 0.15 })],
      paths: [pipeAt(2)],
      digs: [noDepth],
    });
    expect(digs[0]).toMatchObject({ atLeast: true });
    expect(digs[0]?.zones[0]?.dug).toBeCloseTo(0.05999, 5);
    expect(said(findings, 'dig-in-root-zone')[0]?.values.atLeast).toBe(true);
  });

  it('out of every zone says nothing', () => {
    const { pipes, digs, findings } = encroached({
      features: [tree({ trunkDiameter: 0.2, baseDiameter: 0.2 })],
      paths: [pipeAt(15)],
      digs: [dig()],
    });
    expect([pipes, digs, findings]).toEqual([[], [], []]);
  });
});

describe('a pipe beside a tree', () => {
  const beside = (y: number, facts: Partial<Path> = {}, fields: FeatureOf<'tree'>['fields'] = {}) =>
    encroached({
      features: [tree({ trunkDiameter: 0.5, baseDiameter: 0.5, ...fields })],
      paths: [pipeAt(y, facts)],
    });

  it('has so much of its length in each zone: 2 √(r² − a²)', () => {
    const [found] = beside(2).pipes;
    expect(found?.zones[0]).toMatchObject({ rule: 'as-4970', radius: 6 });
    expect(found?.zones[0]?.length).toBeCloseTo(2 * Math.sqrt(36 - 4), 9);
    expect(found?.zones[0]?.inner).toBeCloseTo(2 * Math.sqrt(2.474 ** 2 - 4), 2);
    expect(found?.zones.map((z) => z.rule)).toHaveLength(treeRuleIds.length);
  });

  it('is so far from wall to trunk face', () => {
    const stretches: Path['stretches'] = [{ from: 0, material: 'clay', diameter: 0.1, slope: 0 }];
    const [found] = beside(3, { stretches }).pipes;
    // clay of 100 mm: a wall of 15 mm
    expect(found?.distance).toBeCloseTo(3 - 0.065 - 0.25, 9);
    expect(beside(0.1).pipes[0]?.distance).toBeLessThan(0);
  });

  it('has the tree on one side, seen with the flow', () => {
    expect(beside(2).pipes[0]?.side).toBe('right');
    expect(beside(-2).pipes[0]?.side).toBe('left');
    const round = (points: readonly [number, number][]) =>
      encroached({
        features: [tree({ trunkDiameter: 0.5, baseDiameter: 0.5 })],
        paths: [
          pipe(
            'p',
            points.map(([x, y]) => typed(x, y)),
          ),
        ],
      }).pipes[0]?.side;
    // outside and inside of a corner, and past the end of the pipe
    expect(
      round([
        [-9, 1],
        [1, 1],
        [1, -9],
      ]),
    ).toBe('right');
    expect(
      round([
        [-9, -1],
        [-1, -1],
        [-1, -9],
      ]),
    ).toBe('left');
    expect(
      round([
        [-9, 1],
        [-1, 1],
      ]),
    ).toBe('right');
  });

  it('that lies there already is a note, one that is planned is to be looked at', () => {
    expect(said(beside(2).findings, 'pipe-in-root-zone')[0]?.severity).toBe('note');
    const planned = said(beside(2, { state: 'proposed' }).findings, 'pipe-in-root-zone')[0];
    expect(planned).toMatchObject({
      severity: 'should',
      values: { state: 'proposed', side: 'right', cover: null },
    });
  });

  it('may be bored where it has the cover that is asked for', () => {
    const deep = (depth: number) =>
      encroached({
        features: [tree({ trunkDiameter: 0.5, baseDiameter: 0.5 })],
        paths: [
          pipe(
            'p',
            [-20, 20].map((x) => ({ spot: typed(x, 2), level: { is: 'depth-to-top', depth } as const })),
            { state: 'proposed' },
          ),
        ],
      }).pipes[0]?.bore;
    expect(deep(feet(4.6))).toMatchObject({ enough: true, row: 'boreDepthNear' });
    expect(deep(feet(4.6))?.cover).toBeCloseTo(feet(4.6), 6);
    expect(deep(feet(4.4))?.enough).toBe(false);
    expect(beside(2).pipes[0]?.bore.enough).toBeNull();
  });
});
