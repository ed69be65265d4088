import type { Dice } from '../random/dice';

/** What is done to an input: gives another one, which may be the same where it finds nothing to do. */
export type Mutator = (input: Uint8Array, dice: Dice, seeds: readonly Uint8Array[]) => Uint8Array;

/**
 * One reader under test. `read` is all that the program does with an input, up to the words in which it is refused: what it throws is a crash, and
 * what it takes too long for is a hang. `judge` is this fuzzer's own: what is wrong with what came out, by counts that share no code with the reader;
 * null when it is whole or refused.
 */
export type FuzzReader<Read extends { readonly accepted: boolean } = { readonly accepted: boolean }> = {
  readonly name: string;
  /** Sound inputs, small and large. */
  seeds(): readonly Uint8Array[];
  /** Mutations that know the format; those of bytes and texts go over every reader besides. */
  readonly mutators: readonly Mutator[];
  /** Before the first input: what has to be loaded. */
  ready?(): Promise<unknown>;
  read(input: Uint8Array): Read;
  judge(input: Uint8Array, read: Read): string | null;
};

/** The words for a refusal, or a RangeError where there are none: a refusal without words is as bad as a crash. */
export function inWords(said: string | { readonly text: string }): string {
  const text = typeof said === 'string' ? said : said.text;
  if (text.trim() === '') throw new RangeError('refused without words');
  return text;
}

const decoder = new TextDecoder();
const encoder = new TextEncoder();

/** UTF-8 as a browser reads a file's text: what is none becomes U+FFFD, a byte order mark goes. */
export const textOf = (bytes: Uint8Array): string => decoder.decode(bytes);

export const bytesOf = (text: string): Uint8Array => encoder.encode(text);
