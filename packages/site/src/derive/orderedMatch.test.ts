import { describe, expect, it } from 'vitest';
import { seeded } from '../testing/dice';
import { type Candidate, orderedMatch } from './orderedMatch';

/** The greatest total gain of all choices, by trying each candidate in and out. */
function bestByTrying(candidates: readonly Candidate[]): number {
  const best = (rest: readonly Candidate[]): number => {
    const [first, ...others] = rest;
    if (first === undefined) return 0;
    const fitting = others.filter((c) => (c.i - first.i) * (c.j - first.j) > 0);
    return Math.max(best(others), first.gain + best(fitting));
  };
  return best(candidates);
}

const total = (chosen: readonly Candidate[]) => chosen.reduce((sum, c) => sum + c.gain, 0);

describe('orderedMatch', () => {
  it('gives up a near one where that lets two others stand', () => {
    const chosen = orderedMatch([
      { i: 0, j: 1, gain: 0.9 },
      { i: 0, j: 0, gain: 0.6 },
      { i: 1, j: 1, gain: 0.5 },
    ]);
    expect(chosen.map((c) => [c.i, c.j])).toEqual([
      [0, 0],
      [1, 1],
    ]);
  });

  it('does not cross', () => {
    const chosen = orderedMatch([
      { i: 0, j: 1, gain: 0.8 },
      { i: 1, j: 0, gain: 0.9 },
    ]);
    expect(chosen.map((c) => [c.i, c.j])).toEqual([[1, 0]]);
  });

  it('takes nothing without a gain', () => {
    expect(orderedMatch([{ i: 0, j: 0, gain: 0 }])).toEqual([]);
    expect(orderedMatch([])).toEqual([]);
  });

  it('is as good as trying every choice, uses each item once and keeps the order', () => {
    const random = seeded(11);
    for (let k = 0; k < 400; k++) {
      const candidates = Array.from({ length: Math.floor(12 * random()) }, () => ({
        i: Math.floor(5 * random()),
        j: Math.floor(5 * random()),
        gain: random() - 0.1,
      }));
      const chosen = orderedMatch(candidates);
      expect(total(chosen)).toBeCloseTo(bestByTrying(candidates), 12);
      for (const [i, c] of chosen.entries()) {
        const before = chosen[i - 1];
        if (before === undefined) continue;
        expect(c.i).toBeGreaterThan(before.i);
        expect(c.j).toBeGreaterThan(before.j);
      }
    }
  });
});
