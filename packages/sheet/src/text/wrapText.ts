import type { Lettering } from '../font/sheetFonts';
import type { Weight } from '../page/page';

const ELLIPSIS = '…';

/** How a text is set: `size` and `width` in mm. `mostLines`: what goes beyond ends with an ellipsis. */
export type TextMeasure = Readonly<{ size: number; weight: Weight; width: number; mostLines?: number }>;

/**
 * Breaks a clean text into lines no wider than asked, at spaces and after hyphens; a word that is wider by itself is broken between
 * letters. An empty text is no line.
 */
export function wrapText(text: string, measure: TextMeasure, lettering: Lettering): readonly string[] {
  const fits = (line: string) => lettering.widthOf(line, measure.size, measure.weight) <= measure.width;
  const lines: string[] = [];
  let line = '';
  for (const word of piecesOf(text)) {
    if (fits((line + word).trimEnd())) {
      line += word;
      continue;
    }
    if (line.trim() !== '') lines.push(line.trimEnd());
    line = '';
    for (const letter of word.trimStart()) {
      if (line !== '' && !fits((line + letter).trimEnd())) {
        lines.push(line);
        line = '';
      }
      line += letter;
    }
  }
  if (line.trim() !== '') lines.push(line.trimEnd());
  const most = measure.mostLines ?? lines.length;
  if (lines.length <= most) return lines;
  const last = lines.slice(most - 1).join(' ');
  return [...lines.slice(0, most - 1), shorten(last, measure, lettering)];
}

/** A clean text on one line no wider than asked, its end left off for an ellipsis where it has to be. */
export function shorten(text: string, { size, weight, width }: TextMeasure, { widthOf }: Lettering): string {
  if (widthOf(text, size, weight) <= width) return text;
  const letters = [...text];
  let [low, high] = [0, letters.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    const tried = letters.slice(0, middle).join('').trimEnd() + ELLIPSIS;
    if (widthOf(tried, size, weight) <= width) low = middle;
    else high = middle - 1;
  }
  return letters.slice(0, low).join('').trimEnd() + ELLIPSIS;
}

/** Words, each with the space or hyphen after it; a number and its unit are one, and so is what is crossed. */
function piecesOf(text: string): readonly string[] {
  const joined = text.replace(NUMBER_AND_UNIT, `$1${JOIN}`).replace(CROSSED, `$1${JOIN}×${JOIN}`);
  return (joined.match(/[^ -]*-+|[^ -]+ *| +/gu) ?? []).map((piece) => piece.replaceAll(JOIN, ' '));
}

const JOIN = '\u00a0';
const NUMBER_AND_UNIT = /(\d|±) (?=(?:ft|in|m|mm|cm|sq|cu|%|\d)(?![\p{L}]))/gu;
const CROSSED = /(\d) × (?=\d)/gu;
