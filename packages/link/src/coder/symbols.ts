import type { BitCoder } from './bitCoder';
import { mix } from './bitModel';

/** Doubles hold whole numbers of so many bits. */
const LENGTH_BITS = 6;
const MOST_LENGTH = 53;

/** Tells the bits of a number from those of its length. */
const OF_NUMBER = 1000;

/** A whole number of `width` bits, up to 30, from the highest; each bit is expected after those before it. */
export function codeBits(coder: BitCoder, contexts: readonly number[], width: number, given: number): number {
  let path = 1;
  const here = [...contexts]; // one list for all bits: there are millions of them
  for (let i = width - 1; i >= 0; i--) {
    for (let k = 0; k < here.length; k++) here[k] = mix(contexts[k] ?? 0, path);
    path = 2 * path + (coder.bit(here, ((given >>> i) & 1) === 1) ? 1 : 0);
  }
  return path - 2 ** width;
}

/** One of so many things, by its place from 0. Fails, with 0, for a place that none of them has. */
export function codeChoice(
  coder: BitCoder,
  contexts: readonly number[],
  things: number,
  given: number,
): number {
  const found = given < 0 ? things : codeBits(coder, contexts, bitsFor(things), given);
  if (found < things) return found;
  coder.fail();
  return 0;
}

/** Bits that tell so many things apart. */
function bitsFor(things: number): number {
  return things < 2 ? 0 : 32 - Math.clz32(things - 1);
}

/** A whole number from 0 below 2⁵³: how many bits it has, and those below its first. */
export function codeCount(coder: BitCoder, contexts: readonly number[], given: number): number {
  const length = codeBits(coder, contexts, LENGTH_BITS, bitLength(given));
  if (length > MOST_LENGTH) coder.fail();
  if (length < 2 || coder.failed) return coder.failed ? 0 : length;
  const own = contexts.map((context) => mix(context, OF_NUMBER + length));
  let value = 1;
  for (let i = length - 2; i >= 0; i--) {
    const here = own.map((context) => mix(context, (value % 2 ** 32) ^ Math.floor(value / 2 ** 32)));
    value = 2 * value + (coder.bit(here, Math.floor(given / 2 ** i) % 2 === 1) ? 1 : 0);
  }
  return value;
}

function bitLength(value: number): number {
  let length = 0;
  for (let rest = value; rest >= 1; rest = Math.floor(rest / 2)) length += 1;
  return length;
}
