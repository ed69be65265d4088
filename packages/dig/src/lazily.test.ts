import { describe, expect, it } from 'vitest';
import { lazily } from './lazily';

describe('lazily', () => {
  it('computes each property when it is first read, once, also one that is nothing', () => {
    const asked: string[] = [];
    type Value = { a: number; b: number; none: null };
    const value: Value = lazily<Value>({
      a: () => asked.push('a'),
      b: () => value.a + asked.push('b'),
      none: () => {
        asked.push('none');
        return null;
      },
    });
    expect(asked).toEqual([]);
    expect(value.b).toBe(3);
    expect([value.a, value.b, value.none, value.none]).toEqual([1, 3, null, null]);
    expect(asked).toEqual(['a', 'b', 'none']);
  });
});
