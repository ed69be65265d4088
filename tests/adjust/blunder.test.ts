// Sources: none published; invariants of the method (a blunder b shows as −r b in its own residual) on seeded yards.
import { describe, expect, it } from 'vitest';
import { seededNetwork } from './seededNetwork';
import { solved } from './solved';

describe('a blunder of ten sigma in a seeded yard', () => {
  const { estimates, observations } = seededNetwork(11, 10, 90);
  const clean = solved({ estimates, observations });

  it('is not there before: the global test passes and no observation is significant', () => {
    expect(clean.globalTest?.passed).toBe(true);
    expect(clean.suspect?.significant).toBe(false);
  });

  // Observations that the others check well (redundancy of a half and more), of every kind.
  const wellChecked = observations.map((_, i) => i).filter((i) => (clean.redundancyNumbers[i] ?? 0) > 0.5);

  it('is named first wherever it is made, and its size is estimated', () => {
    expect(new Set(wellChecked.map((i) => observations[i]?.kind)).size).toBe(5);
    for (const index of wellChecked) {
      const spoilt = observations.map((o, i) => (i === index ? { ...o, value: o.value + 10 * o.sigma } : o));
      const { suspect } = solved({ estimates, observations: spoilt });
      const sigma = observations[index]?.sigma ?? 0;
      expect(suspect?.id).toBe(observations[index]?.id);
      expect(suspect?.index).toBe(index);
      expect(suspect?.significant).toBe(true);
      // The estimate is off by the observation's own noise and that of its check: sigma / √r, here taken four times.
      expect(Math.abs((suspect?.blunder ?? 0) - 10 * sigma)).toBeLessThan((4 * sigma) / Math.SQRT1_2);
    }
  });
});
