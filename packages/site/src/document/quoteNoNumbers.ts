/** What other programs write for a number that could not be computed. */
const NO_NUMBER = /-?(?:NaN|Infinity)\b/y;

const MAY_START = new Set(['N', 'I', '-']);

/**
 * Puts quotes around each NaN, Infinity and -Infinity that stands outside of the texts of a JSON file. Null when there is none.
 * One pass without a backtracking pattern: a broken file can hold a text of any length.
 */
export function quoteNoNumbers(json: string): string | null {
  const parts: string[] = [];
  let taken = 0;
  for (let i = 0; i < json.length; i++) {
    const character = json.charAt(i);
    if (character === '"') {
      i = endOfText(json, i);
    } else if (MAY_START.has(character)) {
      NO_NUMBER.lastIndex = i;
      const word = NO_NUMBER.exec(json)?.[0];
      if (word === undefined) continue;
      parts.push(json.slice(taken, i), JSON.stringify(word));
      taken = i + word.length;
      i = taken - 1;
    }
  }
  return parts.length === 0 ? null : parts.join('') + json.slice(taken);
}

/** Index of the quote that ends the text which begins at `start`; the end of the file when none does. */
function endOfText(json: string, start: number): number {
  for (let i = start + 1; i < json.length; i++) {
    const character = json.charAt(i);
    if (character === '\\') i++;
    else if (character === '"') return i;
  }
  return json.length;
}
