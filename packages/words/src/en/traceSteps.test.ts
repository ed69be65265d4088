import type { Units } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { en } from './en';

const UNITS: Units = { length: 'ft', diameter: 'in', direction: 'bearing' };

function stepsOf(label: string, units: Units = UNITS) {
  const { site, derived } = sampleYard(units);
  const mark = derived.marks.find((m) => m.label === label);
  if (mark === undefined) throw new Error(`no mark ${label}`);
  return en.traceSteps(mark, site, derived);
}

const shownAt = (label: string, step: string) => stepsOf(label).find((s) => s.step === step)?.value;

describe('how a mark came about', () => {
  it('is told in the order of the computation', () => {
    expect(stepsOf('A3').map((s) => s.step)).toEqual([
      'counter',
      'new-zeros',
      'zero',
      'scale',
      'cable',
      'entry-leg',
      'along',
      'entry',
      'station',
      'position',
    ]);
  });

  // By hand: A3 shows 30 ft after a new zero at 40 ft, so 70 ft; (70 − 1)·1.002 = 69.138 ft of cable. The riser of 4 ft with a
  // sweep of 0.75 ft saves (2 − π/2)·0.75 = 0.3219 ft, so the entry leg is 3.6781 ft and 65.4599 ft lie along the pipe;
  // at 1:8 that is 65.4599/√(1 + 1/64) = 64.9544 ft in plan, south of the cleanout at (32, 0).
  it.each([
    ['counter', '30.0 ft'],
    ['new-zeros', '70.0 ft'],
    ['zero', '1.0 ft'],
    ['scale', '× 1.002'],
    ['cable', '69.14 ft'],
    ['entry-leg', '3.68 ft'],
    ['along', '65.46 ft'],
    ['entry', '0.0 ft'],
    ['station', '64.95 ft'],
    ['position', '32.0 ft east, −64.95 ft north'],
  ])('%s comes to %s', (step, value) => {
    expect(shownAt('A3', step)).toBe(value);
  });

  it('says what the sweep saves and what the grade takes', () => {
    const notes = stepsOf('A3').map((s) => s.note ?? '');
    expect(notes.join(' ')).toContain('Riser of 4.0 ft less the 0.32 ft that its sweep saves.');
    expect(notes.join(' ')).toContain('grade and drops take 0.51 ft off the cable');
  });

  // the fitted number is made up: longer than the riser, of which no sweep saves anything
  it('does not say that a sweep saves what the fit made of the entry leg', () => {
    const { site, derived } = sampleYard(UNITS);
    const mark = derived.marks.find((m) => m.label === 'A3');
    if (mark === undefined) throw new Error('no mark A3');
    const trace = { ...mark.trace, entryLeg: 4.2 * 0.3048, fitted: true };
    const steps = en.traceSteps({ ...mark, trace }, site, derived);
    expect(steps.find((s) => s.step === 'entry-leg')).toMatchObject({
      value: '4.2 ft',
      note: 'Riser of 4.0 ft with its sweep; as the fit made it.',
    });
    expect(steps.map((s) => s.note).join(' ')).not.toContain('saves');
  });

  it('says less where less happened', () => {
    expect(stepsOf('B1').map((s) => s.step)).not.toContain('new-zeros');
    expect(shownAt('B1', 'entry-leg')).toBe('0.0 ft');
    expect(stepsOf('B1').find((s) => s.step === 'entry')?.note).toBe('Cleanout f3, with the flow.');
  });

  // the fitted numbers are made up: a mark shows whatever its trace carries
  it('says where along the pipe it was zeroed, how far the lens is ahead, and what the fit made', () => {
    const { site, derived } = sampleYard(UNITS);
    const mark = derived.marks.find((m) => m.label === 'B1');
    if (mark === undefined) throw new Error('no mark B1');
    const ft = 0.3048;
    const trace = { ...mark.trace, start: 30 * ft, ahead: ft / 3, along: 42 * ft, scale: 1, fitted: true };
    const steps = en.traceSteps({ ...mark, trace }, site, derived);
    const stepOf = (step: string) => steps.find((s) => s.step === step);
    expect(stepOf('start')).toMatchObject({ value: '30.0 ft', note: 'Along the pipe from the entry.' });
    expect(stepOf('ahead')?.value).toBe('0.33 ft');
    expect(stepOf('along')).toMatchObject({
      value: '42.0 ft',
      note: 'Cable out less the entry leg, and where the counter was zeroed, and the head.',
    });
    expect(stepOf('scale')?.note).toContain('as the fit made it');
    expect(stepOf('zero')?.note).toContain('as the fit made it');
    expect(steps.map((s) => s.step).slice(5, 8)).toEqual(['start', 'ahead', 'along']);
    expect(stepsOf('B1').map((s) => s.step)).not.toContain('start');
  });

  it('says that a scale is from a length that was counted', () => {
    const { site, derived } = sampleYard(UNITS);
    const mark = derived.marks.find((m) => m.label === 'B1');
    if (mark === undefined) throw new Error('no mark B1');
    const run = { ...mark.run, scale: { by: 'calibration', counted: 20, actual: 20 } } as const;
    const note = en.traceSteps({ ...mark, run }, site, derived).find((s) => s.step === 'scale')?.note;
    expect(note).toBe('True length for each counted length, from a length that was counted.');
  });

  it('ends where the computation did', () => {
    expect(stepsOf('A4').at(-1)?.step).toBe('entry');
  });

  it('keeps counters decimal where tapes are in feet and inches', () => {
    const steps = stepsOf('A3', { ...UNITS, length: 'ft-in' });
    expect(steps.find((s) => s.step === 'counter')?.value).toBe('30.0 ft');
    expect(steps.find((s) => s.step === 'along')?.value).toBe('65′ 5½″');
  });
});

describe('ties', () => {
  const { site, derived } = sampleYard(UNITS);
  const ties = derived.marks.find((m) => m.label === 'B1')?.place?.ties ?? null;

  it('name the point that they start from, with the distance', () => {
    if (ties === null) throw new Error('B1 has ties');
    for (const tie of ties.pair) {
      expect(en.tieText(tie, site)).toBe(
        `${(tie.distance / 0.3048).toFixed(2)} ft from ${en.referenceName(tie.from, site)}`,
      );
    }
    expect(en.sideText(ties, site)).toBe(
      `on the ${ties.side}, looking from ${en.referenceName(ties.pair[0].from, site)} to ${en.referenceName(ties.pair[1].from, site)}`,
    );
  });
});
