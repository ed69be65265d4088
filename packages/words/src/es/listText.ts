import { listText } from '../listText';

/** Sounds before which `y` becomes `e`: `i`, also behind a silent `h`, but not the glide of `hielo` or `yeso`. */
const LIKE_I = /^h?[ií](?![aeou])/i;

/** Sounds before which `o` becomes `u`: `o`, also behind a silent `h`, and the figures 8 and 11, which are read so. */
const LIKE_O = /^(h?[oó]|8|11\b)/i;

/** Names in a sentence, all of which count: `a, b y c`. */
export function andList(names: readonly string[]): string {
  return listText(names, LIKE_I.test(names.at(-1) ?? '') ? 'e' : 'y');
}

/** Names in a sentence, one of which it is: `a, b o c`. */
export function orList(names: readonly string[]): string {
  return listText(names, LIKE_O.test(names.at(-1) ?? '') ? 'u' : 'o');
}
