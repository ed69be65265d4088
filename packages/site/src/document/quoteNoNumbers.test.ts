import { describe, expect, it } from 'vitest';
import { quoteNoNumbers } from './quoteNoNumbers';

describe('words that are no numbers', () => {
  it.each([
    ['{"a":NaN}', '{"a":"NaN"}'],
    ['[-Infinity, Infinity,-1,NaN]', '["-Infinity", "Infinity",-1,"NaN"]'],
    ['{"NaN":"a \\" NaN","b":NaN}', '{"NaN":"a \\" NaN","b":"NaN"}'],
    ['NaN', '"NaN"'],
  ])('%s becomes %s', (json, quoted) => {
    expect(quoteNoNumbers(json)).toBe(quoted);
  });

  it.each(['', '{"a":"NaN"}', '{"a":-1}', 'NaNa', '"NaN', '"\\'])('%j has none', (json) => {
    expect(quoteNoNumbers(json)).toBeNull();
  });

  it('are found behind texts of any length, ended or not', () => {
    const long = '\\n'.repeat(5e6);
    expect(quoteNoNumbers(`["${long}",NaN]`)).toBe(`["${long}","NaN"]`);
    expect(quoteNoNumbers(`[NaN,"${long}`)).toBe(`["NaN","${long}`);
  });
});
