import { type FileProblem, type Opened, openSite } from '@footmark/site';
import { quoteNoNumbers } from './quoteNoNumbers';

/**
 * As `openSite`. JSON has no NaN or Infinity, and its parser stops at one without saying where: in such a file they are made
 * texts and it is opened again, so that the refusal has the path to each.
 */
export function openText(text: string): Opened {
  const opened = openSite(text);
  if (opened.ok || opened.failure.code !== 'not-json') return opened;
  const quoted = quoteNoNumbers(text);
  if (quoted === null) return opened;
  const again = openSite(quoted);
  if (again.ok) return opened; // such a word stands where a text belongs
  if (again.failure.code !== 'invalid') return again;
  const raw: unknown = JSON.parse(quoted);
  const problems = again.failure.problems.map((problem) => withWord(problem, raw));
  return { ok: false, failure: { ...again.failure, problems } };
}

/** A problem whose value is such a word says so. */
function withWord(problem: FileProblem, raw: unknown): FileProblem {
  const value = problem.path.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at !== null ? Reflect.get(at, key) : undefined),
    raw,
  );
  const isWord = typeof value === 'string' && /^-?(NaN|Infinity)$/.test(value);
  return isWord ? { ...problem, detail: value } : problem;
}
