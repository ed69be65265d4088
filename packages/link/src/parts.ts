import { checksum } from './frame/checksum';
import { type Frame, frameBytes } from './frame/frame';

/** The kind of a frame that is one of several which make up one. */
export const PART_KIND = 0;

/** More symbols than this nobody scans one after the other. */
export const MOST_PARTS = 16;

/** One of several links: which `set` it is of (16 bits of the whole's checksum), its place from 0, and how many there are. */
export type LinkPart = {
  readonly set: number;
  readonly index: number;
  readonly of: number;
  readonly bytes: Uint8Array;
};

/** Bytes that a part takes besides its share: frame and header, for shares up to 16 kB. */
export const PART_BYTES = 13;

const HEADER_BYTES = 4;

/** A frame as the frames of so many parts, of like length. */
export function partFrames(whole: Uint8Array, of: number): readonly Uint8Array[] {
  const set = checksum(whole) & 0xffff;
  const share = Math.ceil(whole.length / of);
  return Array.from({ length: of }, (_, index) => {
    const bytes = whole.subarray(index * share, (index + 1) * share);
    const body = Uint8Array.from([set >> 8, set & 255, index, of, ...bytes]);
    return frameBytes({ kind: PART_KIND, body });
  });
}

/** The part in a frame of that kind; null for one that no set has. */
export function partIn({ body }: Frame): LinkPart | null {
  const [high = 0, low = 0, index = 0, of = 0] = body;
  if (body.length <= HEADER_BYTES || of < 1 || of > MOST_PARTS || index >= of) return null;
  return { set: high * 256 + low, index, of, bytes: body.slice(HEADER_BYTES) };
}

/** The parts of one set that have come so far. */
export type HeldParts = { readonly set: number; readonly of: number; readonly parts: readonly LinkPart[] };

export type Collected =
  /** `missing`: the places, from 0, that have not come yet. */
  | { readonly is: 'waiting'; readonly held: HeldParts; readonly missing: readonly number[] }
  /** All are there: the frame that they make up, to be opened like any other. */
  | { readonly is: 'whole'; readonly held: HeldParts; readonly bytes: Uint8Array }
  /** The part is of another set than those that are held, which stay. */
  | { readonly is: 'other-set'; readonly held: HeldParts };

/** Puts a part to those that are held, in any order; one that came before changes nothing. */
export function collectParts(before: HeldParts | null, part: LinkPart): Collected {
  const held = before ?? { set: part.set, of: part.of, parts: [] };
  if (held.set !== part.set || held.of !== part.of) return { is: 'other-set', held };
  const parts = [...held.parts.filter((p) => p.index !== part.index), part].sort((a, b) => a.index - b.index);
  const now = { ...held, parts };
  const there = new Set(parts.map((p) => p.index));
  const missing = Array.from({ length: held.of }, (_, i) => i).filter((i) => !there.has(i));
  if (missing.length > 0) return { is: 'waiting', held: now, missing };
  return { is: 'whole', held: now, bytes: Uint8Array.from(parts.flatMap((p) => [...p.bytes])) };
}
