import type { Run } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { alreadyThere, isReadingTable, pastedReadings, pastedTable } from './pastedTable';

const FOOT_M = 0.3048; // exact, by the definition of the international foot

const run: Run = {
  id: 'r1',
  letter: 'A',
  name: '',
  visit: null,
  entry: null,
  path: null,
  direction: 'with-flow',
  branches: [],
  zero: { at: 'in-pipe', counter: 0 },
  scale: { by: 'said', factor: 1 },
  resolution: 0.03,
  head: { length: 0, zeroed: 'lens' },
  note: '',
  readings: [
    { id: 'q7', number: 7, counter: 12.5 * FOOT_M, seen: 'roots', passed: true, note: 'was here first' },
  ],
};

const ids = () => {
  let n = 0;
  return () => `n${n++}`;
};

describe('pasted readings', () => {
  it('are numbered on, row by row, and rows that cannot be read are left out with the reason', () => {
    const { lines, asksUnit } = pastedTable('12.5\tRoots\t3\nabc\tCrack\n14\tSag\t\thalf full', 'ft');
    expect(asksUnit).toBe(true);
    expect(lines.map((l) => [l.line, l.row !== null, l.problems.map((p) => p.code)])).toEqual([
      [1, true, []],
      [2, false, ['not-a-length']],
      [3, true, []],
    ]);
    const readings = pastedReadings(lines, {}, run, ids()).map((p) => p.reading);
    expect(readings).toEqual([
      {
        id: 'n0',
        number: 8,
        counter: 12.5 * FOOT_M,
        seen: 'roots',
        passed: true,
        note: '',
        clock: { from: 3 },
      },
      { id: 'n1', number: 9, counter: 14 * FOOT_M, seen: 'sag', passed: true, note: 'half full' },
    ]);
    expect(alreadyThere(readings, run)).toBe(1);
  });

  it.each([
    ['Counter (m)\tSeen\n3.2\tRoots', false],
    ['3.2 m\tRoots\n4.1 m\tCrack', false],
    ['Counter\tSeen\n3.2\tRoots', true],
    ['3.2 m\tRoots\n4.1\tCrack', true],
    ['0\tCleanout\n3.2 m\tRoots', false],
    [`12' 6"\tRoots\n14'\tCrack`, false],
    ['12-6\tRoots', true],
    ['3½\tRoots', true],
  ])('%j: the unit is asked for: %s', (text, asked) => {
    expect(pastedTable(text, 'ft').asksUnit).toBe(asked);
  });

  it('come in under the thing that an unknown word is said to mean, and keep the word', () => {
    const { lines } = pastedTable('Counter\tSeen\n3\tRoots\n4\tgrumbles\n5\tgrumbles\n6\t', 'm');
    expect(lines.map((l) => l.unknown)).toEqual([null, 'grumbles', 'grumbles', '']);
    expect(pastedReadings(lines, {}, run, ids())).toHaveLength(1);
    const said = pastedReadings(lines, { grumbles: 'debris' }, run, ids());
    expect(said.map(({ line, reading }) => [line, reading.seen, reading.note])).toEqual([
      [2, 'roots', ''],
      [3, 'debris', 'grumbles'],
      [4, 'debris', 'grumbles'],
    ]);
  });

  it('say of the whole text what is wrong with it', () => {
    const table = pastedTable('Name\tPhone\nA\tB', 'ft');
    expect(table.lines.filter((l) => l.row !== null)).toEqual([]);
    expect(table.whole.length).toBe(1);
    expect(isReadingTable('two lines\nof a note', 'ft')).toBe(false);
    expect(isReadingTable('12.5\tRoots', 'm')).toBe(true);
  });
});
