import { describe, expect, it } from 'vitest';
import { versionsToDrop } from './versionSpacing';

describe('thinning out versions', () => {
  const at = (times: readonly number[]) => times.map((time) => ({ at: time }));

  it('takes those that lie closest together, never the first nor the last ten', () => {
    const times = [0, 100, 101, 102, 200, ...Array.from({ length: 10 }, (_, i) => 300 + i)];
    expect(versionsToDrop(at(times), 14)).toEqual(at([101]));
    expect(versionsToDrop(at(times), 12).map((v) => v.at)).toEqual([101, 102, 100]);
    expect(versionsToDrop(at(times), 15)).toEqual([]);
  });

  it('keeps a spread over weeks of work', () => {
    const weeks = at(Array.from({ length: 400 }, (_, i) => i * 600));
    const dropped = new Set(versionsToDrop(weeks, 40));
    const kept = weeks.filter((v) => !dropped.has(v)).map((v) => v.at);
    expect(kept).toHaveLength(40);
    const gaps = kept.slice(1).map((time, i) => time - (kept[i] ?? 0));
    expect(Math.max(...gaps)).toBeLessThan((3 * 400 * 600) / 30);
  });
});
