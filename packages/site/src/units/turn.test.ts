import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatTurn, parseBend, parseTurn } from './turn';

const RADIAN = 180 / Math.PI;

function degrees(text: string): number {
  const result = parseTurn(text);
  if (!result.ok) throw new Error(`${text}: ${result.code}`);
  return result.value * RADIAN;
}

describe('parseTurn', () => {
  it.each([
    ['L 90', -90],
    ['l90', -90],
    ['R 45', 45],
    ['left 90', -90],
    ['90 R', 90],
    ['90° right', 90],
    ['45l', -45],
    ['+45', 45],
    ['-45', -45],
    ['−22.5', -22.5],
    ['R 22 1/2', 22.5],
    ['R 22-1/2°', 22.5],
    ['L 11¼', -11.25],
    ["L 11°15'", -11.25],
    ['-45-30-15', -(45 + 30 / 60 + 15 / 3600)],
    ['0', 0],
    ['straight', 0],
    ['R 180', 180],
  ])('reads %s as %f°', (text, expected) => {
    expect(degrees(text)).toBeCloseTo(expected, 10);
  });

  it.each([
    ['', 'empty'],
    ['L', 'not-a-number'],
    ['L x', 'not-a-number'],
    ['45', 'side-missing'],
    ['L -90', 'two-signs'],
    ['+-45', 'two-signs'],
    ['R 181', 'turn-over-180'],
    ['R 45-60', 'minutes-too-large'],
  ])('refuses "%s" as %s', (text, code) => {
    expect(parseTurn(text)).toMatchObject({ ok: false, code });
  });
});

describe('the turn of a fitting', () => {
  // degrees by hand; 22½ is a 1/16 bend, 11¼ a 1/32 bend
  it.each([
    ['45', 45],
    ['L 45', 45],
    ['45 R', 45],
    ['left 45°', 45],
    ['+45', 45],
    ['-45', 45],
    ['22-1/2', 22.5],
    ['22 1/2', 22.5],
    ['L 22½°', 22.5],
    ["11°15'", 11.25],
    ['11,25', 11.25],
    ['0', 0],
    ['180', 180],
  ])('%s', (typed, degrees) => {
    const read = parseBend(typed);
    expect(read.ok && (read.value * 180) / Math.PI).toBeCloseTo(degrees, 10);
  });

  it.each([
    ['', 'empty'],
    ['elbow', 'not-a-number'],
    ['181', 'turn-over-180'],
    ['L -45', 'two-signs'],
    ['45-60', 'minutes-too-large'],
  ])('%j is none: %s', (typed, code) => {
    expect(parseBend(typed)).toMatchObject({ ok: false, code });
  });
});

describe('formatTurn', () => {
  it('prints the side first', () => {
    expect(formatTurn(Math.PI / 4)).toBe('R 45°');
    expect(formatTurn(-Math.PI / 8)).toBe('L 22.5°');
    expect(formatTurn(0)).toBe('0°');
    expect(formatTurn(-1e-9)).toBe('0°');
  });

  it('reads back within half a step', () => {
    fc.assert(
      fc.property(fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }), (radians) => {
        expect(Math.abs(degrees(formatTurn(radians)) - radians * RADIAN)).toBeLessThanOrEqual(0.005 + 1e-10);
      }),
    );
  });
});
