import { describe, expect, it } from 'vitest';
import { openSiteValue } from '../document/openSite';
import type { Reading, Run } from '../document/run';
import type { Site } from '../document/site';
import { seeded } from '../testing/dice';
import { pipe, push, ref, tee, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';
import type { PairExplanation } from './pairExplanations';

const down = { entry: 'head', path: 'main' } as const;
const up = { entry: 'end', path: 'main', direction: 'against-flow' } as const;

type Sight = readonly [facts: Partial<Run>, counter: number];

/** Two runs, A and B, with one reading each that are one thing. */
function seenTwice([a, atA]: Sight, [b, atB]: Sight, parts: Pick<Site, 'features' | 'paths'> = tee()): Site {
  const run = (letter: string, facts: Partial<Run>, counter: number) =>
    push({ id: letter, letter, ...facts }, [{ id: `${letter}1`, counter }]);
  return yard({
    ...parts,
    runs: [run('A', a, atA), run('B', b, atB)],
    pairs: [{ id: 'p', a: { run: 'A', reading: 'A1' }, b: { run: 'B', reading: 'B1' } }],
  });
}

function agreement(site: Site) {
  const [found] = derive(site).pairs;
  if (found === undefined) throw new Error('no agreement');
  return found;
}

/** What the explanations come to, by what they are and whose. */
function told(explanations: readonly PairExplanation[]) {
  return explanations.map((e) => [`${e.is}${'run' in e ? ` ${e.run}` : ''}`, e.wouldBe, e.by]);
}

describe('a pair', () => {
  it('closes from where the first run has the thing to where the second does, with the flow', () => {
    expect(agreement(seenTwice([down, 8], [up, 11.5]))).toMatchObject({
      path: 'main',
      stationA: 8,
      stationB: 8.5,
      closure: 0.5,
    });
    expect(agreement(seenTwice([up, 11.5], [down, 8])).closure).toBe(-0.5);
  });

  it('from both ends is explained by any of seven things', () => {
    // together they counted 19.5 m through a pipe that is drawn with 20
    expect(told(agreement(seenTwice([down, 8], [up, 11.5])).explanations)).toEqual([
      ['zero A', -0.5, -0.5],
      ['scale A', 8.5 / 8, expect.closeTo(8.5 / 8 - 1, 12)],
      ['zero B', -0.5, -0.5],
      ['scale B', 12 / 11.5, expect.closeTo(12 / 11.5 - 1, 12)],
      ['pipe', 19.5, -0.5],
    ]);
    expect(told(agreement(seenTwice([down, 8], [up, 12.5])).explanations)).toEqual([
      ['zero A', 0.5, 0.5],
      ['riser A', 0.5, 0.5],
      ['scale A', 7.5 / 8, expect.closeTo(7.5 / 8 - 1, 12)],
      ['zero B', 0.5, 0.5],
      ['riser B', 0.5, 0.5],
      ['scale B', 12 / 12.5, expect.closeTo(12 / 12.5 - 1, 12)],
      ['pipe', 20.5, 0.5],
    ]);
  });

  it('from one end is not explained by the length of the pipe', () => {
    const { explanations } = agreement(seenTwice([down, 8], [{ ...down, entry: 'mid' }, 3.3], withMid()));
    expect(explanations.map((e) => e.is)).toEqual(['zero', 'scale', 'zero', 'riser', 'scale']);
  });

  it('is not explained by a riser before a zero in the middle of the pipe', () => {
    const zero = { at: 'point', counter: 0, point: ref('mid') } as const;
    const { explanations } = agreement(seenTwice([{ ...down, zero }, 3.5], [up, 12.5], withMid()));
    expect(told(explanations).map(([what]) => what)).toEqual([
      'zero A',
      'scale A',
      'zero B',
      'riser B',
      'scale B',
      'pipe',
    ]);
  });

  it('is left out when a reading has no place', () => {
    expect(derive(seenTwice([down, 8], [up, 30])).pairs).toEqual([]);
  });
});

/** The tee with a cleanout 5 m down the main. */
function withMid(): Pick<Site, 'features' | 'paths'> {
  return { ...tee(), features: [...tee().features, thing('mid', 'cleanout', [typed(5, 0)])] };
}

describe('an explanation', () => {
  it('makes the runs agree when it alone is taken as true', () => {
    const random = seeded(3);
    let tried = 0;
    for (let k = 0; k < 30; k++) {
      const against = (entry: 'head' | 'end') => (entry === 'head' ? 'with-flow' : 'against-flow');
      const facts = (entry: 'head' | 'end'): Partial<Run> => ({
        entry,
        path: 'main',
        direction: against(entry),
        scale: { by: 'said', factor: 0.95 + 0.1 * random() },
        zero:
          random() < 0.5
            ? { at: 'in-pipe', counter: random() }
            : { at: 'rim', counter: random(), riser: 0.5 + random(), sweepRadius: 0 },
        head: { length: 0.3, zeroed: random() < 0.5 ? 'tail' : 'lens' },
      });
      const sights = [
        [facts(random() < 0.5 ? 'head' : 'end'), 11 + 4 * random()],
        [facts('end'), 11 + 4 * random()],
      ] as const;
      const parts = sloped(0);
      const site = seenTwice(sights[0], sights[1], parts);
      const { explanations, closure } = agreement(site);
      expect(Math.abs(closure)).toBeGreaterThan(1e-6);
      for (const e of explanations) {
        expect(Math.abs(agreement(asExplained(site, e)).closure), JSON.stringify(e)).toBeLessThan(1e-9);
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(150);
  });

  /** 24 m due east, the first 10 m at 3 in 4 (5 m of cable for 4), then level; `more` metres longer at its lower end. */
  function sloped(more: number): Pick<Site, 'features' | 'paths'> {
    const length = 24 + more;
    return {
      features: [thing('head', 'cleanout', [typed(0, 0)]), thing('end', 'manhole', [typed(length, 0)])],
      paths: [
        pipe('main', [typed(0, 0), typed(length, 0)], {
          stretches: [
            { from: 0, material: 'clay', diameter: 0.1, slope: 0.75 },
            { from: 10, material: 'clay', diameter: 0.1, slope: 0 },
          ],
        }),
      ],
    };
  }

  function asExplained(site: Site, e: PairExplanation): Site {
    if (e.is === 'pipe') return { ...site, ...sloped(e.by) };
    const changed = (run: Run): Run => {
      switch (e.is) {
        case 'zero':
          return { ...run, zero: { ...run.zero, counter: e.wouldBe } };
        case 'riser': {
          const { counter } = run.zero;
          return { ...run, zero: { at: 'rim', counter, riser: e.wouldBe, sweepRadius: 0 } };
        }
        case 'scale':
          return { ...run, scale: { by: 'said', factor: e.wouldBe } };
      }
    };
    return { ...site, runs: site.runs.map((run) => (run.id === e.run ? changed(run) : run)) };
  }
});

describe('the deviation of a closure', () => {
  it('comes from counters, zeros, scales over the cable, and the look from both sides', () => {
    // the table: counter 0.03, zero 0.05, scale 1 %, the same thing 0.1; a step of 0.03 adds 0.03/√12 = 0.00866
    const counter = 2 * (0.03 ** 2 + 0.03 ** 2 / 12);
    const expected = Math.sqrt(counter + 2 * 0.05 ** 2 + 0.08 ** 2 + 0.115 ** 2 + 0.1 ** 2);
    expect(agreement(seenTwice([down, 8], [up, 11.5])).sigma).toBeCloseTo(expected, 12);
  });

  it('is what errors drawn at random make of it', () => {
    const random = seeded(21);
    const normal = () => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
    const sights = (off: (sigma: number) => number): readonly [Sight, Sight] => {
      const rim = { at: 'rim', counter: off(0.05), riser: 1.5 + off(0.05), sweepRadius: 0 } as const;
      const calibrated = { by: 'calibration', counted: 5, actual: 5.1 + off(0.02) } as const;
      // a look at the counter at either end of the length that was counted
      const counted = 5 + off(0.04) + off(0.04);
      return [
        [
          { ...down, zero: rim, resolution: 0, scale: { by: 'said', factor: 1 + off(0.02) } },
          11.5 + off(0.04),
        ],
        [
          {
            ...up,
            zero: { at: 'in-pipe', counter: off(0.05) },
            resolution: 0,
            scale: { ...calibrated, counted },
          },
          9.8 + off(0.04) + off(0.1) / 1.02,
        ],
      ];
    };
    const sigmas = { counter: 0.04, scale: 0.02 };
    const exact = { ...seenTwice(...sights(() => 0)), sigmas };
    expect(exact.tape.sigma).toBe(0.02);
    const { sigma, closure } = agreement(exact);
    let square = 0;
    const TIMES = 500;
    for (let k = 0; k < TIMES; k++) {
      const off = agreement({ ...seenTwice(...sights((s) => s * normal())), sigmas }).closure - closure;
      square += off * off;
    }
    // the deviation of 500 has one of 1/√1000 = 3 % itself
    expect(Math.abs(Math.sqrt(square / TIMES) / sigma - 1)).toBeLessThan(0.09);
  });
});

describe('a pair that says nothing', () => {
  const findings = (site: Site) => derive(site).findings.filter((f) => f.code.startsWith('pair-'));
  const reading = (id: string, counter: number): Partial<Reading> & { counter: number } => ({ id, counter });
  const one = yard({ ...tee(), runs: [push({ id: 'A', ...down }, [reading('A1', 3), reading('A2', 4)])] });
  const paired = (a: string, b: string): Site => ({
    ...one,
    pairs: [{ id: 'p', a: { run: 'A', reading: a }, b: { run: 'A', reading: b } }],
  });

  it('is no pair of a reading with itself: a site with one is not opened', () => {
    expect(openSiteValue(paired('A1', 'A1'))).toMatchObject({
      ok: false,
      failure: { code: 'invalid', problems: [{ code: 'paired-with-itself', path: ['pairs', 0] }] },
    });
  });

  it('is one within a run', () => {
    expect(derive(paired('A1', 'A2')).pairs).toEqual([]);
    expect(findings(paired('A1', 'A2'))).toMatchObject([
      { code: 'pair-of-one-run', values: { a: 'A1', b: 'A2' } },
    ]);
  });

  it('is one on two pipes', () => {
    const site = seenTwice([down, 8], [{ entry: 'side', path: 'branch' }, 2]);
    expect(derive(site).pairs).toEqual([]);
    expect(findings(site)).toMatchObject([
      { code: 'pair-on-two-paths', values: { a: 'A1', b: 'B1', pathA: 'main', pathB: 'branch' } },
    ]);
  });
});
