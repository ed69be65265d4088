// Sources: none published; invariants of the method (a blunder b shows as −r b in its own residual) on seeded yards.
import { describe, expect, it } from 'vitest';
import { seededNetwork } from './seededNetwork';
import { solved } from './solved';

describe('a blunder of ten sigma in a seeded yard', () => {
  const { estimates, observations } = seededNetwork(11, 10, 90);
  const clean = solved({ estimates, observations });

  it('is not there before: the global test passes and no observation is significant', () => {
    expect(clean.globalTest?.passed).toBe(true);
    expect(clean.suspects()).toEqual([]);
  });

  // Observations that the others check well (redundancy of a half and more), of every kind.
  const wellChecked = observations.map((_, i) => i).filter((i) => (clean.redundancyNumbers[i] ?? 0) > 0.5);

  it('is named first wherever it is made, and its size is estimated', () => {
    expect(new Set(wellChecked.map((i) => observations[i]?.kind)).size).toBe(5);
    for (const index of wellChecked) {
      const spoilt = observations.map((o, i) => (i === index ? { ...o, value: o.value + 10 * o.sigma } : o));
      const [group] = solved({ estimates, observations: spoilt }).suspects();
      const sigma = observations[index]?.sigma ?? 0;
      expect(group).toHaveLength(1);
      expect(group?.[0]).toMatchObject({ id: observations[index]?.id, index });
      // The estimate is off by the observation's own noise and that of its check: sigma / √r, here taken four times.
      expect(Math.abs((group?.[0].blunder ?? 0) - 10 * sigma)).toBeLessThan((4 * sigma) / Math.SQRT1_2);
    }
  });

  it('shows in other residuals too, ranked by size behind it', () => {
    let shown = 0;
    for (const index of wellChecked) {
      const spoilt = observations.map((o, i) => (i === index ? { ...o, value: o.value + 10 * o.sigma } : o));
      const result = solved({ estimates, observations: spoilt });
      const sizes = result.suspects().map(([{ standardizedResidual }]) => Math.abs(standardizedResidual));
      expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
      // 3.2905: 0.1 % in both tails of the normal law (tables). No two here are tied, so that each is a group.
      const significant = [...result.standardizedResiduals].filter((w) => Math.abs(w) > 3.2905);
      expect(sizes).toHaveLength(significant.length);
      shown += sizes.length;
    }
    expect(shown).toBeGreaterThan(wellChecked.length);
  });
});
