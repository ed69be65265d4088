/** Names in a sentence, the last of them after `last`: `a, b and c`. */
export function listText(names: readonly string[], last: string): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} ${last} ${names.at(-1)}`;
}
