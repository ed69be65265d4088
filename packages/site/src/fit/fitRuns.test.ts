import { describe, expect, it } from 'vitest';
import { derive } from '../derive/derive';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { setAside } from '../edits/siteEdits';
import { fitOf, located, pushedFromBothEnds } from '../testing/fitting';
import { pipe, push, ref, thing, typed, yard } from '../testing/yard';
import { fitRuns } from './fitRuns';

describe('without evidence', () => {
  const fit = fitOf(pushedFromBothEnds());

  it('leaves all as drawn and says so', () => {
    expect(fit.status).toBe('no-evidence');
    expect(fit.pending).toBe(0);
    expect(fit.test).toBeNull();
    expect([...fit.marks.values()].every((m) => m.fitted === null)).toBe(true);
  });

  it('makes the zone along the pipe of counter, zero and scale, as errors add up by their squares', () => {
    // by hand: scale 1 % of 12 m, zero 0.05, counter 0.03 and a step of 0.03
    const sigma = Math.hypot(0.12, 0.05, Math.hypot(0.03, 0.03 / Math.sqrt(12)));
    const a3 = fit.marks.get('a3')?.zone;
    const along = a3?.makeUp.filter((m) => m.source !== 'path') ?? [];
    expect(Math.hypot(...along.map((m) => m.along))).toBeCloseTo(sigma, 4);
    const whole = Math.hypot(...(a3?.makeUp.map((m) => m.along) ?? []));
    expect(a3?.along).toBeCloseTo(2.447746831 * whole, 2);
  });

  it('is surest near the end that is tied and least so where it was drawn by eye', () => {
    const across = (id: string) => fit.marks.get(id)?.zone.across ?? 0;
    expect(across('a1')).toBeLessThan(across('a2'));
    expect(across('b1')).toBeLessThan(across('b2'));
  });

  it('widens with what a site says of its own measurements', () => {
    const wide = fitOf(pushedFromBothEnds({ sigmas: { scale: 0.05 } }));
    expect(wide.marks.get('a3')?.zone.along).toBeGreaterThan(2 * (fit.marks.get('a3')?.zone.along ?? 0));
  });
});

describe('with locates', () => {
  const before = located();
  const fit = fitOf(before);

  it('draws the line to where the sonde was found', () => {
    expect(fit.status).toBe('fitted');
    expect(fit.pending).toBeGreaterThan(0.3);
    const a2 = fit.marks.get('a2');
    expect(a2?.fitted?.at.y).toBeLessThan(-0.3);
    expect(a2?.fitted?.zone.semiMajor).toBeLessThan(0.5 * (a2?.zone.semiMajor ?? 0));
  });
});

describe('a pipe told leg by leg', () => {
  /** Straight on, an arc to the right, and what comes after it told by its turn from the arc's end or from the same by eye. */
  const told = (last: Spot): Site => {
    const drawn = {
      ...yard({
        features: [thing('co', 'cleanout', [typed(0, 0)])],
        paths: [
          pipe('p', [
            { by: 'at', point: ref('co') },
            { by: 'course', azimuth: Math.PI / 2, distance: 6 },
            { by: 'arc', radius: 5, sweep: 0.8, chord: null },
            last,
          ]),
        ],
        runs: [push({ id: 'a', letter: 'A', entry: 'co', path: 'p' }, [{ id: 'a1', counter: 13 }])],
      }),
    };
    const mark = derive(drawn).marks[0]?.place?.at ?? { x: 0, y: 0 };
    const locate = thing('l', 'locate', [typed(mark.x, mark.y)], {
      reading: { run: 'a', reading: 'a1' },
      method: 'crossed',
    });
    return { ...drawn, features: [...drawn.features, locate] };
  };

  it('is not bent by a locate that found it where it was drawn, also behind an arc', () => {
    const fit = fitOf(told({ by: 'turn', turn: 0.2, distance: 8 }));
    expect(fit.status).toBe('fitted');
    expect(fit.pending).toBeLessThan(0.001);
    expect(Math.max(...fit.observations.map((o) => Math.abs(o.standardized ?? 0)))).toBeLessThan(0.01);
  });

  it('takes a point for drawn by eye where the line that it lies on has no length', () => {
    const of = told({ by: 'between', from: ref('co'), to: ref('co'), fraction: 0.5 });
    expect(fitOf(of).marks.size).toBe(1);
    for (const { zone } of fitOf(of).marks.values()) expect(Number.isFinite(zone.semiMajor)).toBe(true);
  });
});

describe('what does not fit', () => {
  it('names the locate that three others contradict, and what it would have to be', () => {
    const wrong = pushedFromBothEnds({}, [
      ['l1', 'a1', 4, 0.1],
      ['l2', 'a2', 8, 2.6],
      ['l3', 'a2', 8.05, 0.3],
      ['l4', 'b2', 12, 0.4],
    ]);
    const [first] = fitOf(wrong).blunders;
    expect(first?.map((b) => b.name)).toEqual(['locate/l2']);
    expect(first?.[0]?.standardized).toBeGreaterThan(5);
    expect(Math.abs(first?.[0]?.blunder ?? 0)).toBeCloseTo(2.2, 0);
    const without = setAside(wrong, { observation: 'locate/l2', aside: true });
    expect(fitOf(without).blunders).toEqual([]);
    expect(fitOf(without).aside.map((t) => t.is)).toEqual(['locate']);
  });

  it('leaves the zone about the drawing when what was said of it is set aside', () => {
    const shown = (of: Site) => fitOf(of).marks.get('a2')?.zone;
    const aside = setAside(located(), { observation: 'point/p/b', aside: true });
    expect(shown(aside)).toEqual(shown(located()));
  });

  it('says that nothing tells two locates of one reading apart', () => {
    const two = pushedFromBothEnds({ sigmas: { drawnPipePoint: 5, pipeStray: 5 } }, [
      ['l1', 'a2', 8, 3],
      ['l2', 'a2', 8, -3],
    ]);
    const [first] = fitOf(two).blunders;
    expect(first?.map((b) => b.name).sort()).toEqual(['locate/l1', 'locate/l2']);
  });
});

describe('bad input', () => {
  it.each<[string, Site]>([
    ['no path', yard()],
    [
      'all locates in one place',
      pushedFromBothEnds({}, [
        ['l1', 'a1', 4, 0],
        ['l2', 'a2', 4, 0],
        ['l3', 'a3', 4, 0],
      ]),
    ],
    ['a locate far away', pushedFromBothEnds({}, [['l1', 'a1', 900, 900]])],
    [
      'a reading past the end',
      pushedFromBothEnds({ runs: [push({ id: 'a', entry: 'co', path: 'p' }, [{ id: 'a1', counter: 90 }])] }, [
        ['l1', 'a1', 4, 0],
      ]),
    ],
    [
      'readings that go backwards',
      pushedFromBothEnds(
        {
          runs: [
            push({ id: 'a', entry: 'co', path: 'p' }, [
              { id: 'a1', counter: 8 },
              { id: 'a2', counter: 3 },
            ]),
          ],
        },
        [['l1', 'a1', 8, 0]],
      ),
    ],
    [
      'a scale of next to nothing',
      pushedFromBothEnds(
        {
          runs: [
            push({ id: 'a', entry: 'co', path: 'p', scale: { by: 'said', factor: 1e-9 } }, [
              { id: 'a1', counter: 8 },
            ]),
          ],
        },
        [['l1', 'a1', 8, 0]],
      ),
    ],
    [
      'a pair with itself across the ends',
      {
        ...pushedFromBothEnds(),
        pairs: [{ id: 'x', a: { run: 'a', reading: 'a1' }, b: { run: 'b', reading: 'b1' } }],
      },
    ],
    [
      'endlessly wide deviations',
      pushedFromBothEnds({ sigmas: { zero: 1000, scale: 1000, counter: 1000 } }, [['l1', 'a1', 4, 0]]),
    ],
  ])('%s gives a status, not an error, and finite numbers', (_, of) => {
    const copy = structuredClone(of);
    const fit = fitOf(of);
    expect(['no-evidence', 'fitted', 'not-converged', 'undetermined']).toContain(fit.status);
    for (const { zone } of fit.marks.values()) {
      expect(Number.isFinite(zone.semiMajor) && Number.isFinite(zone.hole.length)).toBe(true);
    }
    expect(of).toEqual(copy);
  });

  it('with everything about a zero set aside and nothing in its place says what hangs on nothing', () => {
    const of = setAside(
      {
        ...pushedFromBothEnds(),
        pairs: [{ id: 'x', a: { run: 'a', reading: 'a2' }, b: { run: 'b', reading: 'b3' } }],
      },
      { observation: 'zero/a', aside: true },
    );
    const more = setAside(setAside(of, { observation: 'scale/a', aside: true }), {
      observation: 'zero/b',
      aside: true,
    });
    const fit = fitOf(more);
    expect(fit.status).toBe('undetermined');
    expect(fit.loose.length).toBeGreaterThan(0);
  });

  it('stops when it is asked to', () => {
    const of = located();
    expect(fitRuns(of, derive(of), { shouldStop: () => true })).toBeNull();
  });
});
