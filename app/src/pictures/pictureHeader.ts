import { charsOf, viewOf } from './bytes';
import { orientationInExif } from './exif';
import { APP1, END_OF_IMAGE, jpegSegments, START_OF_SCAN } from './jpegSegments';

/** Kinds of picture that every browser decodes. */
export type PictureType = 'png' | 'jpeg' | 'webp' | 'gif';

export type PictureHeader = {
  readonly ok: true;
  readonly type: PictureType;
  /** Pixels as they are stored, before `orientation` is applied. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** The EXIF value 1 to 8 of a JPEG: 1 upright, 5 to 8 lie on their side. Other kinds are taken as 1. */
  readonly orientation: number;
};

/** What a file is instead of a picture that can be used. `broken`: it begins like a picture of that kind and is not whole. */
export type HeaderFailure =
  | { readonly ok: false; readonly code: 'empty' }
  | { readonly ok: false; readonly code: 'heic' }
  | { readonly ok: false; readonly code: 'other-kind'; readonly kind: string }
  | { readonly ok: false; readonly code: 'not-a-picture' }
  | { readonly ok: false; readonly code: 'broken'; readonly type: PictureType };

/**
 * Tells what a file is by its content, and how large a picture is, without decoding it. Sources: PNG, W3C third edition, 5.2 and
 * 11.2.1; JPEG, ITU-T T.81 annex B; orientation, Exif 2.32 tag 0x0112; GIF89a, 18; WebP, RFC 9649; file type boxes, ISO/IEC
 * 14496-12, 4.3 and HEIF 23008-12. Read from memory of these texts and held by the tests to files that other programs wrote.
 */
export function readPictureHeader(bytes: Uint8Array): PictureHeader | HeaderFailure {
  if (bytes.length === 0) return { ok: false, code: 'empty' };
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return readPng(bytes);
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return readJpeg(bytes);
  if (/^GIF8[79]a$/.test(charsOf(bytes, 0, 6))) return readGif(bytes);
  if (charsOf(bytes, 0, 4) === 'RIFF' && charsOf(bytes, 8, 4) === 'WEBP') return readWebp(bytes);
  if (charsOf(bytes, 4, 4) === 'ftyp') return readFileTypeBox(bytes);
  const other = OTHER_KINDS.find(([, begins]) => startsWith(bytes, begins));
  if (other !== undefined) return { ok: false, code: 'other-kind', kind: other[0] };
  if (/^\s*(<\?xml[^>]*>\s*)?(<!--[\s\S]*?-->\s*)?<svg[\s>]/.test(charsOf(bytes, 0, 1000))) {
    return { ok: false, code: 'other-kind', kind: 'SVG' };
  }
  return { ok: false, code: 'not-a-picture' };
}

/** Kinds that a person may well try, by their first bytes. */
const OTHER_KINDS: readonly (readonly [string, readonly number[]])[] = [
  ['PDF', [0x25, 0x50, 0x44, 0x46, 0x2d]],
  ['TIFF', [0x49, 0x49, 0x2a, 0x00]],
  ['TIFF', [0x4d, 0x4d, 0x00, 0x2a]],
  ['BMP', [0x42, 0x4d]],
];

function readPng(bytes: Uint8Array): PictureHeader | HeaderFailure {
  if (bytes.length < 24 || charsOf(bytes, 12, 4) !== 'IHDR') return broken('png');
  const view = viewOf(bytes);
  return sized('png', view.getUint32(16), view.getUint32(20));
}

function readGif(bytes: Uint8Array): PictureHeader | HeaderFailure {
  if (bytes.length < 10) return broken('gif');
  const view = viewOf(bytes);
  return sized('gif', view.getUint16(6, true), view.getUint16(8, true));
}

function readWebp(bytes: Uint8Array): PictureHeader | HeaderFailure {
  const view = viewOf(bytes);
  const chunk = charsOf(bytes, 12, 4);
  if (bytes.length < (chunk === 'VP8L' ? 25 : 30)) return broken('webp');
  switch (chunk) {
    case 'VP8 ':
      // lossy: 14 bits each behind the start code of the key frame; the upper two are a scale for showing
      return sized('webp', view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff);
    case 'VP8L': {
      const bits = view.getUint32(21, true);
      return sized('webp', (bits & 0x3fff) + 1, ((bits >>> 14) & 0x3fff) + 1);
    }
    case 'VP8X':
      return sized('webp', uint24(view, 24) + 1, uint24(view, 27) + 1);
    default:
      return broken('webp');
  }
}

/** Brands of the HEIF family with HEVC inside, which browsers but one do not decode. */
const HEIC_BRANDS = ['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1'];

function readFileTypeBox(bytes: Uint8Array): HeaderFailure {
  const brand = charsOf(bytes, 8, 4);
  const compatible = charsOf(bytes, 16, Math.min(64, Math.max(0, viewOf(bytes).getUint32(0) - 16)));
  if (brand === 'avif' || brand === 'avis' || (brand === 'mif1' && compatible.includes('avif'))) {
    return { ok: false, code: 'other-kind', kind: 'AVIF' };
  }
  if (HEIC_BRANDS.includes(brand)) return { ok: false, code: 'heic' };
  return {
    ok: false,
    code: 'other-kind',
    kind: brand === 'qt  ' || brand.startsWith('mp4') ? 'video' : 'MP4',
  };
}

/** Walks the segments of a JPEG up to its frame header; an orientation on the way is kept. */
function readJpeg(bytes: Uint8Array): PictureHeader | HeaderFailure {
  const view = viewOf(bytes);
  let orientation = 1;
  for (const { marker, at, end } of jpegSegments(bytes)) {
    if (marker === END_OF_IMAGE || marker === START_OF_SCAN) return broken('jpeg');
    if (isFrameHeader(marker)) {
      if (at + 9 > bytes.length) return broken('jpeg');
      const size = sized('jpeg', view.getUint16(at + 7), view.getUint16(at + 5));
      return size.ok ? { ...size, orientation } : size;
    }
    if (marker === APP1) orientation = orientationInExif(bytes.subarray(at + 4, end)) ?? orientation;
  }
  return broken('jpeg');
}

/** SOF0 to SOF15 without the tables (DHT, DAC) and the extension (JPG) that lie between them. */
function isFrameHeader(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

function sized(type: PictureType, widthPx: number, heightPx: number): PictureHeader | HeaderFailure {
  return widthPx === 0 || heightPx === 0
    ? broken(type)
    : { ok: true, type, widthPx, heightPx, orientation: 1 };
}

function broken(type: PictureType): HeaderFailure {
  return { ok: false, code: 'broken', type };
}

function startsWith(bytes: Uint8Array, begins: readonly number[]): boolean {
  return begins.every((byte, i) => bytes[i] === byte);
}

function uint24(view: DataView, at: number): number {
  return view.getUint16(at, true) | (view.getUint8(at + 2) << 16);
}
