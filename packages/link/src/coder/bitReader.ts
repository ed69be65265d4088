import { ALL, type BitCoder, TOP_SHIFT } from './bitCoder';
import type { BitModel } from './bitModel';
import { cut } from './bitWriter';

/** So many bytes past its end a reader looks ahead; zeros stand there. */
const AHEAD = 4;

/** Reads what a `BitWriter` wrote. Stops with `failed` at the end of the bytes, and after `most` bits: few bytes can hold very many. */
export class BitReader implements BitCoder {
  readonly #model: BitModel;
  readonly #bytes: Uint8Array;
  #left: number;
  #at = 0;
  #low = 0;
  #high = ALL - 1;
  #value = 0;
  #failed = false;

  constructor(model: BitModel, bytes: Uint8Array, most: number) {
    this.#model = model;
    this.#bytes = bytes;
    this.#left = most;
    for (let i = 0; i < AHEAD; i++) this.#take();
  }

  get failed(): boolean {
    return this.#failed;
  }

  bit(contexts: readonly number[]): boolean {
    if (this.#left <= 0) this.#failed = true;
    if (this.#failed) return false;
    this.#left -= 1;
    const middle = cut(this.#low, this.#high, this.#model.chance(contexts));
    const found = this.#value <= middle;
    if (found) this.#high = middle;
    else this.#low = middle + 1;
    this.#model.learn(contexts, found);
    while (this.#low >>> TOP_SHIFT === this.#high >>> TOP_SHIFT) {
      this.#low = (this.#low << 8) >>> 0;
      this.#high = ((this.#high << 8) | 255) >>> 0;
      this.#take();
    }
    return found;
  }

  fail(): void {
    this.#failed = true;
  }

  stop(): void {
    this.#failed = true;
  }

  #take(): void {
    if (this.#at >= this.#bytes.length + AHEAD) this.#failed = true;
    this.#value = ((this.#value << 8) | (this.#bytes[this.#at] ?? 0)) >>> 0;
    this.#at += 1;
  }
}
