import { describe, expect, it } from 'vitest';
import { parseBend } from './parseBend';

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
