import { checksum } from './checksum';
import { readVarint, varint } from './varint';

/** The coding that this program writes. Whatever changes a byte of a packed document raises it by one. */
const CODING = 1;

const CHECKSUM_BYTES = 4;

/** A frame without content. */
const LEAST_BYTES = 7;

/** What a link holds: a kind of content by its number, and the content. */
export type Frame = { readonly kind: number; readonly body: Uint8Array };

export type FrameFailure =
  /** It does not even begin as one. */
  | { readonly code: 'not-a-link' }
  /** Bytes are missing at the end: `have` of them came, out of `of`. */
  | { readonly code: 'cut-off'; readonly have: number; readonly of: number }
  /** Something was changed on the way. */
  | { readonly code: 'damaged' }
  /** Whole, and in a coding that this program does not know. */
  | { readonly code: 'newer-coding'; readonly coding: number };

/**
 * The coding (one byte), the kind (one byte), how many bytes the content has, the content, and a checksum of all before it. The first byte
 * and the last four mean the same in every coding to come, so that a program can tell a newer link from a damaged one.
 */
export function frameBytes({ kind, body }: Frame): Uint8Array {
  const before = [CODING, kind, ...varint(body.length), ...body];
  const sum = checksum(before);
  return Uint8Array.from([...before, sum >>> 24, (sum >>> 16) & 255, (sum >>> 8) & 255, sum & 255]);
}

/** Reads a frame back. Nothing of it is given unless all of it is sound. */
export function openFrame(
  bytes: Uint8Array,
): { readonly ok: true; readonly frame: Frame } | { readonly ok: false; readonly failure: FrameFailure } {
  const size = readVarint(bytes, 2);
  const wanted = size === null ? LEAST_BYTES : size.next + size.value + CHECKSUM_BYTES;
  const sound =
    bytes.length > CHECKSUM_BYTES && sumOf(bytes) === checksum(bytes.subarray(0, -CHECKSUM_BYTES));
  const coding = bytes[0] ?? CODING;
  if (sound && coding > CODING) return { ok: false, failure: { code: 'newer-coding', coding } };
  if (!sound && coding !== CODING) return { ok: false, failure: { code: 'not-a-link' } };
  if (!sound || size === null || bytes.length !== wanted) {
    const cut = bytes.length < wanted;
    return {
      ok: false,
      failure: cut ? { code: 'cut-off', have: bytes.length, of: wanted } : { code: 'damaged' },
    };
  }
  return { ok: true, frame: { kind: bytes[1] ?? 0, body: bytes.slice(size.next, -CHECKSUM_BYTES) } };
}

/** What the last four bytes say, highest first. */
function sumOf(bytes: Uint8Array): number {
  return bytes.subarray(-CHECKSUM_BYTES).reduce((sum, byte) => sum * 256 + byte, 0);
}
