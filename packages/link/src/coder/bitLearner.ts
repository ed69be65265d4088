import type { BitCoder } from './bitCoder';
import type { BitModel } from './bitModel';

/** Shows a model what both sides know beforehand, without a bit being written. */
export class BitLearner implements BitCoder {
  readonly failed = false;
  readonly #model: BitModel;

  constructor(model: BitModel) {
    this.#model = model;
  }

  bit(contexts: readonly number[], given: boolean): boolean {
    this.#model.learn(contexts, given);
    return given;
  }

  fail(): void {
    throw new RangeError('what is known beforehand cannot be wrong');
  }

  stop(): void {
    throw new RangeError('what is known beforehand cannot be too much');
  }
}
