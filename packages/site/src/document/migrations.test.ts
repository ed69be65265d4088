import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { migrations } from './migrations';
import { openSiteValue } from './openSite';

type Loose = { runs: Record<string, unknown>[]; features: unknown[]; paths: unknown[] };

/** The frozen file of version 1 with its runs changed. */
function version1(change: (file: Loose) => void) {
  const file = JSON.parse(readFileSync(new URL('./frozen/v1.json', import.meta.url), 'utf8'));
  change(file);
  return file;
}

/** A site of version 1 whose runs were on these dates; undefined for none. */
function onDates(...dates: readonly (string | undefined)[]) {
  return version1((file) => {
    const [run] = file.runs;
    file.runs = dates.map((date, i) => {
      const { date: _, ...rest } = run ?? {};
      return { ...rest, id: `x${i}`, readings: [], ...(date === undefined ? {} : { date }) };
    });
  });
}

function opened(file: unknown) {
  const result = openSiteValue(file);
  if (!result.ok) return expect.fail(JSON.stringify(result.failure));
  expect(result.migratedFrom).toBe(1);
  return result.site;
}

describe('a file of version 1', () => {
  it('gets a visit for each day, the earliest first, to which its runs belong', () => {
    const site = opened(onDates('2026-05-04', undefined, '2026-04-14', '2026-05-04'));
    expect(site.visits).toEqual([
      { id: 'v1', date: '2026-04-14', purpose: 'first-look', note: '' },
      { id: 'v2', date: '2026-05-04', purpose: 'other', note: '' },
    ]);
    expect(site.runs.map((r) => r.visit)).toEqual(['v2', null, 'v1', 'v2']);
    for (const run of site.runs) expect(run).not.toHaveProperty('date');
  });

  it('without dates has no visit', () => {
    const site = opened(onDates(undefined, undefined));
    expect(site.visits).toEqual([]);
    expect(site.runs.map((r) => r.visit)).toEqual([null, null]);
  });

  it('keeps the scale as said, and measures from the lens, as if the head had no length', () => {
    const site = opened(version1(() => {}));
    expect(site.runs[0]?.scale).toEqual({ by: 'said', factor: 1.01 });
    for (const run of site.runs) expect(run.head).toEqual({ length: 0, zeroed: 'lens' });
    expect(site).toMatchObject({ sigmas: {}, pairs: [], setAside: [] });
    expect(site).not.toHaveProperty('fit');
  });

  it('keeps all else as it was', () => {
    const file = version1(() => {});
    const site = opened(file);
    expect(site.features).toEqual(file.features);
    expect(site.paths).toEqual(file.paths);
    expect(site.runs.map((r) => r.readings)).toEqual(file.runs.map((r: Loose['runs'][number]) => r.readings));
    expect(file.version).toBe(1);
  });

  it.each([
    ['a date that is none', onDates('yesterday')],
    ['a date that is no text', version1((file) => Object.assign(file.runs[0] ?? {}, { date: 20260414 }))],
    ['a scale that is none', version1((file) => Object.assign(file.runs[0] ?? {}, { scale: 0 }))],
    ['runs that are no list', version1((file) => Object.assign(file, { runs: {} }))],
    ['a run that is no record', version1((file) => Object.assign(file, { runs: [null, 3] }))],
    ['no runs', version1((file) => Object.assign(file, { runs: undefined }))],
  ])('with %s is refused, not mended', (_, file) => {
    expect(openSiteValue(file)).toMatchObject({ ok: false, failure: { code: 'invalid' } });
  });

  it('is left as it is: a migration makes another', () => {
    const file = onDates('2026-05-04');
    const before = structuredClone(file);
    migrations[1]?.(file);
    expect(file).toEqual(before);
  });
});

describe('a file of version 2', () => {
  const text = readFileSync(new URL('./frozen/v2.json', import.meta.url), 'utf8');

  it('has nothing yet that a crew found, and keeps all else as it was', () => {
    const file = JSON.parse(text);
    const result = openSiteValue(file);
    if (!result.ok) return expect.fail(JSON.stringify(result.failure));
    expect(result.migratedFrom).toBe(2);
    expect(result.site).toEqual({ ...file, version: 3, asFound: [] });
    expect(file).toEqual(JSON.parse(text));
  });
});
