import { wordKey } from './matchThing';
import { MOST_MEASURE_CHARACTERS } from './tableLimits';
import { blockedWords } from './tradeWords';

/** Words and signs by what they say of the camera in a column `passed`, and in one `could not pass`. */
const ANSWERS: readonly Readonly<{
  words: readonly string[];
  passed: boolean | null;
  blocked: boolean | null;
}>[] = [
  { words: ['yes', 'y', 'true', '1', '✓', '✔'], passed: true, blocked: false },
  { words: ['no', 'n', 'false', '0'], passed: false, blocked: true },
  { words: ['passed', 'pass', 'ok'], passed: true, blocked: true },
  { words: ['failed', 'fail', ...blockedWords], passed: false, blocked: false },
  // In a column `passed` it is a tick to some and a cross to others.
  { words: ['x', '✗', '✘'], passed: null, blocked: false },
];

/** Whether the camera passed; `null` for a cell that does not say it in words or signs that are known. */
export function passedOf(text: string, column: 'passed' | 'blocked'): boolean | null {
  const typed = text.length > MOST_MEASURE_CHARACTERS ? '' : spelling(text);
  return ANSWERS.find(({ words }) => words.some((word) => spelling(word) === typed))?.[column] ?? null;
}

/** Signs have no letters to compare by. */
function spelling(text: string): string {
  return wordKey(text) || text.trim();
}
