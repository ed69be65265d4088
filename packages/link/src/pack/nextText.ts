/** More digits than this are no counting. */
const ENDS_IN_DIGITS = /^(.*?)(\d{1,15})$/s;
const ENDS_IN_LETTER = /^(.*)([a-y])$/s;

/** What comes after a name in a list that was named by counting: `f9` → `f10`, `b` → `c`. Null after one that does not count. */
export function nextText(text: string): string | null {
  const [, start = '', digits] = ENDS_IN_DIGITS.exec(text) ?? [];
  if (digits !== undefined) return `${start}${Number(digits) + 1}`;
  const [, stem = '', letter] = ENDS_IN_LETTER.exec(text) ?? [];
  return letter === undefined ? null : `${stem}${String.fromCharCode(letter.charCodeAt(0) + 1)}`;
}
