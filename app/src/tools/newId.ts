/** A new id that no other device makes too: a letter for what it names, then random letters and digits. */
export function newId(prefix: string): string {
  return `${prefix}${crypto.randomUUID().replaceAll('-', '').slice(0, 12)}`;
}
