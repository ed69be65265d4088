const LONGEST_QUOTE = 40;

/** What stands in a cell of a table, in quotation marks and cut where it is long. */
export function quotedCell(text: string): string {
  return `“${text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE - 1)}…` : text}”`;
}
