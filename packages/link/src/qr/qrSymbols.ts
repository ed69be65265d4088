import { correction, generate, mode } from 'lean-qr';
import { decimals, decimalsLength } from '../frame/decimals';
import { MOST_PARTS, PART_BYTES, partFrames } from '../parts';

/** The largest symbol that still scans from a sheet held in the hand (measured, and common practice; no source). */
const LARGEST_VERSION = 25;

/** How large a module is printed, mm, and the white margin that a reader needs about the symbol, modules (ISO/IEC 18004; from memory). */
export const MODULE_MM = 0.4;
export const QUIET_MODULES = 4;

export type QrLevel = 'L' | 'M' | 'Q' | 'H';

/** A QR symbol: its dark modules row by row from the top, without the white margin. */
export type QrSymbol = {
  readonly version: number;
  /** How much of it may be hidden: about 7, 15, 25, 30 per cent. */
  readonly level: QrLevel;
  readonly modules: readonly (readonly boolean[])[];
  /** Width and height when printed, mm, with and without the white margin. */
  readonly widthMm: number;
  readonly widthWithMarginMm: number;
};

export type QrDrawn =
  | { readonly ok: true; readonly symbols: readonly QrSymbol[] }
  /** More than `MOST_PARTS` symbols would be needed: a file is the way. */
  | { readonly ok: false; readonly failure: { readonly code: 'too-many-symbols'; readonly needed: number } };

/** Levels from which a symbol's is raised as far as its version has room. */
const LEVELS: readonly QrLevel[] = ['L', 'M', 'Q', 'H'];

/**
 * Symbols that hold a link, `head` (the address up to and with its `#`, ASCII) as text and the bytes in decimals: one of level M, or, if
 * none holds it, of level L, else several of level M, each with a part of the link. Always the smallest version that serves, and the
 * highest level that this version has room for.
 */
export function qrSymbols(head: string, frame: Uint8Array): QrDrawn {
  if (!/^[!-~]*$/.test(head)) throw new RangeError(`an address is of ASCII characters, not ${head}`);
  const one = symbolOf(head, frame, 'M') ?? symbolOf(head, frame, 'L');
  if (one !== null) return { ok: true, symbols: [one] };
  const needed = Math.ceil(frame.length / mostBytes(head));
  if (needed > MOST_PARTS) return { ok: false, failure: { code: 'too-many-symbols', needed } };
  const symbols = partFrames(frame, needed).map((part) => {
    const symbol = symbolOf(head, part, 'M');
    if (symbol === null) throw new RangeError(`a part of ${part.length} bytes is larger than a symbol`);
    return symbol;
  });
  return { ok: true, symbols };
}

function symbolOf(head: string, frame: Uint8Array, least: QrLevel): QrSymbol | null {
  const content = mode.multi(mode.ascii(head), mode.numeric(decimals(frame)));
  const smallest = drawn(content, least, LARGEST_VERSION);
  if (smallest === null) return null;
  const version = (smallest.size - 17) / 4;
  let best = { level: least, map: smallest };
  for (const level of LEVELS.slice(LEVELS.indexOf(least) + 1)) {
    const map = drawn(content, level, version);
    if (map === null) break;
    best = { level, map };
  }
  const { level, map } = best;
  const places = Array.from({ length: map.size }, (_, i) => i);
  return {
    version,
    level,
    modules: places.map((y) => places.map((x) => map.get(x, y))),
    widthMm: map.size * MODULE_MM,
    widthWithMarginMm: (map.size + 2 * QUIET_MODULES) * MODULE_MM,
  };
}

/** The library's symbol of exactly this level; null when no version up to `maxVersion` holds the content. */
function drawn(content: Parameters<typeof generate>[0], level: QrLevel, maxVersion: number) {
  try {
    return generate(content, {
      minCorrectionLevel: correction[level],
      maxCorrectionLevel: correction[level],
      maxVersion,
    });
  } catch {
    return null; // it throws for one reason only: too much content
  }
}

/** Data bits of the largest symbol at level M: 1,000 codewords (ISO/IEC 18004, table 7; from memory, held to by a test). */
const LARGEST_BITS = 8 * 1000;

/** Bits before the text and before the digits: mode and count, in versions 10 to 26. */
const TEXT_HEADER_BITS = 4 + 16;
const DIGITS_HEADER_BITS = 4 + 12;

/** Bytes of the whole that a part in the largest symbol at level M carries beside this head. */
function mostBytes(head: string): number {
  const left = LARGEST_BITS - TEXT_HEADER_BITS - 8 * head.length - DIGITS_HEADER_BITS;
  const digits = Math.floor((3 * left) / 10);
  let bytes = 0;
  while (decimalsLength(bytes + 1 + PART_BYTES) <= digits) bytes += 1;
  return bytes;
}
