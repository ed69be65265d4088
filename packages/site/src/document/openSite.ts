import type { z } from 'zod';
import { type IntegrityProblem, integrityProblems } from './integrity';
import { type Migration, migrations } from './migrations';
import { quoteNoNumbers } from './quoteNoNumbers';
import { SITE_FORMAT, SITE_VERSION, type Site, site as siteSchema } from './site';

/** Larger files are refused before they are parsed: the largest yard is a fiftieth of it. */
export const MOST_SITE_CHARACTERS = 20_000_000;

/** Problems past this many are counted, not listed. */
export const MOST_LISTED = 20;

/** One place in a file that is not as it must be; `path` leads to it, `detail` is the validator's own word. */
export type FileProblem = {
  readonly code: IntegrityProblem['code'] | 'wrong-value' | 'unknown-field' | 'missing';
  readonly path: readonly (string | number)[];
  readonly detail: string;
};

/** Why a text is not a site that can be opened. Nothing is ever half loaded. */
export type OpenFailure =
  | { readonly code: 'too-large'; readonly characters: number; readonly most: number }
  | { readonly code: 'not-json'; readonly position: number | null; readonly near: string }
  | { readonly code: 'not-a-site' }
  | { readonly code: 'newer-version'; readonly version: number; readonly known: number }
  | { readonly code: 'invalid'; readonly problems: readonly FileProblem[]; readonly more: number };

export type Opened =
  | { readonly ok: true; readonly site: Site; readonly migratedFrom: number | null }
  | { readonly ok: false; readonly failure: OpenFailure };

/**
 * Reads a site file: size, JSON, format, version, migrations, shape, integrity, in that order. A file of a newer version is
 * refused and left alone.
 */
export function openSite(text: string): Opened {
  if (text.length > MOST_SITE_CHARACTERS) {
    return refuse({ code: 'too-large', characters: text.length, most: MOST_SITE_CHARACTERS });
  }
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    return openWithNoNumbers(text) ?? refuse(notJson(text, error));
  }
  return openSiteValue(raw);
}

/**
 * JSON has no NaN or Infinity, and its parser stops at one without saying where: in such a file they are made texts and it is
 * looked at again, so that the refusal has the path to each. Null when that is not what is the matter.
 */
function openWithNoNumbers(text: string): Opened | null {
  const quoted = quoteNoNumbers(text);
  if (quoted === null) return null;
  let raw: unknown;
  try {
    raw = JSON.parse(quoted);
  } catch {
    return null;
  }
  const opened = openSiteValue(raw);
  if (opened.ok) return null; // such a word stands where a text belongs
  if (opened.failure.code !== 'invalid') return opened;
  const problems = opened.failure.problems.map((problem) => withWord(problem, raw));
  return refuse({ ...opened.failure, problems });
}

/** A problem whose value is such a word says so. */
function withWord(problem: FileProblem, raw: unknown): FileProblem {
  const value = problem.path.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at !== null ? Reflect.get(at, key) : undefined),
    raw,
  );
  return typeof value === 'string' && /^-?(NaN|Infinity)$/.test(value)
    ? { ...problem, detail: value }
    : problem;
}

/** As `openSite`, for a value that is already parsed (from the device's own storage). */
export function openSiteValue(raw: unknown): Opened {
  if (typeof raw !== 'object' || raw === null || !('format' in raw) || raw.format !== SITE_FORMAT) {
    return refuse({ code: 'not-a-site' });
  }
  const version = 'version' in raw ? raw.version : undefined;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse({
      code: 'invalid',
      problems: [{ code: 'wrong-value', path: ['version'], detail: String(version) }],
      more: 0,
    });
  }
  if (version > SITE_VERSION) return refuse({ code: 'newer-version', version, known: SITE_VERSION });
  const migrated = migrate(raw as Record<string, unknown>, version); // an object, by the check above
  const parsed = siteSchema.safeParse(migrated, { reportInput: true });
  if (!parsed.success) {
    const problems = parsed.error.issues.flatMap(fileProblems);
    return refuse({
      code: 'invalid',
      problems: problems.slice(0, MOST_LISTED),
      more: Math.max(0, problems.length - MOST_LISTED),
    });
  }
  const broken = integrityProblems(parsed.data);
  if (broken.length > 0) {
    const problems = broken.map((p) => ({ code: p.code, path: p.path, detail: p.name }));
    return refuse({
      code: 'invalid',
      problems: problems.slice(0, MOST_LISTED),
      more: Math.max(0, problems.length - MOST_LISTED),
    });
  }
  return { ok: true, site: parsed.data, migratedFrom: version === SITE_VERSION ? null : version };
}

/** The text of a site file, indented so that people and version control can read it. */
export function writeSite(site: Site): string {
  return `${JSON.stringify(site, null, 2)}\n`;
}

function refuse(failure: OpenFailure): Opened {
  return { ok: false, failure };
}

function migrate(raw: Record<string, unknown>, from: number): unknown {
  let current: Record<string, unknown> = raw;
  for (let version = from; version < SITE_VERSION; version++) {
    const step: Migration | undefined = migrations[version];
    if (step === undefined) throw new Error(`no migration from version ${version}`);
    current = step(current);
  }
  return current;
}

/** Engines tell either the position of the fault or an excerpt around it. */
export function notJson(text: string, error: unknown): Extract<OpenFailure, { code: 'not-json' }> {
  const message = error instanceof Error ? error.message : '';
  const found = /position (\d+)/.exec(message);
  const position = found === null ? null : Number(found[1]);
  const near =
    position === null
      ? (/, (?:\.{3})?"(.*)"(?:\.{3})? is not valid JSON$/s.exec(message)?.[1] ?? '')
      : text.slice(Math.max(0, position - 20), position + 20);
  return { code: 'not-json', position, near };
}

/** The places that an issue of the validator is about. */
export function fileProblems(issue: z.core.$ZodIssue): FileProblem[] {
  const path = issue.path.map((key) => (typeof key === 'symbol' ? String(key) : key));
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({ code: 'unknown-field', path: [...path, key], detail: key }));
  }
  const missing = issue.input === undefined; // JSON has no undefined: nothing stood there
  return [{ code: missing ? 'missing' : 'wrong-value', path, detail: issue.message }];
}
