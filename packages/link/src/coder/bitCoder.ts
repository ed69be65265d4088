/**
 * Writes or reads one bit after the other. `bit` takes the contexts, from the most general to the most particular, and the bit that is to
 * be written; it gives the bit that stands there: the given one, or, from a reader, the one that it found. Once it has `failed`, because a
 * reader's bytes end or there is more than was allowed, every bit is a zero.
 */
export type BitCoder = {
  readonly bit: (contexts: readonly number[], given: boolean) => boolean;
  readonly failed: boolean;
  /** Gives up on what nothing was ever written as; a writer, which was given such a value, throws. */
  readonly fail: () => void;
  /** Gives up on what is more than was allowed. */
  readonly stop: () => void;
};

/** The interval is of whole numbers of 32 bits, and its first byte goes out when both of its ends agree on it. */
export const TOP_SHIFT = 24;
export const TOP = 2 ** TOP_SHIFT;
export const ALL = 2 ** 32;
