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

  it('has locates of four readings, by tapes, a few inches to a foot and a half from the computed marks', () => {
    const locates = site.features.flatMap((f) => (f.kind === 'locate' ? [f] : []));
    const off = locates.map((locate) => {
      const { reading } = locate.fields;
      const mark = derived.marks.find((m) => m.reading.id === reading?.reading && m.run.id === reading.run);
      const [at, computed] = [derived.points.get(`${locate.id}/a`)?.at, mark?.place?.at];
      expect(locate.vertices[0]?.spot.by).toBe('tapes');
      expect(locate.fields.method).toBeDefined();
      expect(locate.fields.depth).toBeGreaterThan(5 * FOOT_M);
      if (at === undefined || computed === undefined) throw new Error(`${locate.id} has no place`);
      return [mark?.label, Math.hypot(at.x - computed.x, at.y - computed.y) / FOOT_M] as const;
    });
    expect(off.map(([label]) => label)).toEqual(['A3', 'A7', 'A10', 'B3']);
    for (const [label, feet] of off) expect(feet, label).toBeLessThan(1.5);
    expect(Math.max(...off.map(([, feet]) => feet))).toBeGreaterThan(0.5);
  });

  it('has levels from which a profile follows: ground above the pipe, and the pipe falls all the way', () => {
    const [lateral] = site.paths;
    const cleanout = site.features.find((f) => f.id === 'f31');
    const ground = site.features.flatMap((f) => (f.kind === 'spot-level' ? [f.fields.level ?? 0] : []));
    expect(ground.length).toBe(5);
    for (const level of ground) expect(Math.abs(level - 29.9)).toBeLessThan(0.2);
    const inverts = (lateral?.vertices ?? []).flatMap(({ level }) => {
      if (level === undefined) return [];
      if (level.is === 'invert') return [level.level];
      return cleanout?.kind === 'spot-level' ? [(cleanout.fields.level ?? 0) - level.depth] : [];
    });
    expect(inverts).toHaveLength(3);
    expect(inverts).toEqual(inverts.toSorted((a, b) => b - a));
    expect(Math.min(...ground) - Math.max(...inverts)).toBeGreaterThan(1.4);
  });

  it('has one visit, on which both runs came to something that they could not pass', () => {
    expect(site.visits).toMatchObject([{ date: '2026-04-14', purpose: 'first-look' }]);
    for (const run of site.runs) {
      expect(run).toMatchObject({ visit: site.visits[0]?.id, ended: 'could-not-pass' });
      expect(run.readings.at(-1)?.passed).toBe(false);
    }
    expect(site.pairs).toEqual([]);
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
