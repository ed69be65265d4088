import { describe, expect, it } from 'vitest';
import { tagRows } from './chartLayout';

const tag = (x: number) => ({ x, width: 30 });

describe('tagRows', () => {
  it('puts a text that would touch another a row higher, and leaves out what fits nowhere', () => {
    const placed = tagRows([tag(100), tag(110), tag(120), tag(131)], 2, [0, 1, 2, 3]);
    expect(placed.map((p) => p.row)).toEqual([0, 1, null, 0]);
  });

  it('gives the first in order the first choice', () => {
    expect(tagRows([tag(100), tag(110)], 1, [1, 0]).map((p) => p.row)).toEqual([null, 0]);
  });

  it('keeps clear of what is there already', () => {
    expect(tagRows([tag(20)], 2, [0], [{ row: 0, from: 0, to: 50 }]).map((p) => p.row)).toEqual([1]);
  });
});
