import type { Lettering } from '../font/sheetFonts';

/** Stands for a character that the font has no glyph for: what is missing is seen to be missing. */
export const REPLACEMENT = '?';

/** Near enough in meaning, where the font lacks the first. */
const STAND_INS: Readonly<Record<string, string>> = { '→': '>', '←': '<', '⌀': 'Ø', '\u2011': '-' };

/** Controls, formats (right-to-left overrides among them), lone surrogates and what is in private use: never written. */
const UNWRITTEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}]/gu;

const SPACES = /\s+/gu;

/** Between feet and inches: the mark of the feet brings its own gap. */
const AFTER_FEET = /′ (?=[\d¼½¾⅛⅜⅝⅞])/gu;

/**
 * One line of what can be written of a text: composed, its white space plain and single, its controls and direction overrides left
 * out, and every character that the font lacks replaced by one that is seen.
 */
export function cleanText(text: string, { has }: Lettering): string {
  const plain = text
    .normalize('NFC')
    .replace(SPACES, ' ')
    .replace(UNWRITTEN, '')
    .replace(AFTER_FEET, '′')
    .trim();
  let clean = '';
  for (const character of plain) {
    const stand = STAND_INS[character] ?? REPLACEMENT;
    clean += has(character.codePointAt(0) ?? 0) ? character : stand;
  }
  return clean;
}
