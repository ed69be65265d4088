import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { letteringOf } from '../../packages/sheet/src/font/sheetFonts';
import { cleanText, REPLACEMENT } from '../../packages/sheet/src/text/cleanText';
import { shorten, wrapText } from '../../packages/sheet/src/text/wrapText';
import { FONTS } from './sheets';

// Widths against fontkit 2.0.4, a reader of fonts that is not ours; kerning is off in both.

const lettering = letteringOf(FONTS);
const regular = { size: 10, weight: 'regular' } as const;

describe('the width of a text', () => {
  it.each(['regular', 'bold'] as const)('is what fontkit finds in the %s cut, letter by letter', (weight) => {
    const font = create(Buffer.from(FONTS[weight])) as Font; // one font, not a collection
    const characters = Array.from({ length: 0x2200 - 0x20 }, (_, i) => i + 0x20);
    let known = 0;
    for (const c of characters) {
      if (!font.hasGlyphForCodePoint(c)) continue;
      known += 1;
      const theirs = font.glyphForCodePoint(c).advanceWidth / font.unitsPerEm;
      expect(lettering.widthOf(String.fromCodePoint(c), 1, weight)).toBeCloseTo(theirs, 9);
    }
    expect(known).toBeGreaterThan(400);
  });
});

describe('a text', () => {
  it('loses its controls and direction overrides, and shows what the font lacks', () => {
    expect(cleanText('a\u202eb\u0000c\u200fd\te\nf', lettering)).toBe('abcd e f');
    expect(cleanText('污水', lettering)).toBe(REPLACEMENT.repeat(2));
    expect(cleanText('x 😀 y', lettering)).toBe(`x ${REPLACEMENT} y`);
    expect(cleanText('e\u0301t\u0065\u0301', lettering)).toBe('été');
    expect(cleanText('23′ 6½″ × 4° ± ≈ –', lettering)).toBe('23′6½″ × 4° ± ≈ –');
  });

  it('is broken into lines that fit, and says all of what it says', () => {
    const text =
      'The boundary on this sketch is not a survey; ask Donaudampfschifffahrtsgesellschaftskapitän first.';
    for (const width of [12, 20, 35, 80]) {
      const lines = wrapText(text, { ...regular, width }, lettering);
      for (const line of lines) expect(lettering.widthOf(line, 10, 'regular')).toBeLessThanOrEqual(width);
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
    }
  });

  it('keeps a number with its unit', () => {
    const lines = wrapText('about 6.6 ft down, 1.22 m off', { ...regular, width: 32 }, lettering);
    for (const line of lines) expect(line).not.toMatch(/^(ft|m)\b/);
  });

  it('that is too long ends with an ellipsis and still fits', () => {
    const short = shorten('Grundstücksentwässerungsanlage', { ...regular, width: 30 }, lettering);
    expect(short).toMatch(/^Gru.*…$/);
    expect(lettering.widthOf(short, 10, 'regular')).toBeLessThanOrEqual(30);
    const lines = wrapText('one two three four five six', { ...regular, width: 18, mostLines: 2 }, lettering);
    expect(lines.length).toBe(2);
    expect(lines[1]).toMatch(/…$/);
  });
});
