import { describe, expect, it } from 'vitest';
import { parseNumber } from './parseNumber';

describe('a number with its unit', () => {
  it.each([
    ['1', 0.01],
    ['1.5 %', 0.015],
    [' 2% ', 0.02],
    ['0,5', 0.005],
    ['.5', 0.005],
  ])('%s is read as a share', (text, value) => {
    expect(parseNumber(text, '%', 0.01)).toEqual({ ok: true, value: expect.closeTo(value, 12) });
  });

  it('is refused with another unit, as a word, and as nothing or less', () => {
    for (const text of ['3 °', 'about 1', '', '1 2', '1e3'])
      expect(parseNumber(text, '%', 0.01)).toMatchObject({ ok: false, code: 'not-a-number' });
    expect(parseNumber('0', '%', 0.01)).toMatchObject({ ok: false, code: 'not-positive' });
    expect(parseNumber('-1', '%', 0.01)).toMatchObject({ ok: false, code: 'not-a-number' });
  });
});
