import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BitModel } from './bitModel';
import { BitReader } from './bitReader';
import { BitWriter } from './bitWriter';
import { codeBits, codeChoice, codeCount } from './symbols';

const MOST = 1e6;

function written(write: (coder: BitWriter) => void): Uint8Array {
  const coder = new BitWriter(new BitModel(), MOST);
  write(coder);
  return coder.finish();
}

const readerOf = (bytes: Uint8Array, most = MOST) => new BitReader(new BitModel(), bytes, most);

describe('bits', () => {
  it('come back, in any contexts', () => {
    const steps = fc.array(
      fc.tuple(fc.boolean(), fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: 3 })),
    );
    fc.assert(
      fc.property(steps, (list) => {
        const reader = readerOf(
          written((coder) => {
            for (const [bit, contexts] of list) coder.bit(contexts, bit);
          }),
        );
        expect(list.map(([, contexts]) => reader.bit(contexts))).toEqual(list.map(([bit]) => bit));
        expect(reader.failed).toBe(false);
      }),
    );
  });

  it('take a bit each where nothing is to be expected, and next to nothing where all is', () => {
    const chance = written((coder) => {
      for (let i = 0; i < 8000; i++) coder.bit([], Math.imul(i, 2654435761) < 0);
    });
    expect(chance.length).toBe(1000);
    const certain = written((coder) => {
      for (let i = 0; i < 8000; i++) coder.bit([7], true);
    });
    expect(certain.length).toBeLessThan(10);
  });

  it('stop at the end of the bytes, and after as many as were allowed', () => {
    const bytes = written((coder) => {
      for (let i = 0; i < 100; i++) coder.bit([], i % 3 === 0);
    });
    const cut = readerOf(bytes.subarray(0, 4));
    for (let i = 0; i < 100; i++) cut.bit([]);
    expect(cut.failed).toBe(true);
    const capped = readerOf(bytes, 10);
    for (let i = 0; i < 10; i++) capped.bit([]);
    expect(capped.failed).toBe(false);
    capped.bit([]);
    expect(capped.failed).toBe(true);
  });
});

describe('numbers', () => {
  it('come back up to the largest whole number of a double', () => {
    const numbers = fc.array(fc.oneof(fc.maxSafeNat(), fc.nat(300), fc.constant(Number.MAX_SAFE_INTEGER)));
    fc.assert(
      fc.property(numbers, (list) => {
        const reader = readerOf(
          written((coder) => {
            for (const n of list) codeCount(coder, [1, 2], n);
          }),
        );
        expect(list.map(() => codeCount(reader, [1, 2], 0))).toEqual(list);
      }),
    );
  });

  it('of a place that there is not are refused', () => {
    expect(() => written((coder) => codeChoice(coder, [1], 5, -1))).toThrow(RangeError);
    const reader = readerOf(written((coder) => codeBits(coder, [1], 3, 6)));
    expect(codeChoice(reader, [1], 5, 0)).toBe(0);
    expect(reader.failed).toBe(true);
  });
});
