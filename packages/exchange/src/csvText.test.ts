import { describe, expect, it } from 'vitest';
import { csvText } from './csvText';

describe('RFC 4180', () => {
  it('ends every row with CRLF and separates by commas', () => {
    expect(
      csvText([
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ]),
    ).toBe('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n'); // section 2, rules 1 and 4
  });

  it('quotes line breaks, commas and quotes, and doubles quotes', () => {
    expect(csvText([['aaa', 'b\r\nbb', 'ccc']])).toBe('aaa,"b\r\nbb",ccc\r\n'); // rule 6
    expect(csvText([['aaa', 'b"bb', 'ccc']])).toBe('aaa,"b""bb",ccc\r\n'); // rule 7
    expect(csvText([['a,b']])).toBe('"a,b"\r\n');
  });
});

describe('cells', () => {
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx'])('%j is text, not a formula', (text) => {
    expect(csvText([[text]]).replace(/^"/, '')).toMatch(/^'/);
  });

  it('keep numbers plain, also negative ones, and nothing empty', () => {
    expect(csvText([[-3.25, 0, null, 1e6]])).toBe('-3.25,0,,1000000\r\n');
  });

  it('keep spaces at their ends', () => {
    expect(csvText([[' a', 'b ']])).toBe('" a","b "\r\n');
  });

  it('are never a number that is none', () => {
    expect(() => csvText([[Number.NaN]])).toThrow('got NaN');
  });
});
