import type { BitCoder } from '../coder/bitCoder';
import { mix } from '../coder/bitModel';
import { codeBits } from '../coder/symbols';
import { inside } from './walk';

const CHARACTERS = inside(0, 'characters');

/** Each byte is expected after so many before it. */
const ORDER = 3;

/** Ends a text: no other byte is 0, see `bytesOf`. */
const END = 0;

/** A text, byte by byte, with its end. */
export function codeLiteral(coder: BitCoder, given: string): string {
  const written = [...bytesOf(given), END];
  const bytes: number[] = [];
  for (let i = 0; !coder.failed; i++) {
    const contexts = [CHARACTERS];
    for (let k = 1, context = CHARACTERS; k <= ORDER; k++) {
      context = mix(context, 1 + (bytes[i - k] ?? END));
      contexts.push(context);
    }
    const byte = codeBits(coder, contexts, 8, written[i] ?? END);
    if (byte === END) break;
    bytes.push(byte);
  }
  const text = textOf(bytes);
  if (text !== null) return text;
  coder.fail();
  return '';
}

/**
 * UTF-8 with two liberties, so that any text of the language goes through unchanged: half of a surrogate pair is coded as it stands, and
 * the character NUL as the two bytes C0 80.
 */
export function bytesOf(text: string): number[] {
  const bytes: number[] = [];
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    const tail = (shift: number) => 0x80 | ((code >> shift) & 0x3f);
    if (code > 0 && code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), tail(0));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), tail(6), tail(0));
    else bytes.push(0xf0 | (code >> 18), tail(12), tail(6), tail(0));
  }
  return bytes;
}

/** The text of `bytesOf`; null for bytes that it never gives. */
export function textOf(bytes: readonly number[]): string | null {
  const characters: string[] = [];
  for (let i = 0; i < bytes.length; ) {
    const first = bytes[i] ?? 0;
    const more = first < 0x80 ? 0 : first >= 0xf0 ? 3 : first >= 0xe0 ? 2 : first >= 0xc0 ? 1 : -1;
    if (more < 0) return null;
    let code = more === 0 ? first : first & (0x3f >> more);
    for (let k = 1; k <= more; k++) {
      const next = bytes[i + k];
      if (next === undefined || next >> 6 !== 2) return null;
      code = code * 64 + (next & 0x3f);
    }
    if (code > 0x10ffff) return null;
    characters.push(String.fromCodePoint(code));
    i += more + 1;
  }
  return characters.join('');
}
