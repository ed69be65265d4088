import { describe, expect, it } from 'vitest';
import { splitRecords } from './splitRecords';

const rows = (text: string, separator: '\t' | ';' | ',' | 'spaces' = ',') =>
  splitRecords(text.split('\n'), separator, { most: 100, isRow: ([first = '']) => /^\d+$/.test(first) }).map(
    ({ line, cells }) => [line, ...cells],
  );

describe('cells', () => {
  it('in quotes hold separators, doubled quotes and line breaks (RFC 4180, section 2)', () => {
    expect(rows('"aaa","b\nbb","c""c"\nzzz, "y,y" ,xxx')).toEqual([
      [1, 'aaa', 'b\nbb', 'c"c'],
      [3, 'zzz', 'y,y', 'xxx'],
    ]);
  });

  it('keep inch marks and stray quotes', () => {
    expect(rows(`23' 6"\t"A" joint\t6"`, '\t')).toEqual([[1, `23' 6"`, '"A" joint', '6"']]);
  });

  it('lose no row to an open quote, even when a later one would close it', () => {
    expect(rows('1,"roots\n2,sag\n3,hole",x\n4,end')).toEqual([
      [1, '1', '"roots'],
      [2, '2', 'sag'],
      [3, '3', 'hole"', 'x'],
      [4, '4', 'end'],
    ]);
  });

  it('are parted by two spaces or more', () => {
    expect(rows(`  23' 6"   root intrusion\u00a0 3  `, 'spaces')).toEqual([
      [1, `23' 6"`, 'root intrusion', '3'],
    ]);
  });

  it('that are blank at the end are cells; blank rows are none', () => {
    expect(rows('1,,\n\n,,\n  \n2,"",')).toEqual([
      [1, '1', '', ''],
      [5, '2', '', ''],
    ]);
  });
});
