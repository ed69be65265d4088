import { describe, expect, it } from 'vitest';
import { parseNumber } from './number';

const HUNDREDTHS = { mark: '%', per: 1 / 100 } as const;

describe('parseNumber', () => {
  it.each([
    ['1', 1],
    ['1.5', 1.5],
    ['1,5', 1.5],
    ['1,234', 1.234],
    ['.5', 0.5],
    [',5', 0.5],
    [' 2 1/2 ', 2.5],
    ['½', 0.5],
    ['+3', 3],
    ['0', 0],
    ['-0', 0],
  ])('reads %s', (text, expected) => {
    expect(parseNumber(text)).toEqual({ ok: true, value: expected });
  });

  it.each([
    ['1', 0.01],
    ['1.5 %', 0.015],
    [' 2% ', 0.02],
    ['0,5', 0.005],
    ['½ %', 0.005],
    ['100', 1],
  ])('reads %s as hundredths, with the mark or without', (text, expected) => {
    expect(parseNumber(text, { ...HUNDREDTHS, most: 1 })).toEqual({
      ok: true,
      value: expect.closeTo(expected, 12),
    });
  });

  // a right angle is half of π
  it.each(['90', '90°', '90 °'])('reads %s as degrees', (text) => {
    expect(parseNumber(text, { mark: '°', per: Math.PI / 180 })).toEqual({
      ok: true,
      value: expect.closeTo(Math.PI / 2, 12),
    });
  });

  it.each([
    ['', 'empty'],
    ['  ', 'empty'],
    ['about 1', 'not-a-number'],
    ['1 2', 'not-a-number'],
    ['1e3', 'not-a-number'],
    ['3 °', 'not-a-number'],
    ['%', 'not-a-number'],
    ['2 %%', 'not-a-number'],
    ['--1', 'two-signs'],
    ['-1 %', 'negative'],
    ['1/0', 'zero-denominator'],
    ['100,1 %', 'too-large'],
    ['9'.repeat(400), 'too-large'],
  ])('refuses "%s" as %s', (text, code) => {
    expect(parseNumber(text, { ...HUNDREDTHS, most: 1 })).toMatchObject({ ok: false, code });
  });

  it('refuses a mark where there is none, zero where it must be more, and what overflows', () => {
    expect(parseNumber('2 %')).toMatchObject({ code: 'not-a-number' });
    expect(parseNumber('0 %', { ...HUNDREDTHS, aboveZero: true })).toMatchObject({ code: 'not-positive' });
    expect(parseNumber('9'.repeat(400))).toMatchObject({ code: 'too-large' });
  });
});
