import { charsOf, viewOf } from './bytes';
import { exifSegment, type PlaceTaken, placeInExif } from './exif';
import {
  APP0,
  APP1,
  APP2,
  APP14,
  APP15,
  COMMENT,
  END_OF_IMAGE,
  jpegSegments,
  START_OF_SCAN,
} from './jpegSegments';
import type { PictureType } from './pictureHeader';

/**
 * The bytes of a picture without what its device wrote beside it: where and when it was taken, by what, texts, smaller copies of it. What
 * is needed to show it stays as it is: nothing is decoded. A JPEG keeps its orientation (1 to 8), and tells of a `place` if it is to: any other
 * kind never does. Null where they cannot be followed to their end.
 *
 * Sources: JPEG, ITU-T T.81 annex B; Exif 2.32, 4.5 and 4.6; PNG, W3C third edition, 5.3 and 11.3; WebP, RFC 9649, 2.7; GIF89a, 20 to 26. From
 * memory of these texts; held by the tests to a reader that others wrote.
 */
export function withoutMetadata(
  bytes: Uint8Array,
  type: PictureType,
  orientation: number,
  place: PlaceTaken | null = null,
): Uint8Array<ArrayBuffer> | null {
  const kept = KEEPERS[type](bytes, orientation, place);
  if (kept === null) return null;
  const length = kept.reduce((sum, piece) => sum + piece.length, 0);
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of kept) {
    whole.set(piece, at);
    at += piece.length;
  }
  if (type === 'webp') new DataView(whole.buffer).setUint32(4, length - 8, true); // the size that the file says it has
  return whole;
}

/** The place that a JPEG's own camera wrote into it; null where there is none. */
export function placeTakenOf(bytes: Uint8Array, type: PictureType): PlaceTaken | null {
  return type === 'jpeg' ? exifOf(bytes, placeInExif) : null;
}

/** The place in a picture that says it, and its orientation, as this program writes them: then it was wished, and there is nothing else beside it. */
export function placeKeptIn(bytes: Uint8Array, type: PictureType, orientation: number): PlaceTaken | null {
  const place = placeTakenOf(bytes, type);
  if (place === null) return null;
  const own = exifSegment(orientation, place).subarray(4);
  return exifOf(bytes, (data) => data.length === own.length && data.every((byte, i) => byte === own[i]))
    ? place
    : null;
}

/** What is found in the first APP1 segment with Exif in it, which stands before the picture's own data. */
function exifOf<Found>(bytes: Uint8Array, find: (data: Uint8Array) => Found): Found | null {
  for (const { marker, at, end } of jpegSegments(bytes)) {
    if (marker === START_OF_SCAN || marker === END_OF_IMAGE) return null;
    if (marker === APP1 && charsOf(bytes, at + 4, 4) === 'Exif') return find(bytes.subarray(at + 4, end));
  }
  return null;
}

type Pieces = readonly Uint8Array[] | null;

type Keeper = (bytes: Uint8Array, orientation: number, place: PlaceTaken | null) => Pieces;

const KEEPERS: Record<PictureType, Keeper> = {
  jpeg: ofJpeg,
  png: ofPng,
  webp: ofWebp,
  gif: ofGif,
};

/** Segments up to the end of the first image: what phones append behind it has its own Exif. Of the APPn, JFIF, colour profile and Adobe's stay. */
function ofJpeg(bytes: Uint8Array, orientation: number, place: PlaceTaken | null): Pieces {
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  if (orientation !== 1 || place !== null) kept.push(exifSegment(orientation, place));
  for (const { marker, at, end } of jpegSegments(bytes)) {
    if (end > bytes.length) return null;
    const isApp = marker >= APP0 && marker <= APP15;
    const isProfile = marker === APP2 && charsOf(bytes, at + 4, 11) === 'ICC_PROFILE';
    const stays = !isApp || marker === APP0 || marker === APP14 || isProfile;
    if (stays && marker !== COMMENT) kept.push(bytes.subarray(at, end));
    if (marker === END_OF_IMAGE) return kept;
  }
  return null;
}

/** Chunks of a PNG that tell of the picture's making, not of the picture. */
const PNG_OUT = new Set(['eXIf', 'tEXt', 'zTXt', 'iTXt', 'tIME']);

function ofPng(bytes: Uint8Array): Pieces {
  const view = viewOf(bytes);
  const kept = [bytes.subarray(0, 8)];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const end = at + 12 + view.getUint32(at);
    if (end > bytes.length) return null;
    const name = charsOf(bytes, at + 4, 4);
    if (!PNG_OUT.has(name)) kept.push(bytes.subarray(at, end));
    if (name === 'IEND') return kept;
    at = end;
  }
  return null;
}

/** Bits of a VP8X chunk that say that Exif or XMP come. */
const [EXIF_FLAG, XMP_FLAG] = [0x08, 0x04];

function ofWebp(bytes: Uint8Array): Pieces {
  const view = viewOf(bytes);
  const kept = [bytes.subarray(0, 12)];
  const whole = Math.min(bytes.length, view.getUint32(4, true) + 8);
  for (let at = 12; at + 8 <= whole; ) {
    const length = view.getUint32(at + 4, true);
    const end = at + 8 + length + (length % 2);
    if (end > whole) return null;
    const name = charsOf(bytes, at, 4);
    if (name === 'VP8X') {
      const chunk = bytes.slice(at, end);
      chunk[8] = (chunk[8] ?? 0) & ~(EXIF_FLAG | XMP_FLAG);
      kept.push(chunk);
    } else if (name !== 'EXIF' && name !== 'XMP ') kept.push(bytes.subarray(at, end));
    at = end;
  }
  return kept;
}

const [EXTENSION, IMAGE, TRAILER] = [0x21, 0x2c, 0x3b];
const [GIF_COMMENT, GIF_APPLICATION, GIF_PLAIN_TEXT] = [0xfe, 0xff, 0x01];

/** Comments and what programs added (but how often it repeats) go; blocks follow one another up to the trailer. */
function ofGif(bytes: Uint8Array): Pieces {
  const head = 13 + colours(bytes[10] ?? 0);
  const kept = [bytes.subarray(0, head)];
  for (let at = head; at < bytes.length; ) {
    const is = bytes[at];
    if (is === TRAILER) return [...kept, bytes.subarray(at, at + 1)];
    const label = bytes[at + 1] ?? 0;
    const data = is === IMAGE ? at + 11 + colours(bytes[at + 9] ?? 0) : at + 2;
    const end = is === IMAGE || is === EXTENSION ? endOfBlocks(bytes, data) : null;
    if (end === null) return null;
    const repeats = charsOf(bytes, at + 3, 11) === 'NETSCAPE2.0';
    const goes =
      is === EXTENSION &&
      (label === GIF_COMMENT || label === GIF_PLAIN_TEXT || (label === GIF_APPLICATION && !repeats));
    if (!goes) kept.push(bytes.subarray(at, end));
    at = end;
  }
  return null;
}

/** Bytes of the colour table that a packed field announces. */
function colours(packed: number): number {
  return packed & 0x80 ? 3 * 2 ** ((packed & 7) + 1) : 0;
}

/** Behind the empty block that ends a row of blocks; null where there is none. */
function endOfBlocks(bytes: Uint8Array, from: number): number | null {
  let at = from;
  while (at < bytes.length) {
    const length = bytes[at] ?? 0;
    at += length + 1;
    if (length === 0) return at;
  }
  return null;
}
