/** The entry of a table whose key comes from a form or a file. Throws a RangeError that names a key which is not there. */
export function named(table: Readonly<Record<string, string>>, key: string): string {
  const name = Object.hasOwn(table, key) ? table[key] : undefined;
  if (name === undefined) throw new RangeError(`no words for ${key}`);
  return name;
}

/** A name of a table put into the middle of a sentence; what starts with two capitals stays as it is. */
export function inSentence(name: string): string {
  return /^\p{Lu}{2}/u.test(name) ? name : name.charAt(0).toLowerCase() + name.slice(1);
}

/** The first letter as a sentence begins. */
export function atStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
