import { describe, expect, it } from 'vitest';
import { parseVideoTime, videoTimeText } from './videoTime';

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
    expect(videoTimeText(seconds)).toBe(printed);
    expect(parseVideoTime(printed)).toEqual({ ok: true, value: seconds });
  });

  it.each(['', 'noon', '1:60', '1:60:00', '1:2:3:4', '-5', '1:', ':15'])('%j is none', (typed) => {
    expect(parseVideoTime(typed).ok).toBe(false);
  });
});
