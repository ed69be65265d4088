import { parseClockRange, parseLength } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import type { TableProblemFacts } from '../tableProblem';
import { en } from './en';

const failure = (parsed: ReturnType<typeof parseLength> | ReturnType<typeof parseClockRange>) => {
  if (parsed.ok) throw new Error('this was to be refused');
  return parsed;
};

describe('what is wrong with pasted readings', () => {
  it.each<[TableProblemFacts, string]>([
    [
      { code: 'not-a-length', text: 'abc', because: failure(parseLength('abc', 'ft')) },
      '“abc” is not a number that can be read.',
    ],
    [
      { code: 'clock-not-read', text: '13', because: failure(parseClockRange('13')) },
      '13 is not on a clock face; hours go from 1 to 12. It goes into the note.',
    ],
    [{ code: 'total-row', text: 'Total 45.2' }, 'A total, no reading: “Total 45.2”.'],
    [
      { code: 'unknown-thing-seen', text: 'x'.repeat(300) },
      `“${'x'.repeat(39)}…” is none of the things that a reading can have seen.`,
    ],
  ])('%j', (problem, said) => {
    expect(en.tableProblemText(problem)).toBe(said);
  });
});
