import { type EdgeClearance, landOf } from '@footmark/dig';
import { derive } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { draw } from '../draw';
import type { DrawOptions } from '../drawOptions';
import { hatchLines } from '../hatchLines';
import { expandPattern } from '../pattern';
import type { PatternPrimitive } from '../primitive';
import { digOf, lines, type oak, picture, siteWith } from '../testing/digPicture';
import { labelsOn, pointFeature, primitivesOn, straightSite } from '../testing/straightRun';
import { clearancesToDraw } from './drawClearances';
import { fillRing } from './ringsOf';

const box = (points: readonly { x: number; y: number }[]) => {
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
};

describe('a planned dig', () => {
  it('is drawn by its bottom, fine, and its top, white with dark dashes in it', () => {
    const drawing = picture(siteWith());
    const ofDig = lines(drawing, 'excavation').filter((l) => l.target?.kind === 'dig');
    // white is the uniform colour code's for a proposed excavation (APWA / ANSI Z535.1, STANDARDS C1)
    expect(ofDig.map((l) => [l.stroke?.ink, l.stroke?.dash !== undefined])).toEqual([
      ['ink', false],
      ['proposed', false],
      ['proposed-dash', true],
    ]);
    // by hand: Type C soil is cut back 1½ to 1 (29 CFR 1926 Subpart P, App. B), 3 m to all sides at 2 m deep
    const [bottom, top] = ofDig;
    for (const [line, expected] of [
      [bottom, [-0.5, 0.5, 10, 14]],
      [top, [-3.5, 3.5, 7, 17]],
    ] as const) {
      box(line?.points ?? []).forEach((side, i) => {
        expect(side).toBeCloseTo(expected[i] ?? Number.NaN, 9);
      });
    }
  });

  it('has ticks that go down its slopes, long and short in turn, and stop before the bottom', () => {
    const pattern = primitivesOn(picture(siteWith()), 'excavation').find(
      (p): p is PatternPrimitive => p.kind === 'pattern' && p.pattern === 'slope',
    );
    if (pattern === undefined) throw new Error('the dig has slopes');
    for (const mmPerMetre of [10, 1]) {
      const ticks = expandPattern(pattern, mmPerMetre).flatMap((p) => (p.kind === 'line' ? [p.points] : []));
      expect(ticks.length).toBeGreaterThan(4);
      const lengths = ticks.map(([a, b]) => Math.hypot((b?.x ?? 0) - (a?.x ?? 0), (b?.y ?? 0) - (a?.y ?? 0)));
      // by hand: 3 mm of paper is 0.3 m at 1:100; at 1:1000 it would be 3 m, and three quarters of the 3 m of slope is 2.25 m
      const long = mmPerMetre === 10 ? 0.3 : 2.25;
      lengths.forEach((length, i) => {
        expect(length).toBeCloseTo(i % 2 === 0 ? long : long / 2, 9);
      });
      for (const [edge, down] of ticks) {
        // the top's rectangle is centred on (0, 12): every tick ends nearer to its middle lines than it begins
        const inside = (p?: { x: number; y: number }) =>
          Math.min(3.5 - Math.abs(p?.x ?? 0), 5 - Math.abs((p?.y ?? 0) - 12));
        expect(inside(edge)).toBeCloseTo(0, 9);
        expect(inside(down)).toBeGreaterThan(0.01);
      }
    }
  });

  it('has no ticks where a shield holds its sides', () => {
    const kinds = primitivesOn(picture(siteWith({ protection: 'shield' })), 'excavation').map((p) => p.kind);
    expect(kinds).not.toContain('pattern');
  });

  it('has its heap hatched on the side where it lies, and none where it is carted away', () => {
    const fills = (spoil: 'left' | 'right' | 'away') =>
      lines(picture(siteWith({ spoil })), 'excavation').filter((l) => l.fill?.hatch === 'diagonal');
    const [left] = fills('left');
    const [right] = fills('right');
    // seen along the pipe, which goes north: left is west, beyond the top's edge at 3.5 m
    expect(Math.max(...(left?.points ?? []).map((p) => p.x))).toBeLessThan(-3.5);
    expect(Math.min(...(right?.points ?? []).map((p) => p.x))).toBeGreaterThan(3.5);
    expect(fills('away')).toEqual([]);
  });

  it('has its heap named inside it', () => {
    const words: DrawOptions['words'] = { spoil: (volume) => `${volume.toFixed(1)} loose` };
    const [named] = labelsOn(picture(siteWith(), { words }), 'excavation');
    expect(named?.text).toMatch(/^[\d.]+ loose$/);
    // left of the pipe, beyond the top's edge
    expect(named?.at.x).toBeLessThan(-3.5);
    expect(labelsOn(picture(siteWith({ spoil: 'away' }), { words }), 'excavation')).toEqual([]);
  });

  it('has a ladder across its line at every way out', () => {
    // 4 ft deep asks for a way out within 25 ft (29 CFR 1926.651(c)(2)): one, in the middle of 4 m
    const ladders = primitivesOn(picture(siteWith()), 'excavation').filter((p) => p.kind === 'symbol');
    expect(ladders).toMatchObject([{ symbol: 'ladder', azimuth: Math.PI / 2 }]);
    // by hand: half way up the right side, from 0.5 m to 3.5 m off the middle
    const [ladder] = ladders;
    expect(ladder?.at.x).toBeCloseTo(2, 9);
    expect(ladder?.at.y).toBeCloseTo(12, 9);
    const [other] = primitivesOn(picture(siteWith({ spoil: 'right' })), 'excavation').filter(
      (p) => p.kind === 'symbol',
    );
    expect(other?.at.x).toBeCloseTo(-2, 9);
    expect(primitivesOn(picture(siteWith({ depth: 1 })), 'excavation').map((p) => p.kind)).not.toContain(
      'symbol',
    );
  });

  it('is labelled with what is said of it, at the corner of its top', () => {
    const words: DrawOptions['words'] = {
      excavation: ({ depth, top }, said) =>
        said === 'brief' ? 'brief' : `${depth?.most} deep ${top?.width} wide`,
    };
    expect(labelsOn(picture(siteWith(), { words }), 'excavation')).toMatchObject([
      { text: '2 deep 7 wide', brief: 'brief', target: { kind: 'dig', id: 't' } },
    ]);
    const [label] = labelsOn(picture(siteWith(), { words }), 'excavation');
    expect([label?.at.x, label?.at.y]).toEqual([expect.closeTo(3.5, 9), expect.closeTo(17, 9)]);
  });

  it('shows its bottom alone in the paint where its depth is not known', () => {
    const said = siteWith();
    const digs = said.digging.digs.map(({ depth: _, ...dig }) => dig);
    const site = { ...said, digging: { ...said.digging, digs } };
    const drawing = draw(site, derive(site), { dig: digOf(site) });
    const paint = lines(drawing, 'excavation').filter((l) => l.stroke?.ink === 'proposed');
    expect(paint.map((l) => box(l.points))).toEqual([[-0.5, 0.5, 10, 14].map((v) => expect.closeTo(v, 9))]);
  });

  it('brings out the tolerance zones of services when it is chosen, and not before', () => {
    const gas = {
      ...pointFeature('gas', 'service', 0, 0, { carries: 'gas', diameter: 0.1 }),
      vertices: [0, 20].map((x, i) => ({ id: `${i}`, spot: { by: 'coordinates', x, y: 12 } })),
    } as typeof oak; // a line of two points
    const site = siteWith({}, [gas]);
    const bands = (options: DrawOptions) =>
      lines(picture(site, options), 'excavation').filter((l) => l.fill?.ink === 'gas');
    expect(bands({})).toEqual([]);
    const [band] = bands({ highlight: { dig: 't' } });
    // by hand: 24 in beyond the outside of a pipe of 100 mm (STANDARDS C10)
    const half = 0.05 + 24 * 0.0254;
    box(band?.points ?? []).forEach((side, i) => {
      expect(side).toBeCloseTo([0, 20, 12 - half, 12 + half][i] ?? Number.NaN, 9);
    });
    expect(band?.fill?.opacity).toBeLessThan(0.2);
  });
});

describe('clearances', () => {
  const one = (facts: Partial<EdgeClearance>): EdgeClearance => ({
    of: { is: 'outline', dig: 't' },
    feature: 'oak',
    kind: 'tree',
    distance: 1,
    from: { x: 0, y: 0 },
    at: { x: 3, y: 4 },
    station: null,
    toCentre: false,
    rule: null,
    required: null,
    verdict: null,
    ...facts,
  });

  it('are dimension lines from the one to the other, with their distance', () => {
    const site = siteWith();
    const dig = { ...digOf(site), clearances: [one({ distance: 1.25, verdict: 'misses' })] };
    expect(primitivesOn(draw(site, derive(site), { dig }), 'clearances')).toEqual([]);
    const drawing = draw(site, derive(site), { dig, highlight: { dig: 't' } });
    expect(primitivesOn(drawing, 'clearances')).toMatchObject([
      {
        kind: 'line',
        points: [
          { x: 0, y: 0 },
          { x: 3, y: 4 },
        ],
        stroke: { ink: 'warning' },
      },
      { kind: 'symbol', at: { x: 0, y: 0 } },
      { kind: 'symbol', at: { x: 3, y: 4 } },
    ]);
    expect(labelsOn(drawing, 'clearances')).toMatchObject([{ text: '1.25 m', at: { x: 1.5, y: 2 } }]);
  });

  it('say where things overlap, without a line', () => {
    const site = siteWith();
    const at = { x: 1, y: 2 };
    const dig = { ...digOf(site), clearances: [one({ distance: -0.4, from: at, at })] };
    const words: DrawOptions['words'] = { clearance: (c, other) => `${c.distance} ${other.kind}` };
    const drawing = draw(site, derive(site), { dig, words, highlight: { dig: 't' } });
    expect(primitivesOn(drawing, 'clearances')).toMatchObject([{ kind: 'symbol', at }]);
    expect(labelsOn(drawing, 'clearances')).toMatchObject([{ text: '-0.4 feature', at }]);
  });

  it('of a thing are from pipes and digs, at least from the nearest, and are called by these', () => {
    const site = siteWith();
    const pipe = { is: 'path', id: 'p', state: 'existing' } as const;
    const mark = { is: 'mark', run: 'A', reading: 'A1' } as const;
    const found = [one({ of: pipe, distance: 9 }), one({ distance: 12 }), one({ of: mark, distance: 1 })];
    expect(clearancesToDraw(found, { feature: 'oak' })).toEqual(found.slice(0, 1));
    const dig = { ...digOf(site), clearances: found };
    const words: DrawOptions['words'] = { clearance: (_, other) => JSON.stringify(other) };
    const drawing = draw(site, derive(site), { dig, words, highlight: { feature: 'oak' } });
    expect(labelsOn(drawing, 'clearances').map((l) => l.text)).toEqual(['{"kind":"path","id":"p"}']);
  });

  it('are the worst few of what is chosen, one to a feature', () => {
    const many = ['a', 'b', 'b', 'c', 'd', 'e', 'f'].map((feature, i) => one({ feature, distance: i / 2 }));
    const drawn = clearancesToDraw(many, { dig: 't' });
    expect(drawn.map((c) => c.feature)).toEqual(['a', 'b', 'c', 'd', 'e']);
    const far = [one({ feature: 'a', distance: 30 }), one({ feature: 'b', distance: 30, verdict: 'misses' })];
    expect(clearancesToDraw(far, { dig: 't' }).map((c) => c.feature)).toEqual(['b']);
    expect(clearancesToDraw(many, { dig: 'other' })).toEqual([]);
    expect(clearancesToDraw(many, undefined)).toEqual([]);
  });

  it('of a pipe and a mark are those that miss their rule', () => {
    const of = { is: 'path', id: 'p', state: 'proposed' } as const;
    const found = [one({ of, feature: 'a', verdict: 'misses' }), one({ of, feature: 'b', verdict: 'meets' })];
    expect(clearancesToDraw(found, { path: 'p' }).map((c) => c.feature)).toEqual(['a']);
    const mark = { is: 'mark', run: 'A', reading: 'A1' } as const;
    const near = [one({ of: mark, verdict: 'by-depth' })];
    expect(clearancesToDraw(near, { mark: { run: 'A', id: 'A1' } })).toHaveLength(1);
    expect(clearancesToDraw(near, { mark: { run: 'A', id: 'A2' } })).toEqual([]);
  });
});

describe('whose land', () => {
  const lot = {
    ...pointFeature('lot', 'boundary', 0, 0, {}),
    vertices: [
      [-5, -5],
      [5, -5],
      [5, 12],
      [-5, 12],
    ].map(([x = 0, y = 0], i) => ({ id: `${i}`, spot: { by: 'coordinates', x, y } })),
  } as typeof oak; // an area of four points
  const words: DrawOptions['words'] = {
    whose: (whose) => whose,
    landCrossing: ({ feature, station }) => `${feature} ${station}`,
  };

  it('is marked along pipes beyond the lot, with a tick and its station where they cross', () => {
    const site = siteWith({}, [lot]);
    const derived = derive(site);
    const land = landOf(derived);
    const drawing = draw(site, derived, { words, dig: { excavations: [], treeZones: [], land } });
    const own = primitivesOn(drawing, 'land').filter(
      (p) => p.kind === 'symbol' || (p.kind === 'line' && (p.stroke?.opacity ?? 1) < 1),
    );
    // the pipe goes north from (0, 0) and leaves the lot at y = 12
    expect(own).toMatchObject([
      { kind: 'line', points: [{ x: 0, y: 12 }, { x: 0 }] },
      { kind: 'symbol', symbol: 'land-crossing', at: { x: 0, y: 12 }, azimuth: 0 },
    ]);
    const said = labelsOn(drawing, 'land').map((l) => l.text);
    expect(said).toEqual(expect.arrayContaining(['outside', 'lot 12']));
  });
});

describe('the line of a footing', () => {
  const house = {
    ...pointFeature('house', 'building', 0, 0, { footingDepth: 0.5 }),
    vertices: [
      [6, 8],
      [12, 8],
      [12, 16],
      [6, 16],
    ].map(([x = 0, y = 0], i) => ({ id: `${i}`, spot: { by: 'coordinates', x, y } })),
  } as typeof oak; // an area of four points

  const words: DrawOptions['words'] = {
    footingLine: (influence, reach) => `${influence} ${reach.toFixed(2)}`,
  };
  const shed = { ...house, id: 'shed', kind: 'shed', fields: {} } as typeof oak; // an area of four points
  const rounds = (site: ReturnType<typeof siteWith>, highlight: DrawOptions['highlight'] = { dig: 't' }) => {
    const drawing = draw(site, derive(site), { dig: digOf(site), words, highlight });
    const found = lines(drawing, 'excavation').filter((l) => l.stroke?.ink === 'warning');
    return { found, said: labelsOn(drawing, 'excavation').map((l) => l.text) };
  };

  it('goes round a building as far off as the dig is deeper than its footing, when the dig is chosen', () => {
    const site = siteWith({ protection: 'shield' }, [house]);
    expect(rounds(site, {}).found).toEqual([]);
    const { found, said } = rounds(site);
    // by hand: at 45°, 1 across to 1 down (common practice), 2 m deep and 0.5 m of footing: 1.5 m
    box(found[0]?.points ?? []).forEach((side, i) => {
      expect(side).toBeCloseTo([4.5, 13.5, 6.5, 17.5][i] ?? Number.NaN, 2);
    });
    expect(said).toContain('1 1.50');
  });

  it('goes as far off as the face is cut back to where that is further, as what is said of the dig does', () => {
    const { found, said } = rounds(siteWith({}, [house]));
    // by hand: Type C soil is cut back 1½ to 1 (29 CFR 1926 Subpart P, App. B), 1.5 m above the bottom by 2.25 m
    box(found[0]?.points ?? []).forEach((side, i) => {
      expect(side).toBeCloseTo([3.75, 14.25, 5.75, 18.25][i] ?? Number.NaN, 2);
    });
    expect(said).toContain('null 2.25');
  });

  it('goes round a shed, too, of whose footing nothing is known, and round nothing that is far off', () => {
    expect(rounds(siteWith({}, [shed])).found).toHaveLength(1);
    const far = house.vertices.map((v, i) => ({
      ...v,
      spot: { by: 'coordinates', x: [60, 66, 66, 60][i], y: [8, 8, 16, 16][i] },
    }));
    expect(rounds(siteWith({}, [{ ...house, vertices: far } as typeof oak])).found).toEqual([]);
  });
});

describe('a region as one ring', () => {
  it('leaves its hole out of the hatching', () => {
    const outer = [
      [0, 0],
      [4, 0],
      [4, 4],
      [0, 4],
    ].map(([x = 0, y = 0]) => ({ x, y }));
    const hole = [
      [1, 1],
      [1, 3],
      [3, 3],
      [3, 1],
    ].map(([x = 0, y = 0]) => ({ x, y }));
    for (const [a, b] of hatchLines(fillRing([outer, hole]), 100)) {
      const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      const within = Math.max(Math.abs(middle.x - 2), Math.abs(middle.y - 2));
      expect(within).toBeGreaterThanOrEqual(1 - 1e-9);
    }
  });
});

it('without digs the drawing is as it is without `dig`', () => {
  const site = straightSite({});
  const dig = { excavations: [], treeZones: [], clearances: [] };
  expect(draw(site, derive(site), { dig })).toEqual(draw(site, derive(site)));
});
