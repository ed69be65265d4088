import { addFeature, addPair, derive, fitRuns, type RunsFit, type Site, setAside } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { en } from './en';

const FT = 0.3048;
const { site: yard } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });

const SENTENCES = /^[\p{Lu}\d“].*\.$/u;
const NOT_SAID =
  /undefined|\bnull\b(?! agree)|NaN|Infinity|[{}$]|\b(sigma|residual|standard deviation|chi|covariance)\b/i;

function weighed(site: Site): RunsFit {
  const fit = fitRuns(site, derive(site));
  if (fit === null) throw new Error('nobody stopped it');
  return fit;
}

function locate(id: string, x: number, y: number, reading: string): (site: Site) => Site {
  return (site) =>
    addFeature(site, {
      feature: {
        id,
        kind: 'locate',
        name: '',
        vertices: [{ id: 'a', spot: { by: 'coordinates', x: x * FT, y: y * FT } }],
        fields: { reading: { run: 'r1', reading }, method: 'crossed' },
      },
    });
}

// by hand, as for A3 in the tests of how a mark came about: A1 is (20 − 1)·1.002 − 3.6781 = 15.3599 ft along, 15.2413 ft in plan
const agreeing = [locate('l1', 32, -15.24, 'q1'), locate('l2', 32, -64.95, 'q3')].reduce(
  (s, add) => add(s),
  yard,
);
const blundering = locate('l3', 32, -40, 'q3')(agreeing);

describe('how the evidence stands', () => {
  it('is said to be nothing while nothing checks the marks, with what to do', () => {
    const { text, cure } = en.fitText(weighed(yard), yard);
    expect(text).toBe('Nothing checks these marks yet.');
    expect(cure).toContain('receiver');
  });

  it('counts what agrees, and says what the fit would move', () => {
    const { text, cure } = en.fitText(weighed(agreeing), agreeing);
    expect(text).toBe('2 pieces of evidence agree.');
    expect(cure).toMatch(/^Taking the fit (moves|leaves) the marks/);
  });

  it('names what does not fit, or all that cannot be told apart, and how surprising that is', () => {
    const fit = weighed(blundering);
    expect(fit.blunders.flat().map((s) => s.name)).toContain('locate/l3');
    const { text, cure } = en.fitText(fit, blundering);
    expect(text).toMatch(
      /does not fit: [\d.]+ times what is usual, a chance of less than 1 in|nothing tells which/,
    );
    expect(cure).toContain('set');
  });

  it('says so when everything has been set aside', () => {
    const aside = ['locate/l1', 'locate/l2'].reduce(
      (s, observation) => setAside(s, { observation, aside: true }),
      agreeing,
    );
    expect(en.fitText(weighed(aside), aside).text).toBe(
      'All evidence is set aside, so nothing checks these marks.',
    );
  });

  it('says of each state what it is, and that the sketch stays', () => {
    const fit = weighed(blundering);
    const name = fit.observations[0]?.name ?? '';
    for (const status of ['not-converged', 'undetermined'] as const) {
      const { text, cure } = en.fitText({ ...fit, status, loose: [name] }, blundering);
      expect(text).toMatch(SENTENCES);
      expect(text).not.toMatch(NOT_SAID);
      expect(cure).toContain('The sketch stays as it is.');
    }
  });
});

describe('what is surprising', () => {
  // two-sided tails of the normal distribution, from a printed table: 1.960 5 %, 2.576 1 %, 3.291 0.1 %, 3.891 0.01 %
  it.each([
    [1.9, 'as expected'],
    [-2, '2 times what is usual, a chance of less than 1 in 20'],
    [2.6, '2.6 times what is usual, a chance of less than 1 in 100'],
    [3.3, '3.3 times what is usual, a chance of less than 1 in 1,000'],
    [-12.3, '12 times what is usual, a chance of less than 1 in 1,000,000'],
  ])('%f deviations are %s', (standardized, text) => {
    expect(en.surpriseText(standardized)).toBe(text);
  });
});

describe('observations and suspects', () => {
  const paired = addPair(blundering, {
    pair: { id: 'pair', a: { run: 'r1', reading: 'q1' }, b: { run: 'r2', reading: 'q5' } },
  });
  const everything = weighed(paired).observations;

  it('have names and say how far off they are', () => {
    expect(everything.length).toBeGreaterThan(10);
    for (const o of everything) {
      const said = [en.evidenceName(o.tag, paired), en.offText([o], paired)];
      for (const text of said) expect(text).not.toMatch(NOT_SAID);
      expect(said[0]).toMatch(/^\p{Lu}/u);
    }
  });

  it('say what each would have to be, were it the only wrong one', () => {
    for (const o of everything) {
      const suspect = { tag: o.tag, name: o.name, standardized: 4, blunder: 0.5, observed: o.observed };
      const text = en.blunderText(suspect, paired);
      expect(text).toMatch(SENTENCES);
      expect(text).not.toMatch(NOT_SAID);
    }
  });

  it('turn a blunder back into what people wrote', () => {
    const say = (tag: Parameters<typeof en.blunderText>[0]['tag'], blunder: number, observed = 0) =>
      en.blunderText({ tag, name: '', standardized: 4, blunder, observed }, paired);
    // A1 was written as 20 ft; 3 ft too large means 17 ft
    expect(say({ is: 'counter', run: 'r1', reading: 'q1' }, 3 * FT)).toBe(
      'It says 20.0 ft and would have to say 17.0 ft.',
    );
    // too far downstream means that it belongs upstream
    expect(say({ is: 'locate', feature: 'l1', part: 'along' }, 2 * FT)).toBe(
      'It would have to be 2.0 ft further upstream.',
    );
    expect(say({ is: 'locate', feature: 'l1', part: 'across' }, -2 * FT)).toBe(
      'It would have to be 2.0 ft further to the right, looking with the flow.',
    );
    expect(say({ is: 'zero', run: 'r1' }, -1 * FT)).toContain('1.0 ft there; it would have to be 2.0 ft');
    expect(say({ is: 'scale', run: 'r1' }, -0.01)).toBe(
      'It is taken as × 1.002 and would have to be × 1.012.',
    );
    // a fitting that turns a pipe left is observed as less than half a turn
    expect(say({ is: 'bend', path: 'p1', vertex: 'b' }, -0.1, Math.PI + Math.PI / 4)).toBe(
      'It turns by 45° and would have to turn by 51°.',
    );
  });
});

describe('two runs and the receiver', () => {
  it('say what alone would make the runs agree', () => {
    const explain = (explanation: Parameters<typeof en.explanationText>[0]) =>
      en.explanationText(explanation, yard);
    expect(explain({ is: 'riser', run: 'r1', wouldBe: 6 * FT, by: 2 * FT })).toBe(
      'Run A would have to have 6.0 ft of cable between its zero and the pipe, 2.0 ft more than said.',
    );
    expect(explain({ is: 'scale', run: 'r2', wouldBe: 0.98, by: -0.02 })).toBe(
      'The counter of run B would have to count × 0.98, 2 % less than said.',
    );
    expect(explain({ is: 'pipe', wouldBe: 92 * FT, by: 2 * FT })).toContain('2.0 ft more than drawn');
    expect(explain({ is: 'zero', run: 'r1', wouldBe: 2 * FT, by: 1 * FT })).toContain('2.0 ft at its zero');
  });

  it('say how good the computation is, and what that is not worth', () => {
    const { accuracy } = derive(agreeing);
    if (accuracy === null) throw new Error('there are locates');
    const { text, cure } = en.accuracyText(accuracy, agreeing);
    expect(text).toMatch(/^The 2 locates are .* 19 of 20 lie within .*\.$/);
    expect(cure).toBe('That is few: it takes 20 of them to state an accuracy.');
    expect(en.accuracyText({ ...accuracy, independent: false, enough: true }, agreeing).cure).toContain(
      'no second opinion',
    );
  });

  it('say where a locate lies against the computed place', () => {
    const [first] = derive(locate('l9', 33, -17, 'q1')(yard)).locates;
    if (first === undefined) throw new Error('there is a locate');
    // the pipe runs south: right of the flow is west, so one foot east is left of it
    expect(en.foundText({ ...first, along: FT, across: -FT, distance: Math.SQRT2 * FT }, yard)).toBe(
      '1.4 ft from where it was computed: 1.0 ft downstream and 1.0 ft to the left, looking with the flow. Peak and null agree, both ways.',
    );
    expect(en.foundText({ ...first, along: 0, across: 0, distance: 0, depth: 2 * FT }, yard)).toBe(
      'Where it was computed. Peak and null agree, both ways, 2.0 ft deep.',
    );
  });

  it('name the eight winds', () => {
    const eighth = Math.PI / 4;
    expect([0, 1, 2, 3, 4, 5, 6, 7, 8, -1].map((n) => en.windText(n * eighth))).toEqual([
      'north',
      'north-east',
      'east',
      'south-east',
      'south',
      'south-west',
      'west',
      'north-west',
      'north',
      'north-west',
    ]);
  });
});

describe('where no fit of this state is there to show', () => {
  it.each([
    ['weighed again after a failure', true, true, /^Weighing/, /again/],
    ['weighed for the first time', true, false, /^Weighing/, /again/],
    ['failed', false, true, /could not be weighed/, /from before/],
  ])('%s', (_, busy, failed, without, beside) => {
    expect(en.noFitText({ busy, failed })).toMatch(without);
    expect(en.oldFitText({ busy, failed })).toMatch(beside);
  });

  it('without a run there is nothing to weigh, and beside a fit that stands nothing is said', () => {
    expect(en.noFitText({ busy: false, failed: false })).toMatch(/nothing to weigh/);
    expect(en.oldFitText({ busy: false, failed: false })).toBeNull();
  });
});
