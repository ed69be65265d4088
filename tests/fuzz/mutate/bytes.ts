import type { Dice } from '../../random/dice';
import type { Mutator } from '../reader';

/** Inputs are not made longer than this: far above the seeds, and a thousandfold in no time. */
export const MOST_BYTES = 2_000_000;

/** A whole number from 0 below `n`, or 0. */
export const below = (dice: Dice, n: number): number => Math.floor(dice.next() * n);

/** Small mostly, large sometimes: 1 up to `most`. */
export const upTo = (dice: Dice, most: number): number => 1 + Math.floor(dice.next() ** 6 * most);

export function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, p) => sum + p.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

const flipped: Mutator = (input, dice) => {
  const out = input.slice();
  for (let n = upTo(dice, 16); n > 0 && out.length > 0; n -= 1) {
    const at = below(dice, out.length);
    out[at] = (out[at] ?? 0) ^ (1 << below(dice, 8));
  }
  return out;
};

const overwritten: Mutator = (input, dice) => {
  const out = input.slice();
  for (let n = upTo(dice, 8); n > 0 && out.length > 0; n -= 1)
    out[below(dice, out.length)] = dice.pick([
      0, 1, 9, 10, 13, 32, 34, 44, 48, 60, 91, 92, 123, 127, 128, 255,
    ]);
  return out;
};

const cutAtTheEnd: Mutator = (input, dice) => input.slice(0, below(dice, input.length));
const cutAtTheStart: Mutator = (input, dice) => input.slice(below(dice, Math.min(64, input.length)));

/** A stretch of an input: where it begins and ends. */
function stretch(input: Uint8Array, dice: Dice): readonly [number, number] {
  const from = below(dice, input.length);
  return [from, Math.min(input.length, from + upTo(dice, input.length))];
}

const withoutAPiece: Mutator = (input, dice) => {
  const [from, to] = stretch(input, dice);
  return joined(input.subarray(0, from), input.subarray(to));
};

const pieceAgain: Mutator = (input, dice) => {
  const [from, to] = stretch(input, dice);
  const piece = input.subarray(from, to);
  const times = Math.min(upTo(dice, 3000), Math.floor(MOST_BYTES / Math.max(1, piece.length)));
  return joined(input.subarray(0, to), ...new Array<Uint8Array>(times).fill(piece), input.subarray(to));
};

const spliced: Mutator = (input, dice, seeds) => {
  const other = dice.pick(seeds);
  const [from, to] = stretch(other, dice);
  const at = below(dice, input.length);
  const head = dice.next() < 0.5 ? other.subarray(0, from) : other.subarray(from, to);
  return dice.next() < 0.5
    ? joined(input.subarray(0, at), other.subarray(from))
    : joined(input.subarray(0, at), head, input.subarray(at));
};

/** Overlong, cut short, half of a surrogate pair, beyond the last character, a lone tail; a byte order mark; UTF-16. */
const NOT_UTF_8 = [
  [0xc0, 0x80],
  [0xe2, 0x82],
  [0xed, 0xa0, 0x80],
  [0xf4, 0x90, 0x80, 0x80],
  [0x80],
  [0xff],
  [0xef, 0xbb, 0xbf],
  [0xff, 0xfe, 0x7b, 0x00],
].map((bytes) => Uint8Array.from(bytes));

const brokenUtf8: Mutator = (input, dice) => {
  const at = dice.next() < 0.2 ? 0 : below(dice, input.length);
  return joined(input.subarray(0, at), dice.pick(NOT_UTF_8), input.subarray(at));
};

export const byteMutators: readonly Mutator[] = [
  flipped,
  overwritten,
  cutAtTheEnd,
  cutAtTheStart,
  withoutAPiece,
  pieceAgain,
  spliced,
  brokenUtf8,
];
