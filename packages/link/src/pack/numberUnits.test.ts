import { parseAzimuth, parseLength, parseSlope } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { chooseUnits } from './chooseUnits';
import { countIn, NO_UNIT, numberUnits, UNIT_BITS } from './numberUnits';

/** Bytes that the count of a number takes beside its unit; 8 when no unit makes it. */
function bytesOf(value: number): number {
  const [{ unit, count } = { unit: NO_UNIT, count: 0 }] = chooseUnits([value]);
  if (unit === NO_UNIT) return 8;
  expect(numberUnits[unit]?.of(count)).toBe(value);
  return Math.ceil(Math.log2(Math.abs(count) + 1) / 8);
}

function read(parsed: ReturnType<typeof parseLength>): number {
  if (!parsed.ok) throw new Error(parsed.code);
  return parsed.value;
}

describe('a measurement as people type it is a short count', () => {
  it.each([
    `23' 6 1/2"`,
    `104' 11 15/16"`,
    '23.54 ft',
    '119.9 ft',
    '7.18 m',
    '31.415 m',
    '4570 mm',
    '71.8 cm',
    '6.5 in',
  ])('%s', (text) => expect(bytesOf(read(parseLength(text, 'ft')))).toBeLessThanOrEqual(2));

  it.each([`N 45°30'15" E`, 'N 90 E', '12.5°', `S 0°00'01" E`])('%s', (text) =>
    expect(bytesOf(read(parseAzimuth(text)))).toBeLessThanOrEqual(3),
  );

  it.each(['1/4 in/ft', '1/8 in/ft', '2 %', '0.015'])('%s', (text) =>
    expect(bytesOf(read(parseSlope(text)))).toBe(1),
  );
});

describe('units', () => {
  it('have room for more, and none takes the place of no unit', () => {
    expect(numberUnits.length).toBeLessThan(NO_UNIT);
    expect(NO_UNIT).toBe(2 ** UNIT_BITS - 1);
  });

  it.each([-0, Number.NaN, Number.POSITIVE_INFINITY, Math.SQRT2, Number.MAX_VALUE, Number.MIN_VALUE])(
    'do not make %d, which goes as it is',
    (value) => expect(numberUnits.map((unit) => countIn(unit, value)).filter((n) => n !== null)).toEqual([]),
  );
});
