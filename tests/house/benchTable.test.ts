import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ROOT } from './repository';

type Run = Readonly<{
  bench: string;
  machine: string;
  date: string;
  load: number;
  figures: readonly object[];
}>;

// The tools are plain scripts without declarations; this is the shape that its comment states.
const { mergedTable } = (await import(
  /* @vite-ignore */ pathToFileURL(join(ROOT, '.tools', 'benchTable.mjs')).href
)) as { mergedTable: (before: string, runs: readonly Run[]) => string };

const figure = (name: string, value: number, under: number) => ({
  name,
  value,
  unit: 'ms',
  goal: { under },
  ratio: { to: 'a bare one', times: 1.5 },
  met: value < under,
});
const run = (bench: string, date: string, figures: readonly object[]): Run => ({
  bench,
  machine: '2 × some | processor',
  date,
  load: 0.25,
  figures,
});
const rowsOf = (table: string) =>
  table
    .split('\n')
    .filter((line) => line.startsWith('| '))
    .slice(2);

describe('the table of benchmarks', () => {
  const first = mergedTable('', [
    run('saves', '2026-03-04', [figure('median', 12.3456, 20), figure('worst', 25, 20)]),
    run('derive', '2026-03-04', [figure('a yard', 0.0123, 1)]),
  ]);

  it('has a row for each figure: goal, ratio, machine, date and load beside it', () => {
    expect(rowsOf(first)).toEqual([
      '| derive | a yard | 0.0123 ms | under 1 | met | 1.5 × a bare one | 2 × some / processor | 2026-03-04 | 0.3 |',
      '| saves | median | 12.3 ms | under 20 | met | 1.5 × a bare one | 2 × some / processor | 2026-03-04 | 0.3 |',
      '| saves | worst | 25 ms | under 20 | **missed** | 1.5 × a bare one | 2 × some / processor | 2026-03-04 | 0.3 |',
    ]);
  });

  it('keeps the rows of what was not run, and none of what was', () => {
    const next = rowsOf(mergedTable(first, [run('saves', '2026-03-05', [figure('median', 30, 20)])]));
    expect(next).toHaveLength(2);
    expect(next[0]).toBe(rowsOf(first)[0]);
    expect(next[1]).toContain('| median | 30 ms | under 20 | **missed** |');
    expect(next[1]).toContain('2026-03-05');
  });

  it('is the same when nothing was run', () => {
    expect(mergedTable(first, [])).toBe(first);
  });
});
