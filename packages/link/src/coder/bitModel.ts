/** Contexts are counted in so many places; two that fall on one place only predict worse. */
const PLACES = 2 ** 20;

/** How many sightings the more general context is worth against those of the context itself. */
const TRUST = 2;

const MOST_COUNTED = 250;
const KEPT_OF_OTHER = 2;

/** Chances are whole 65,536ths; neither value is ever taken for impossible. */
export const CERTAIN = 65_536;
const LEAST_CHANCE = 24;

/**
 * How likely the next bit is a one, from what was seen in the same contexts before. Writer and reader keep one each and must come to the
 * same chance, so it computes with sums, products and quotients of doubles only, which are alike everywhere.
 */
export class BitModel {
  readonly #zeros: Uint8Array;
  readonly #ones: Uint8Array;

  /** A model that has seen nothing, or as much as another one. */
  constructor(like?: BitModel) {
    this.#zeros = like === undefined ? new Uint8Array(PLACES) : like.#zeros.slice();
    this.#ones = like === undefined ? new Uint8Array(PLACES) : like.#ones.slice();
  }

  /** The chance of a one in 65,536ths; contexts from the most general to the most particular, each a whole number of 32 bits. */
  chance(contexts: readonly number[]): number {
    let chance = 0.5;
    for (const context of contexts) {
      const place = context & (PLACES - 1);
      const ones = this.#ones[place] ?? 0;
      const seen = ones + (this.#zeros[place] ?? 0);
      chance = (ones + TRUST * chance) / (seen + TRUST);
    }
    return Math.min(CERTAIN - LEAST_CHANCE, Math.max(LEAST_CHANCE, Math.round(chance * CERTAIN)));
  }

  /** Counts a bit in its contexts; what spoke against it is soon forgotten. */
  learn(contexts: readonly number[], bit: boolean): void {
    const [same, other] = bit ? [this.#ones, this.#zeros] : [this.#zeros, this.#ones];
    for (const context of contexts) {
      const place = context & (PLACES - 1);
      same[place] = Math.min(MOST_COUNTED, (same[place] ?? 0) + 1);
      const against = other[place] ?? 0;
      if (against > KEPT_OF_OTHER) other[place] = (against >> 1) + 1;
    }
  }
}

/** Two whole numbers of 32 bits as one; the order counts. */
export function mix(a: number, b: number): number {
  let h = Math.imul(a ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(b + 0x7f4a7c15, 0xc2b2ae35);
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  return h ^ (h >>> 13);
}
