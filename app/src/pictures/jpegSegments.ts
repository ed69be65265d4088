import { viewOf } from './bytes';

/** A marker of a JPEG with what belongs to it, from `at` to `end`: of a scan, its coded picture data too. */
export type JpegSegment = { readonly marker: number; readonly at: number; readonly end: number };

export const END_OF_IMAGE = 0xd9;
export const START_OF_SCAN = 0xda;
export const [APP0, APP1, APP2, APP14, APP15, COMMENT] = [0xe0, 0xe1, 0xe2, 0xee, 0xef, 0xfe] as const;

/** Walks the markers behind the first (ITU-T T.81, B.1.1), up to the end of the first image or to where they cannot be followed; `end` may lie behind the last byte. */
export function* jpegSegments(bytes: Uint8Array): Generator<JpegSegment> {
  const view = viewOf(bytes);
  let at = 2;
  while (at + 2 <= bytes.length && bytes[at] === 0xff) {
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at += 1; // a fill byte
      continue;
    }
    if (standsAlone(marker)) {
      yield { marker, at, end: at + 2 };
      if (marker === END_OF_IMAGE) return;
      at += 2;
      continue;
    }
    if (at + 4 > bytes.length) return;
    const length = view.getUint16(at + 2);
    if (length < 2) return;
    const head = at + 2 + length;
    const end = marker === START_OF_SCAN ? endOfScan(bytes, head) : head;
    yield { marker, at, end };
    at = end;
  }
}

function standsAlone(marker: number): boolean {
  return marker === 0x01 || (marker >= 0xd0 && marker <= END_OF_IMAGE);
}

/** Where the coded picture data that begins at `from` ends: at a marker that is neither a stuffed byte nor a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return bytes.length;
}
