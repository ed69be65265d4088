/** Names that are shown of a list. */
const MOST_NAMES = 5;

/** The first names of a list in quotation marks, and how many more there are. */
export function quotedNames(names: readonly string[]): { readonly shown: string; readonly more: number } {
  return {
    shown: names
      .slice(0, MOST_NAMES)
      .map((name) => `“${name}”`)
      .join(', '),
    more: Math.max(0, names.length - MOST_NAMES),
  };
}
