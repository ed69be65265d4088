import { ALL, type BitCoder, TOP } from './bitCoder';
import { type BitModel, CERTAIN } from './bitModel';

/**
 * Arithmetic coding: an interval is narrowed by each bit to a share as large as the bit was likely, so that what was to be expected takes
 * next to no room. Textbook method (Witten, Neal and Cleary, 1987; from memory), carry-less, for one bit at a time.
 */
export class BitWriter implements BitCoder {
  readonly #model: BitModel;
  readonly #bytes: number[] = [];
  #low = 0;
  #high = ALL - 1;
  #left: number;
  #failed = false;

  constructor(model: BitModel, most: number) {
    this.#model = model;
    this.#left = most;
  }

  get failed(): boolean {
    return this.#failed;
  }

  bit(contexts: readonly number[], given: boolean): boolean {
    if (this.#left <= 0) this.#failed = true;
    if (this.#failed) return false;
    this.#left -= 1;
    const middle = cut(this.#low, this.#high, this.#model.chance(contexts));
    if (given) this.#high = middle;
    else this.#low = middle + 1;
    this.#model.learn(contexts, given);
    while (Math.floor(this.#low / TOP) === Math.floor(this.#high / TOP)) {
      this.#bytes.push(Math.floor(this.#low / TOP));
      this.#low = (this.#low % TOP) * 256;
      this.#high = (this.#high % TOP) * 256 + 255;
    }
    return given;
  }

  fail(): void {
    throw new RangeError('a value that the shape has no room for was to be written');
  }

  stop(): void {
    this.#failed = true;
  }

  /** All bytes: the fewest that, followed by zeros, lie in the interval. */
  finish(): Uint8Array {
    for (let unit = ALL; ; unit /= 256) {
      const value = Math.ceil(this.#low / unit) * unit;
      if (value > this.#high) continue;
      const tail: number[] = [];
      for (let place = TOP, rest = value; place >= unit; place /= 256) {
        tail.push(Math.floor(rest / place));
        rest %= place;
      }
      return Uint8Array.from([...this.#bytes, ...tail]);
    }
  }
}

/** Where an interval of whole numbers, both ends included, is cut: a one lies up to there. */
export function cut(low: number, high: number, chance: number): number {
  return low + Math.floor(((high - low) * chance) / CERTAIN);
}
