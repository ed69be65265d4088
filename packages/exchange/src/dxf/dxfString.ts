import { harmlessName } from '../harmless';

/** Signs that a plan is full of, in the ASCII that stands for them in CAD; %%d, %%c and %%p are degree, diameter and plus-or-minus there. */
const SIGNS: Readonly<Record<string, string>> = {
  '′': "'",
  '″': '"',
  '’': "'",
  '“': '"',
  '”': '"',
  '–': '-',
  '−': '-',
  '×': 'x',
  '·': '.',
  '…': '...',
  '\u00a0': ' ',
  '°': '%%d',
  '⌀': '%%c',
  Ø: '%%c',
  '±': '%%p',
  '½': ' 1/2',
  '¼': ' 1/4',
  '¾': ' 3/4',
  '⅛': ' 1/8',
  '⅜': ' 3/8',
  '⅝': ' 5/8',
  '⅞': ' 7/8',
};

const ASCII = /^[\x20-\x7e]$/;

/** The longest string that R12 reads. */
const MOST_CHARACTERS = 255;

/**
 * A text of one line as DXF R12 can hold it: ASCII, with the usual stand-ins, and `\U+XXXX` for all else, which readers since R13 show. What is
 * typed is made harmless first, and its own backslashes and double per cents, which CAD would act on, are broken.
 */
export function dxfString(text: string): string {
  const plain = harmlessName(text).replaceAll('\\', '/').replaceAll('%%', '% %');
  let put = '';
  for (const c of plain) {
    const next = ASCII.test(c) ? c : (SIGNS[c] ?? unicode(c));
    if (put.length + next.length > MOST_CHARACTERS) break;
    put += next;
  }
  return put.trimStart();
}

/** Beyond the first plane by the two halves that UTF-16 has for it. */
function unicode(character: string): string {
  return Array.from({ length: character.length }, (_, i) => {
    const code = character.charCodeAt(i).toString(16).toUpperCase().padStart(4, '0');
    return `\\U+${code}`;
  }).join('');
}
