import { distance, type Point, pointInRing } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Run } from '../document/run';
import type { Site } from '../document/site';
import { sigmaNames } from '../rules/sigmas';
import { seeded } from '../testing/dice';
import { push, ref, tee, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';
import { type MarkReach, reachOfMark } from './reach';

const FT = 0.3048;

/** Every measurement as good as exact. */
const exact = Object.fromEntries(sigmaNames.map((name) => [name, 1e-12]));

type Cable = readonly [point: Point, cable: number, facts?: Partial<Run>];

/** Runs A, B … from these points with one reading each, all of one thing; no pipe is drawn. */
function seenFrom(cables: readonly Cable[], sigmas: Site['sigmas'] = exact): Site {
  const letter = (i: number) => String.fromCharCode(65 + i);
  const site = yard({
    features: cables.map(([at], i) => thing(`at${letter(i)}`, 'cleanout', [typed(at.x, at.y)])),
    runs: cables.map(([, cable, facts], i) =>
      push(
        {
          id: letter(i),
          letter: letter(i),
          entry: `at${letter(i)}`,
          direction: i % 2 === 0 ? 'with-flow' : 'against-flow',
          resolution: 0,
          ...facts,
        },
        [{ id: `${letter(i)}1`, counter: cable }],
      ),
    ),
    pairs: cables.slice(1).map((_, i) => ({
      id: `p${i}`,
      a: { run: letter(i), reading: `${letter(i)}1` },
      b: { run: letter(i + 1), reading: `${letter(i + 1)}1` },
    })),
  });
  return { ...site, sigmas };
}

function reachOf(site: Site, of = 'A1'): MarkReach {
  const derived = derive(site);
  const mark = derived.marks.find((m) => m.label === of);
  const found = mark === undefined ? null : reachOfMark(site, derived, mark);
  if (found === null) throw new Error('no reach');
  return found;
}

const findings = (site: Site) => derive(site).findings.filter((f) => f.code === 'cables-too-short');

describe('the reach of a mark', () => {
  it('is the disc about its entry, as wide as its cable and three deviations of it', () => {
    const { knowns, region, pipes } = reachOf(seenFrom([[{ x: 3, y: 4 }, 8]], {}));
    const sigma = Math.hypot(0.03, 0.05, 0.08);
    expect(knowns).toMatchObject([{ point: ref('atA'), at: { x: 3, y: 4 }, cable: 8 }]);
    expect(knowns[0]?.slack).toBeCloseTo(3 * sigma, 12);
    expect(region).toMatchObject({ kind: 'disc', at: { x: 3, y: 4 } });
    expect(region?.kind === 'disc' && region.radius).toBeCloseTo(8 + 3 * sigma, 12);
    expect(pipes).toEqual([]);
  });

  it('of a thing seen from both ends is a lens, and an ellipse for the pipe: 40 ft apart with 41 ft of cable', () => {
    // the design's numbers: half width ½√(41² − 40²) = 4.5 ft for both; lens of two discs of 20.5 ft 40 ft apart: 6.015 ft²
    const site = seenFrom([
      [{ x: 0, y: 0 }, 20.5 * FT],
      [{ x: 40 * FT, y: 0 }, 20.5 * FT],
    ]);
    const { region, pipes, contradiction } = reachOf(site);
    expect(contradiction).toBeNull();
    expect(region?.kind === 'lens' && region.halfWidth / FT).toBeCloseTo(4.5, 6);
    expect((region?.area ?? 0) / FT ** 2).toBeCloseTo(6.015, 3);
    expect(pipes).toHaveLength(1);
    expect((pipes[0]?.reach.string ?? 0) / FT).toBeCloseTo(41, 6);
    expect((pipes[0]?.reach.halfWidth ?? 0) / FT).toBeCloseTo(4.5, 6);
    expect(reachOf(site, 'B1').region?.area).toBeCloseTo(region?.area ?? 0, 9);
  });

  it('counts from the point at which the counter was zeroed in the pipe', () => {
    const zero = { at: 'point', counter: 2, point: ref('main', 'b') } as const;
    const site = {
      ...yard({ ...tee(), runs: [push({ entry: 'head', path: 'main', zero, resolution: 0 }, [5])] }),
      sigmas: exact,
    };
    // zeroed at (10, 0), and 3 m on
    expect(reachOf(site).knowns).toMatchObject([{ point: ref('main', 'b'), at: { x: 10, y: 0 } }]);
    expect(reachOf(site).knowns[0]?.cable).toBeCloseTo(3, 12);
    // and what was read 1.5 m short of it lies as far to its other side
    const short = { ...site, runs: [push({ entry: 'head', path: 'main', zero, resolution: 0 }, [0.5])] };
    expect(reachOf(short).knowns[0]?.cable).toBeCloseTo(1.5, 12);
  });

  it('takes off the riser, and is there for a reading past the end of what is drawn', () => {
    const zero = { at: 'rim', counter: 0, riser: 1.5, sweepRadius: 0 } as const;
    const runs = [push({ entry: 'head', path: 'main', zero, resolution: 0 }, [31.5])];
    const site = { ...yard({ ...tee(), runs }), sigmas: exact };
    expect(derive(site).marks[0]?.place).toBeNull();
    expect(reachOf(site).knowns[0]?.cable).toBeCloseTo(30, 12);
  });

  it('is not known without an entry, nor before the pipe', () => {
    const runs = [push({ id: 'A' }, [{ id: 'A1', counter: 3 }])];
    const site = yard({ ...tee(), runs });
    const derived = derive(site);
    expect(derived.marks.map((m) => reachOfMark(site, derived, m))).toEqual([null]);
    const zero = { at: 'in-pipe', counter: 5 } as const;
    const before = seenFrom([[{ x: 0, y: 0 }, 3, { zero }]]);
    const computed = derive(before);
    expect(computed.marks.map((m) => reachOfMark(before, computed, m))).toEqual([null]);
  });

  it('holds the thing, and the ellipse the pipe, whatever way the pipe takes and with errors up to their slack', () => {
    const random = seeded(17);
    let narrow = 0;
    for (let k = 0; k < 150; k++) {
      // a crooked pipe from (0, 0), and what was seen at one of its corners
      const corners: Point[] = [{ x: 0, y: 0 }];
      for (let i = 0; i < 6; i++) {
        const { x, y } = corners.at(-1) ?? { x: 0, y: 0 };
        const turned = (random() - 0.5) * 2;
        const leg = 1 + 5 * random();
        corners.push({ x: x + leg * Math.cos(turned), y: y + leg * Math.sin(turned) });
      }
      const at = 1 + Math.floor(5 * random());
      const lengthOf = (line: readonly Point[]) =>
        line.slice(1).reduce((sum, p, i) => sum + distance(line[i] ?? p, p), 0);
      const [a, b] = [lengthOf(corners.slice(0, at + 1)), lengthOf(corners.slice(at))];
      const last = corners.at(-1) ?? { x: 0, y: 0 };
      // zero and scale both off by 1.8 deviations, which is within three of them together
      const off = (cable: number) => (random() < 0.5 ? -1.8 : 1.8) * (0.05 + 0.01 * cable) * Math.SQRT1_2;
      const site = seenFrom(
        [
          [{ x: 0, y: 0 }, a + off(a)],
          [last, b + off(b)],
        ],
        {},
      );
      const { region, pipes, contradiction } = reachOf(site);
      expect(contradiction).toBeNull();
      expect(findings(site)).toEqual([]);
      const seen = corners[at] ?? last;
      expect(pointInRing(seen, region?.outline ?? [])).toBe('inside');
      const [pipe] = pipes;
      for (const p of corners) {
        expect(distance(p, { x: 0, y: 0 }) + distance(p, last)).toBeLessThan(
          (pipe?.reach.string ?? 0) + 1e-9,
        );
      }
      if ((region?.area ?? Infinity) < Math.PI * a * a * 0.5) narrow += 1;
    }
    expect(narrow).toBeGreaterThan(50);
  });
});

describe('cables that are too short for one thing', () => {
  const apart = (cable: number, sigmas: Site['sigmas'] = {}) =>
    seenFrom(
      [
        [{ x: 0, y: 0 }, 8],
        [{ x: 20, y: 0 }, cable],
      ],
      sigmas,
    );

  it('are named with both readings, both points and what they lack', () => {
    const { region, contradiction, pipes } = reachOf(apart(10));
    expect([region, pipes]).toEqual([null, []]);
    expect(contradiction?.knowns.map((known) => known.mark.label)).toEqual(['A1', 'B1']);
    expect(contradiction?.gap).toBeCloseTo(2, 9);
    expect(findings(apart(10))).toMatchObject([
      {
        severity: 'warning',
        at: { kind: 'reading', run: 'A', id: 'A1' },
        values: { a: 'A1', b: 'B1', pointA: 'atA/a', pointB: 'atB/a', gap: expect.closeTo(2, 9) },
      },
    ]);
  });

  it('may lack what three deviations of both come to, and a look from both sides', () => {
    const slack = (cable: number, look: number) => 3 * Math.hypot(0.03, 0.05, 0.01 * cable, look);
    const limit = 12 - slack(8, 0) - slack(11, 0.1);
    for (const [cable, count] of [
      [limit + 0.02, 0],
      [limit - 0.02, 1],
    ] as const) {
      expect(findings(apart(cable))).toHaveLength(count);
      expect(reachOf(apart(cable)).contradiction === null).toBe(count === 0);
    }
  });

  it('of three runs are named when only all three contradict each other', () => {
    // an equilateral triangle of 10 m: its centre is 10/√3 from each corner
    const corners = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 5, y: 5 * Math.sqrt(3) },
    ];
    const site = seenFrom(corners.map((at) => [at, 5.5] as const));
    const { region, contradiction } = reachOf(site);
    expect(region).toBeNull();
    expect(contradiction?.knowns.map((known) => known.mark.label)).toEqual(['A1', 'B1', 'C1']);
    expect(contradiction?.gap).toBeCloseTo(10 / Math.sqrt(3) - 5.5, 6);
    expect(findings(site)).toEqual([]);
  });
});
