import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openFrame } from './frame/frame';
import {
  type Collected,
  collectParts,
  type LinkPart,
  MOST_PARTS,
  PART_BYTES,
  partFrames,
  partIn,
} from './parts';

function partsOf(whole: Uint8Array, of: number): readonly LinkPart[] {
  return partFrames(whole, of).map((bytes) => {
    const opened = openFrame(bytes);
    const part = opened.ok ? partIn(opened.frame) : null;
    if (part === null) throw new Error('a part that is none');
    return part;
  });
}

describe('parts', () => {
  it('make up the whole again in any order, with repeats, and not before all are there', () => {
    const cases = fc.tuple(
      fc.uint8Array({ minLength: 600, maxLength: 900 }),
      fc.integer({ min: 1, max: MOST_PARTS }),
      fc.array(fc.nat(), { minLength: 60, maxLength: 60 }),
    );
    fc.assert(
      fc.property(cases, ([whole, of, picks]) => {
        const parts = partsOf(whole, of);
        const came = new Set<number>();
        let state: Collected | null = null;
        for (const pick of [...picks, ...parts.keys()]) {
          const part = parts[pick % of];
          if (part === undefined) throw new RangeError('no such part');
          state = collectParts(state?.held ?? null, part);
          came.add(part.index);
          expect(state.is).toBe(came.size === of ? 'whole' : 'waiting');
          if (state.is === 'waiting') expect(state.missing).toHaveLength(of - came.size);
          if (state.is === 'whole') expect(state.bytes.join()).toBe(whole.join());
        }
      }),
      { numRuns: 20 },
    );
  });

  it('of another set are told, and leave those that came', () => {
    const [first] = partsOf(new Uint8Array(800).fill(1), 2);
    const [other] = partsOf(new Uint8Array(800).fill(2), 2);
    if (first === undefined || other === undefined) throw new Error('no parts');
    const { held } = collectParts(null, first);
    expect(collectParts(held, other)).toEqual({ is: 'other-set', held });
  });

  it('take no more than their share and what is said of the rest', () => {
    for (const frame of partFrames(new Uint8Array(15_000), 2))
      expect(frame.length).toBeLessThanOrEqual(7500 + PART_BYTES);
  });

  it.each([
    ['none of them', [1, 2, 0, 0, 9]],
    ['one past the last', [1, 2, 3, 3, 9]],
    ['too many', [1, 2, 0, MOST_PARTS + 1, 9]],
    ['nothing in it', [1, 2, 0, 2]],
  ])('with %s are none', (_, body) => {
    expect(partIn({ kind: 0, body: Uint8Array.from(body) })).toBeNull();
  });
});
