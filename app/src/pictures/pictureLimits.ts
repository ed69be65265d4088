/** A file above this is not read at all. */
export const MOST_BYTES = 40_000_000;
