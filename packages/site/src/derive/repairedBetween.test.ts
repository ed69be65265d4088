import { describe, expect, it } from 'vitest';
import type { Visit } from '../document/visit';
import { repairedBetween } from './repairedBetween';

const visit = (id: string, purpose: Visit['purpose'], date?: string): Visit => ({
  id,
  purpose,
  note: '',
  ...(date === undefined ? {} : { date }),
});

const visits = [
  visit('march', 'first-look', '2026-03-01'),
  visit('repair', 'after-repair', '2026-04-01'),
  visit('april', 'after-cleaning', '2026-04-01'),
  visit('may', 'other', '2026-05-01'),
  visit('june', 'other', '2026-06-01'),
  visit('repair-again', 'after-repair', '2026-07-01'),
  visit('august', 'other', '2026-08-01'),
  visit('first', 'first-look'),
  visit('undated', 'other'),
  visit('undated-repair', 'after-repair'),
];

/** The answer, which has to be the same either way round. */
function between(a: string | null, b: string | null, among: readonly Visit[] = visits): boolean {
  const [there, back] = [
    repairedBetween({ visits: [...among] }, a, b),
    repairedBetween({ visits: [...among] }, b, a),
  ];
  expect(back).toBe(there);
  return there;
}

describe('a repair between two visits', () => {
  it.each([
    ['march', 'may'],
    ['march', 'repair'],
    ['june', 'repair-again'],
    ['repair', 'august'], // of July
    ['repair', 'repair-again'],
  ])('was done after the earlier one of %s and %s and before the later', (a, b) => {
    expect(between(a, b)).toBe(true);
  });

  it.each([
    ['may', 'june'],
    ['repair', 'may'], // before both
    ['repair-again', 'august'],
  ])('was not done of %s and %s, which are both before it or both after it', (a, b) => {
    expect(between(a, b)).toBe(false);
  });

  it('is between two looks of one day of which one is after it, and not between two that are', () => {
    expect(between('april', 'repair')).toBe(true);
    expect(between('april', 'may')).toBe(true);
    const again = [...visits, visit('repair-too', 'after-repair', '2026-04-01')];
    expect(between('repair', 'repair-too', again)).toBe(false);
    expect(between('repair-too', 'may', again)).toBe(false);
  });

  it('needs no date of a first look, which was before all others', () => {
    expect(between('first', 'may')).toBe(true);
    expect(between('first', 'repair')).toBe(true);
    expect(between('first', 'march')).toBe(false);
  });

  it('is not told of a visit without a date, or of none, but by what that or the other was for', () => {
    for (const open of ['undated', null]) {
      for (const dated of ['march', 'may', 'august', 'first']) expect(between(open, dated)).toBe(false);
      for (const after of ['repair', 'undated-repair']) expect(between(open, after)).toBe(true);
    }
    expect(between('undated', null)).toBe(false);
    for (const other of ['march', 'may', 'first', 'repair'])
      expect(between('undated-repair', other)).toBe(true);
  });

  it('counts for others only with its date', () => {
    expect(
      between(
        'march',
        'may',
        visits.filter(({ id }) => id !== 'repair'),
      ),
    ).toBe(false);
  });

  it('is not within one visit', () => {
    for (const one of [...visits.map(({ id }) => id), null]) expect(between(one, one)).toBe(false);
  });
});
