import { describe, expect, it } from 'vitest';
import { legRuns } from './legRuns';

const [a, b, c, d] = [
  { x: 0, y: 0 },
  { x: 1, y: 0 },
  { x: 1, y: 1 },
  { x: 0, y: 1 },
];

describe('legRuns', () => {
  it('keeps a ring that is known alike in one piece', () => {
    expect(legRuns([a, b, c], [true, true, true], true)).toEqual([
      { points: [a, b, c], closed: true, measured: true },
    ]);
  });

  it('gives each leg to the state of the vertex at its end, the closing leg to that of the first', () => {
    expect(legRuns([a, b, c, d], [true, true, false, false], true)).toEqual([
      { points: [b, c, d], closed: false, measured: false },
      { points: [d, a, b], closed: false, measured: true },
    ]);
  });

  it('begins an open line at its start', () => {
    expect(legRuns([a, b, c, d], [false, true, true, false], false)).toEqual([
      { points: [a, b, c], closed: false, measured: true },
      { points: [c, d], closed: false, measured: false },
    ]);
  });

  it('gives nothing for a single point', () => {
    expect(legRuns([a], [true], false)).toEqual([]);
  });
});
