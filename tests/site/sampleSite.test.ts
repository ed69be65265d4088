import { readFileSync } from 'node:fs';
import { derive, FOOT_M, openSite, type Site, writeSite } from '@footmark/site';
import { describe, expect, it } from 'vitest';

const text = readFileSync(new URL('../../packages/site/samples/rear-alley.json', import.meta.url), 'utf8');

function opened(): Site {
  const result = openSite(text);
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.site;
}

describe('the rear-alley sample', () => {
  const site = opened();
  const derived = derive(site);

  it('opens, and is written back to the letter', () => {
    expect(writeSite(site)).toBe(text);
  });

  it('derives without an error, with something to warn of and something to note', () => {
    const severities = derived.findings.map((f) => f.severity);
    expect(severities).not.toContain('error');
    expect(severities).toContain('warning');
    expect(severities).toContain('note');
  });

  it('shows every way to place a point', () => {
    const ways = new Set([...site.features, ...site.paths].flatMap((o) => o.vertices.map((v) => v.spot.by)));
    expect([...ways].sort()).toEqual(
      ['at', 'bearing', 'between', 'coordinates', 'course', 'finger', 'offset', 'tapes', 'turn'].sort(),
    );
  });

  it('has counter readings that are whole tenths of a foot', () => {
    for (const reading of site.runs.flatMap((r) => r.readings)) {
      const tenths = reading.counter / FOOT_M / 0.1;
      expect(Math.abs(tenths - Math.round(tenths)), reading.id).toBeLessThan(1e-7);
    }
  });

  it('places every mark, and ties all but those under the house', () => {
    expect(derived.marks).toHaveLength(15);
    const untied = derived.marks.filter((m) => m.place !== null && m.place.ties === null);
    expect(derived.marks.every((m) => m.place !== null)).toBe(true);
    expect(untied.map((m) => m.label)).toEqual(['A1']);
  });

  it('has two runs that see the same joint and roots from both ends, 1.2 to 1.8 ft apart', () => {
    const station = (label: string) =>
      (derived.marks.find((m) => m.label === label)?.place?.station ?? Number.NaN) / FOOT_M;
    for (const [a, b] of [
      ['A9', 'B5'],
      ['A10', 'B4'],
    ] as const) {
      const apart = Math.abs(station(a) - station(b));
      expect(apart, `${a} ${b}`).toBeGreaterThan(1.2);
      expect(apart, `${a} ${b}`).toBeLessThan(1.8);
    }
  });
});
