import { standsInTheWay } from '@footmark/dig';
import { derivedReport } from '@footmark/exchange';
import { fitRuns, parseLength } from '@footmark/site';
import { cautionCodes, en } from '@footmark/words';
import { describe, expect, it } from 'vitest';
import { rearAlley } from './rearAlley';

const { site, derived } = rearAlley();
const report = derivedReport(site, derived, fitRuns(site, derived), en, '2026-05-01');

/** Every value in the report with the keys that lead to it. */
function* values(of: unknown, path = ''): Generator<readonly [string, unknown]> {
  yield [path, of];
  if (typeof of !== 'object' || of === null) return;
  for (const [key, value] of Object.entries(of)) yield* values(value, `${path}.${key}`);
}

describe('the report', () => {
  it('is plain JSON: it survives the way through text unchanged', () => {
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
    for (const [path, value] of values(report)) {
      expect(value, path).not.toBeUndefined();
      if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true);
    }
  });

  it('is the same each time', () => {
    const again = rearAlley();
    expect(
      JSON.stringify(
        derivedReport(again.site, again.derived, fitRuns(again.site, again.derived), en, '2026-05-01'),
      ),
    ).toBe(JSON.stringify(report));
  });

  it('has every mark, path, reference and finding', () => {
    expect(report.marks.map((m) => m.label)).toEqual(derived.marks.map((m) => m.label));
    expect(report.paths.map((p) => p.id)).toEqual(site.paths.map((p) => p.id));
    expect(report.references.length).toBe(derived.references.length);
    expect(report.findings.map((f) => f.code)).toEqual(derived.findings.map((f) => f.code));
  });

  it('shows numbers that can be recomputed: cable = scale · (counted − zero), along = cable − entry leg', () => {
    for (const { trace } of report.marks) {
      expect(trace.cable).toBeCloseTo(trace.scale * (trace.counted - trace.zero), 5);
      expect(trace.along).toBeCloseTo(trace.cable - trace.entryLeg, 5);
    }
  });

  it('prints the same lengths that it gives in metres', () => {
    for (const { place } of report.marks) {
      if (place === null) continue;
      const read = parseLength(place.display.station, 'ft');
      expect(read).toMatchObject({ ok: true });
      if (read.ok) expect(Math.abs(read.value - place.station)).toBeLessThan(0.005 * 0.3048 + 1e-6);
    }
  });

  it('accounts for the whole of every path: what was seen and what was not', () => {
    for (const path of report.paths) {
      const coverage = report.coverage.find((c) => c.path === path.id);
      if (coverage === undefined) {
        expect(path.state).toBe('proposed');
        continue;
      }
      const all = [...coverage.seen, ...coverage.unseen];
      // every place, each 5 cm, is in some piece
      for (let station = 0.0005; station < path.length; station += 0.05) {
        expect(all.some((s) => s.from <= station && station <= s.to)).toBe(true);
      }
      for (const gap of coverage.unseen) {
        const middle = (gap.from + gap.to) / 2;
        expect(coverage.seen.some((s) => s.from < middle && middle < s.to)).toBe(false);
      }
      for (const piece of coverage.lookedAt) {
        const middle = (piece.from + piece.to) / 2;
        const runs = coverage.seen.filter((s) => s.from < middle && middle < s.to).map((s) => s.run);
        expect(piece.runs).toEqual(runs);
      }
    }
  });

  it('suggests to pair the joint and the roots that both runs saw, and what is paired after that', () => {
    const labels = report.pairSuggestions.map(({ a, b }) => `${a} ${b}`);
    expect(labels).toEqual(expect.arrayContaining(['A9 B5', 'A10 B4']));
    const refOf = (label: string) => {
      const mark = derived.marks.find((m) => m.label === label);
      return { run: mark?.run.id ?? '', reading: mark?.reading.id ?? '' };
    };
    const paired = rearAlley((raw) => {
      raw.pairs.push({ id: 'joint', a: refOf('A9'), b: refOf('B5') });
    });
    const again = derivedReport(
      paired.site,
      paired.derived,
      fitRuns(paired.site, paired.derived),
      en,
      '2026-05-01',
    );
    const station = (label: string) =>
      report.marks.find((m) => m.label === label)?.place?.station ?? Number.NaN;
    expect(again.pairs).toMatchObject([{ id: 'joint', a: 'A9', b: 'B5', path: 'p1' }]);
    expect(again.pairs[0]?.closure).toBeCloseTo(station('B5') - station('A9'), 5);
    expect(again.pairSuggestions.map(({ a, b }) => `${a} ${b}`)).not.toContain('A9 B5');
  });

  it('rounds every number, lengths to a micrometre and all else to nine decimals, as the README has it', () => {
    const third = 1 / 3;
    const dug = rearAlley((raw) => {
      const trench = { is: 'trench', path: 'p1', name: '', note: '', depth: 1 + third } as const;
      raw.digging.digs.push({ ...trench, id: 'd1', from: 3 + third, to: 26 + third });
    });
    const fit = fitRuns(dug.site, dug.derived);
    const told = derivedReport(dug.site, dug.derived, fit, en, '2026-05-01');
    const numbers = (of: unknown, decimals: number) =>
      [...values(of)].flatMap(([path, value]) =>
        typeof value === 'number' && Number(value.toFixed(decimals)) !== value ? [`${path} ${value}`] : [],
      );
    expect(numbers(told, 9)).toEqual([]);
    const [run] = fit?.runs ?? [];
    const [toldRun] = told.fit?.runs ?? [];
    const [dig] = told.inTheWay.digs;
    expect(numbers({ zero: run?.zero, sigma: run?.scale.sigma }, 9)).not.toEqual([]);
    expect(toldRun?.scale.fitted).toBeCloseTo(run?.scale.fitted ?? Number.NaN, 9);
    expect(dig).toMatchObject({ depth: { least: 1.333333, most: 1.333333 } });
    expect(dig?.restore?.pavements).not.toEqual([]);
    expect(told.inTheWay.trees).not.toEqual([]);
    expect(numbers([toldRun?.zero, toldRun?.entryLeg, dig?.depth, dig?.restore, dig?.volume], 6)).toEqual([]);
    expect(
      numbers(
        told.inTheWay.trees.map(({ zones }) => zones.map((z) => z.radius)),
        6,
      ),
    ).toEqual([]);
  });

  it('tells all that is found of what stands in the way, each with its name and place, its rule and who changed it', () => {
    const change = { rule: 'egressDepth', value: 1.5, who: 'Crew lead', why: 'state plan' } as const;
    const dug = rearAlley((raw) => {
      const trench = { is: 'trench', path: 'p1', name: '', note: '', depth: 1.6 } as const;
      raw.digging.digs.push({ ...trench, id: 'd1', from: 3, to: 26 });
      raw.digging.notes.push({ id: 'n1', at: '2026-05-01T09:00:00Z', text: 'Neighbour agrees.' });
      raw.rules.changed.push(change);
    });
    const found = standsInTheWay(dug.site, dug.derived, null, '2026-05-01');
    const { inTheWay } = derivedReport(dug.site, dug.derived, null, en, '2026-05-01');
    const { clearances, land, services, drains, findings } = inTheWay;

    expect(land.stretches.map((s) => s.whose)).toEqual(found.land.stretches.map((s) => s.whose));
    expect(services.crossings.map((c) => c.name).toSorted()).toEqual(['Alley main', 'Gas service']);
    expect(services.oneCall).toMatchObject({ is: found.services.oneCall.is });
    expect(drains).toHaveLength(dug.site.paths.length);
    expect(drains[0]?.cleanouts.length).toBe(found.drains.paths[0]?.cleanouts.length);
    expect(inTheWay.whiteLines[0]?.corners).toHaveLength(found.whiteLines[0]?.corners.length ?? 0);
    expect(inTheWay.pipesByTrees).toHaveLength(found.trees.pipes.length);
    expect(inTheWay.rootZones.map((t) => t.zones.length)).toEqual(
      found.trees.trees.map((t) => t.zones.length),
    );
    expect(inTheWay.notes).toEqual([{ id: 'n1', at: '2026-05-01T09:00:00Z', text: 'Neighbour agrees.' }]);
    expect(inTheWay.cautions.map((c) => c.code)).toEqual([...cautionCodes]);
    for (const parts of [land.stretches, clearances, findings, inTheWay.whiteLines])
      expect(parts).not.toEqual([]);

    for (const [i, { name, x, y }] of clearances.entries()) {
      expect(name).not.toBe('');
      expect(x).toBeCloseTo(found.clearances[i]?.at.x ?? Number.NaN, 5);
      expect(y).toBeCloseTo(found.clearances[i]?.at.y ?? Number.NaN, 5);
    }
    expect(findings.find((f) => f.rule === 'egressDepth')).toMatchObject({
      source: expect.stringContaining('1926.651(c)(2)'),
      changed: { from: 1.2192, to: 1.5, who: 'Crew lead', why: 'state plan' },
    });
    expect(findings.find((f) => f.rule === 'protectionDepth')?.changed).toBeNull();
  });

  it('is longer along the cable than in plan', () => {
    for (const path of report.paths) expect(path.developedLength).toBeGreaterThanOrEqual(path.length);
  });
});
