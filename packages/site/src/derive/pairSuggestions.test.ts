import { describe, expect, it } from 'vitest';
import type { Reading, Run } from '../document/run';
import type { Site } from '../document/site';
import type { Visit } from '../document/visit';
import { push, tee, yard } from '../testing/yard';
import { derive } from './derive';

const down = { entry: 'head', path: 'main' } as const;
const up = { entry: 'end', path: 'main', direction: 'against-flow' } as const;

type Sight = number | (Partial<Reading> & { counter: number });

/** Runs A, B … with readings A1, A2 …, and pairs such as `A1 B2`. */
function suggested(
  pushes: readonly (readonly [facts: Partial<Run>, sights: readonly Sight[]])[],
  { paired = [], visits = [] }: { paired?: readonly string[]; visits?: Site['visits'] } = {},
) {
  const runs = pushes.map(([facts, sights], i) => {
    const letter = String.fromCharCode(65 + i);
    const readings = sights.map((s, j) => ({
      ...(typeof s === 'number' ? { counter: s } : s),
      id: `${letter}${j + 1}`,
    }));
    return push({ id: letter, letter, ...facts }, readings);
  });
  const refOf = (reading = '') => ({ run: reading.slice(0, 1), reading });
  const pairs = paired.map((text, i) => {
    const [a, b] = text.split(' ');
    return { id: `p${i}`, a: refOf(a), b: refOf(b) };
  });
  return derive(yard({ ...tee(), runs, pairs, visits })).pairSuggestions;
}

const labels = (...args: Parameters<typeof suggested>) =>
  suggested(...args).map(({ a, b }) => `${a.label} ${b.label}`);

const visit = (id: string, purpose: Visit['purpose'], date?: string): Visit =>
  date === undefined ? { id, purpose, note: '' } : { id, purpose, note: '', date };

describe('suggested pairs', () => {
  it('are the same kind near each other from two runs, nearest first', () => {
    // B from the other end: 14.9 → 5.1, 11.6 → 8.4
    const found = suggested([
      [down, [5, 8]],
      [up, [11.6, 14.9]],
    ]);
    expect(found.map(({ a, b, closure }) => [a.label, b.label, closure])).toEqual([
      ['A1', 'B2', expect.closeTo(0.1, 9)],
      ['A2', 'B1', expect.closeTo(0.4, 9)],
    ]);
  });

  it('reach as far as half a metre and three deviations', () => {
    const sigma = Math.sqrt(
      2 * (0.03 ** 2 + 0.03 ** 2 / 12) + 2 * 0.05 ** 2 + 0.08 ** 2 + 0.08 ** 2 + 0.1 ** 2,
    );
    const limit = 0.5 + 3 * sigma;
    // the deviation grows with the cable: by 0.01 m over the last metre
    expect(
      labels([
        [down, [8]],
        [down, [8 + limit - 0.01]],
      ]),
    ).toEqual(['A1 B1']);
    expect(
      labels([
        [down, [8]],
        [down, [8 + limit + 0.05]],
      ]),
    ).toEqual([]);
  });

  it('keep the order along the pipe: a shift of all of them does not make the near ones pair wrongly', () => {
    expect(
      labels([
        [down, [4, 5, 6]],
        [down, [4.45, 5.45, 6.45]],
      ]),
    ).toEqual(['A1 B1', 'A2 B2', 'A3 B3']);
    const crack = (counter: number) => ({ counter, seen: 'crack' as const });
    const roots = (counter: number) => ({ counter, seen: 'roots' as const });
    // the roots lie on the other side of the crack: only one of the two can be the same thing
    expect(
      labels([
        [down, [crack(5), roots(5.3)]],
        [down, [roots(5.1), crack(5.4)]],
      ]),
    ).toEqual(['A2 B1']);
  });

  it('are of one kind, on one pipe, of two runs, and things', () => {
    const sights = (seen: Reading['seen']): readonly Sight[] => [{ counter: 8, seen }];
    expect(
      labels([
        [down, sights('crack')],
        [down, sights('roots')],
      ]),
    ).toEqual([]);
    expect(
      labels([
        [down, sights('end-of-run')],
        [down, sights('end-of-run')],
      ]),
    ).toEqual([]);
    expect(
      labels([
        [down, sights('water-level')],
        [down, sights('water-level')],
      ]),
    ).toEqual([]);
    expect(labels([[down, [8, 8.1]]])).toEqual([]);
    expect(
      labels([
        [down, [10.2]],
        [{ entry: 'side', path: 'branch' }, [4.9]],
      ]),
    ).toEqual([]);
  });

  it('leave out what goes on when it was seen from both sides: its two beginnings are two places', () => {
    const sag = (counter: number, to: number) => ({ counter, to, seen: 'sag' as const });
    expect(
      labels([
        [down, [sag(7, 8)]],
        [up, [sag(12, 13)]],
      ]),
    ).toEqual([]);
    expect(
      labels([
        [down, [sag(7, 8)]],
        [down, [sag(7.1, 8)]],
      ]),
    ).toEqual(['A1 B1']);
  });

  it('use each thing once and leave out what is paired', () => {
    const pushes = [
      [down, [8]],
      [down, [8.1]],
      [down, [8.3]],
    ] as const;
    expect(labels(pushes)).toEqual(['A1 B1']);
    expect(labels(pushes, { paired: ['A1 B1'] })).toEqual(['B1 C1']);
    expect(labels(pushes, { paired: ['A1 B1', 'C1 A1'] })).toEqual([]);
  });

  it('do not cross what is paired', () => {
    const pushes = [
      [down, [{ counter: 5, seen: 'fitting' }, 5.2]],
      [down, [5, { counter: 5.2, seen: 'fitting' }]],
    ] as const;
    expect(labels(pushes)).toHaveLength(1);
    expect(labels(pushes, { paired: ['A1 B2'] })).toEqual([]);
  });

  it('are of visits between which nothing was repaired', () => {
    const visits = [
      visit('first', 'first-look', '2026-03-01'),
      visit('cleaned', 'after-cleaning', '2026-05-01'),
      visit('repaired', 'after-repair', '2026-04-01'),
      visit('undated', 'other'),
    ];
    const between = (a: string | null, b: string | null, among: readonly Visit[] = visits) =>
      labels(
        [
          [{ ...down, visit: a }, [8]],
          [{ ...down, visit: b }, [8]],
        ],
        { visits: [...among] },
      ).length === 1;
    expect(between('repaired', 'repaired')).toBe(true);
    expect(between('first', 'repaired')).toBe(false);
    expect(between('first', 'cleaned')).toBe(false);
    expect(between('first', 'cleaned', visits.slice(0, 2))).toBe(true);
    expect(between('first', 'undated')).toBe(true);
    expect(between(null, 'first')).toBe(true);
    expect(between(null, 'repaired')).toBe(false);
  });
});
