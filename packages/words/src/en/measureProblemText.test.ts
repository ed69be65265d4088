import type { Units } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { en } from './en';

const metric: Units = { length: 'm', diameter: 'mm', direction: 'azimuth' };

describe('measurements that contradict each other', () => {
  it('name what an arc would have to be, and what was given', () => {
    const facts = { given: 10, computed: 12.5 };
    expect(en.arcProblemText({ code: 'delta-against-arc-length', ...facts }, metric)).toMatch(
      /the arc is 12\.50* m long, not 10(\.0+)? m\.$/,
    );
    expect(en.arcProblemText({ code: 'chord-against-delta', ...facts }, metric)).toMatch(
      /would be 12\.50* m, not 10(\.0+)? m\.$/,
    );
    // one and a half turns
    expect(en.arcProblemText({ code: 'past-full-circle', given: 3 * Math.PI }, metric)).toContain('540°');
  });

  it('say by how much tapes miss each other', () => {
    const [short, long] = (['too-short', 'too-long'] as const).map((code) =>
      en.spotProblemText({ code, gap: 0.25 }, metric),
    );
    expect(short).toMatch(/0\.250* m is missing/);
    expect(long).toMatch(/miss by 0\.250* m/);
  });
});
