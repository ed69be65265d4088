import type { ThingMatcher } from './matchThing';
import { clockOf, isLength } from './measureCell';
import { type Separator, splitLine } from './splitRecords';
import { SAMPLE_ROWS } from './tableLimits';

/** Of two that leave as many cells understood the first is taken. */
const SEPARATORS: readonly Separator[] = ['\t', ';', 'spaces', ','];

/**
 * What separates the cells: that which leaves most cells understood, as a length, a clock or a thing seen. Counting separators
 * would take `7,18;sag` for a table with commas. A text in which none sets anything apart is one column.
 */
export function findSeparator(lines: readonly string[], match: ThingMatcher): Separator {
  const sample: string[] = [];
  for (const line of lines) {
    if (sample.length === SAMPLE_ROWS) break;
    if (line.trim() !== '') sample.push(line);
  }
  const isUnderstood = (text: string) => isLength(text) || clockOf(text).ok || match(text) !== null;
  let best: Separator = 'none';
  let most = 0;
  for (const separator of SEPARATORS) {
    const cells = sample
      .map((line) => splitLine(line, separator))
      .flatMap((row) => (row.length > 1 ? row : []));
    const understood = cells.filter(isUnderstood).length;
    if (understood > most) [best, most] = [separator, understood];
  }
  return best;
}
