import { describe, expect, it } from 'vitest';
import { formatVideoTime, parseVideoTime } from './videoTime';

describe('a place in a recording', () => {
  // by hand: minutes times 60, hours times 3600
  it.each([
    ['75', 75, '1:15'],
    ['1:15', 75, '1:15'],
    ['0:05', 5, '0:05'],
    ['61:00', 3660, '1:01:00'],
    ['1:02:05', 3725, '1:02:05'],
    ['12:34.5', 754.5, '12:34.5'],
    ['12:34,5', 754.5, '12:34.5'],
    [' 0 ', 0, '0:00'],
  ])('%s', (typed, seconds, printed) => {
    expect(parseVideoTime(typed)).toEqual({ ok: true, value: seconds });
    expect(formatVideoTime(seconds)).toBe(printed);
    expect(parseVideoTime(printed)).toEqual({ ok: true, value: seconds });
  });

  it('is printed with its last thousandth carried', () => {
    expect(formatVideoTime(59.9999)).toBe('1:00');
    expect(() => formatVideoTime(Number.NaN)).toThrow(RangeError);
  });

  it.each([
    ['', 'empty'],
    ['noon', 'not-a-number'],
    ['1:60', 'not-a-number'],
    ['1:60:00', 'not-a-number'],
    ['1:2:3:4', 'not-a-number'],
    ['-5', 'not-a-number'],
    ['1:', 'not-a-number'],
    [':15', 'not-a-number'],
    ['9'.repeat(400), 'too-large'],
  ])('%j is none: %s', (typed, code) => {
    expect(parseVideoTime(typed)).toMatchObject({ ok: false, code });
  });
});
