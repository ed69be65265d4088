import { describe, expect, it } from 'vitest';
import { andList, orList } from './listText';

describe('names in a sentence', () => {
  it.each([
    [[], '', ''],
    [['a'], 'a', 'a'],
    [['a', 'b'], 'a and b', 'a or b'],
    [['a', 'b', 'c'], 'a, b and c', 'a, b or c'],
  ])('%j', (names, all, one) => {
    expect(andList(names)).toBe(all);
    expect(orList(names)).toBe(one);
  });
});
