import { describe, expect, it } from 'vitest';
import { unseenStretches } from './unseenStretches';

describe('what no camera has seen', () => {
  it.each([
    ['nothing seen: all of it', [], [{ from: 0, to: 10 }]],
    ['all seen', [{ from: 0, to: 10 }], []],
    [
      'from both ends: the gap between',
      [
        { from: 7, to: 10 },
        { from: 0, to: 4 },
      ],
      [{ from: 4, to: 7 }],
    ],
    [
      'overlapping runs',
      [
        { from: 0, to: 6 },
        { from: 2, to: 3 },
        { from: 5, to: 10 },
      ],
      [],
    ],
    [
      'a run that began further down',
      [{ from: 2, to: 5 }],
      [
        { from: 0, to: 2 },
        { from: 5, to: 10 },
      ],
    ],
    [
      'rounding is no gap',
      [
        { from: 0, to: 4 },
        { from: 4.0001, to: 10 },
      ],
      [],
    ],
  ])('%s', (_, seen, unseen) => {
    expect(unseenStretches(10, seen)).toEqual(unseen);
  });
});
