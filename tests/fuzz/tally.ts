/** Places of the counts in the memory that the worker and the one who watches it share; `reading` is 1 while an input is read. */
export const AT = { next: 0, accepted: 1, refused: 2, crashes: 3, hangs: 4, partial: 5, reading: 6 } as const;

const PLACES = Object.keys(AT).length;

/** What was found in a number of inputs of one reader. */
export type Tally = {
  readonly inputs: number;
  readonly accepted: number;
  readonly refused: number;
  readonly crashes: number;
  readonly hangs: number;
  readonly partial: number;
};

/** One input that was not read as it should: its number, by which it can be made again, and why. */
export type Fault = {
  readonly is: 'crash' | 'hang' | 'partial';
  readonly number: number;
  readonly why: string;
};

/** What a worker is given. `module` is the address of a file that exports a `reader`. */
export type FuzzJob = {
  readonly module: string;
  readonly seed: number;
  readonly from: number;
  readonly to: number;
  readonly hangMs: number;
  readonly counts: Int32Array;
};

/** An input that takes longer hangs (ms): on the clock, and of this process's own computing, so that a busy machine is no fault. */
export const HANG_MS = 1000;

/** Counts in memory that threads may share, all 0. */
export function newCounts(): Int32Array {
  return new Int32Array(new SharedArrayBuffer(PLACES * Int32Array.BYTES_PER_ELEMENT));
}

export function tallyOf(counts: Int32Array, inputs: number): Tally {
  const at = (place: number) => Atomics.load(counts, place);
  return {
    inputs,
    accepted: at(AT.accepted),
    refused: at(AT.refused),
    crashes: at(AT.crashes),
    hangs: at(AT.hangs),
    partial: at(AT.partial),
  };
}
