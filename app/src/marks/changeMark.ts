import type { Mark, ReadingFacts } from '@footmark/site';
import { changeFactsAs } from '../runs/readingFacts';

/** Changes what is known of a mark on the ground; undefined clears it. */
export function changeMark(
  name: string,
  { run, reading }: Mark,
  facts: Pick<ReadingFacts, 'ground' | 'offset'>,
): boolean {
  return changeFactsAs(name, run, reading, facts);
}
