import type { Weight } from '../page/page';
import { readFontFace } from './fontFace';

/** The TrueType files that a sheet is lettered in. */
export type SheetFonts = Readonly<Record<Weight, Uint8Array>>;

/** How wide texts come out, and what of them can be written. */
export type Lettering = Readonly<{
  /** Width (mm) of a text at a size (mm of em). */
  widthOf: (text: string, size: number, weight: Weight) => number;
  /** Whether both cuts have a glyph for it. */
  has: (codePoint: number) => boolean;
}>;

/** Lettering by the real advance widths of the fonts. Throws a RangeError for bytes that are no TrueType font. */
export function letteringOf(fonts: SheetFonts): Lettering {
  const faces = { regular: readFontFace(fonts.regular), bold: readFontFace(fonts.bold) };
  const known = { regular: new Map<number, number | null>(), bold: new Map<number, number | null>() };
  const advance = (codePoint: number, weight: Weight): number | null => {
    const found = known[weight].get(codePoint);
    if (found !== undefined) return found;
    const read = faces[weight].advance(codePoint);
    known[weight].set(codePoint, read);
    return read;
  };
  return {
    widthOf: (text, size, weight) => {
      let ems = 0;
      for (const character of text) ems += advance(character.codePointAt(0) ?? 0, weight) ?? 0;
      return ems * size;
    },
    has: (codePoint) => advance(codePoint, 'regular') !== null && advance(codePoint, 'bold') !== null,
  };
}
