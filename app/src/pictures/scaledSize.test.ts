import { describe, expect, it } from 'vitest';
import { scaledSize, uprightSize } from './scaledSize';

describe('scaledSize', () => {
  it('keeps the proportions and never enlarges', () => {
    expect(scaledSize({ widthPx: 8192, heightPx: 6144 }, 4096)).toEqual({ widthPx: 4096, heightPx: 3072 });
    expect(scaledSize({ widthPx: 600, heightPx: 4097 }, 4096)).toEqual({ widthPx: 600, heightPx: 4096 });
    expect(scaledSize({ widthPx: 640, heightPx: 480 }, 4096)).toEqual({ widthPx: 640, heightPx: 480 });
  });

  it('leaves a pixel of a thread', () => {
    expect(scaledSize({ widthPx: 90_000, heightPx: 2 }, 4096)).toEqual({ widthPx: 4096, heightPx: 1 });
  });
});

describe('uprightSize', () => {
  it('turns the sides round for the four orientations that lie on their side', () => {
    const turned = [1, 2, 3, 4, 5, 6, 7, 8].filter(
      (orientation) => uprightSize({ widthPx: 7, heightPx: 5 }, orientation).widthPx === 5,
    );
    expect(turned).toEqual([5, 6, 7, 8]);
  });
});
