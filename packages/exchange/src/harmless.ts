// What people typed goes out into programs that run formulas, show markup and turn the direction of text. Here it is made text and
// nothing else, for every format; quoting and escaping are each format's own besides.

/** Controls that XML and CAD files cannot hold, and halves of characters. Tabs and line ends are left. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
const CONTROLS = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufffe\uffff]|\p{Surrogate}/gu;

/** Embeddings, overrides and isolates (UAX 9): they make a name read as another. */
const DIRECTION_CONTROLS = /[\u202a-\u202e\u2066-\u2069]/g;

/** A spreadsheet takes text that begins with one of these for a formula, whatever quotes stand around it; the wide forms too. */
const FORMULA_START = /^[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/;

/** Without control characters and without those that turn the direction of text. */
export function plainText(text: string): string {
  return text.replace(CONTROLS, '').replace(DIRECTION_CONTROLS, '');
}

/** Text that no spreadsheet runs: with a leading apostrophe where it would be taken for a formula. */
export function formulaFree(text: string): string {
  return FORMULA_START.test(text) ? `'${text}` : text;
}

/**
 * A name or a note as it goes into a map or a drawing: plain, on one line, no formula, and with single guillemets for angle brackets, because viewers put
 * names into pages and balloons as they are.
 */
export function harmlessName(text: string): string {
  const line = plainText(text).replace(/\s+/gu, ' ').trim().replaceAll('<', '‹').replaceAll('>', '›');
  return formulaFree(line);
}
