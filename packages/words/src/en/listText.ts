import { listText } from '../listText';

/** Names in a sentence, all of which count: `a, b and c`. */
export function andList(names: readonly string[]): string {
  return listText(names, 'and');
}

/** Names in a sentence, one of which it is: `a, b or c`. */
export function orList(names: readonly string[]): string {
  return listText(names, 'or');
}
