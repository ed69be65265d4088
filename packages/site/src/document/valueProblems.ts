import type { z } from 'zod';
import { asFound } from './asFound';
import { feature } from './feature';
import { path as pipe } from './path';
import { run } from './run';
import { MOST_IN_SITE, type Site, site as siteSchema } from './site';
import { underlay } from './underlay';
import { pair, visit } from './visit';

type FilePath = readonly (string | number)[];

/**
 * A value that a site file has no room for; `path` leads to it. A number is to be at most or at least `limit`, or, where the limit itself
 * is not allowed, on this side of it; a list has `limit` items at most or at least, a text so many characters at most.
 */
export type ValueProblem =
  | {
      readonly code: 'too-great' | 'too-small';
      readonly path: FilePath;
      readonly limit: number;
      readonly inclusive: boolean;
    }
  | { readonly code: 'too-many' | 'too-few' | 'too-long'; readonly path: FilePath; readonly limit: number }
  | { readonly code: 'wrong-value'; readonly path: FilePath };

/** The lists whose things are looked at one by one. */
const lists = {
  underlays: underlay,
  features: feature,
  paths: pipe,
  runs: run,
  visits: visit,
  pairs: pair,
  different: pair,
  asFound,
};

const isListName = (name: string): name is keyof typeof lists => Object.hasOwn(lists, name);

const isSiteKey = (name: string): name is keyof Site => Object.hasOwn(siteSchema.shape, name);

/**
 * What in `after` could not be read back from its file. Facts, lists and things of lists that are the same objects as in `before` are taken
 * as sound and not looked at.
 */
export function valueProblems(before: Site, after: Site): readonly ValueProblem[] {
  return Object.keys({ ...siteSchema.shape, ...after }).flatMap((name): readonly ValueProblem[] => {
    if (!isSiteKey(name)) return [{ code: 'wrong-value', path: [name] }];
    if (before[name] === after[name]) return [];
    return isListName(name)
      ? listProblems(name, before[name], after[name])
      : problemsIn(siteSchema.shape[name], after[name], [name]);
  });
}

function listProblems(
  name: keyof typeof lists,
  before: readonly unknown[],
  after: readonly unknown[],
): readonly ValueProblem[] {
  const most = MOST_IN_SITE[name];
  const problems: ValueProblem[] =
    after.length > most ? [{ code: 'too-many', path: [name], limit: most }] : [];
  for (const { item, index } of changedItems(before, after)) {
    problems.push(...problemsIn(lists[name], item, [name, index]));
  }
  return problems;
}

function* changedItems(
  before: readonly unknown[],
  after: readonly unknown[],
): Generator<{ item: unknown; index: number }> {
  let known: ReadonlySet<unknown> | null = null; // only needed when something was put in or taken out
  for (const [index, item] of after.entries()) {
    if (item === before[index]) continue;
    known ??= new Set(before);
    if (!known.has(item)) yield { item, index };
  }
}

function problemsIn(schema: z.ZodType, value: unknown, at: FilePath): ValueProblem[] {
  const parsed = schema.safeParse(value);
  if (parsed.success) return [];
  const problems = parsed.error.issues.map((issue) => problemOf(issue, at));
  // a value is held to the general limit of its kind and to its own: what counts is the narrower, which comes last
  return problems.filter((p, i) => {
    const next = problems[i + 1];
    return next === undefined || next.code !== p.code || next.path.join() !== p.path.join();
  });
}

function problemOf(issue: z.core.$ZodIssue, at: FilePath): ValueProblem {
  const path = [...at, ...issue.path.map((key) => (typeof key === 'symbol' ? String(key) : key))];
  if (issue.code === 'too_big') {
    const limit = Number(issue.maximum);
    if (issue.origin === 'array') return { code: 'too-many', path, limit };
    if (issue.origin === 'string') return { code: 'too-long', path, limit };
    return { code: 'too-great', path, limit, inclusive: issue.inclusive ?? true };
  }
  if (issue.code === 'too_small' && issue.origin !== 'string') {
    const limit = Number(issue.minimum);
    if (issue.origin === 'array') return { code: 'too-few', path, limit };
    return { code: 'too-small', path, limit, inclusive: issue.inclusive ?? true };
  }
  return { code: 'wrong-value', path };
}
