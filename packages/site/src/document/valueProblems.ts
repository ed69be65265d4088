import type { z } from 'zod';
import { feature } from './feature';
import { path as pipe } from './path';
import { run } from './run';
import { MOST_IN_SITE, type Site, site as siteSchema } from './site';
import { underlay } from './underlay';

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

const lists = { underlays: underlay, features: feature, paths: pipe, runs: run };

const listNames = ['underlays', 'features', 'paths', 'runs'] as const;

/**
 * What in `after` could not be read back from its file. Things, pipes, runs and pictures that are the same objects as in `before` are
 * taken as sound and not looked at.
 */
export function valueProblems(before: Site, after: Site): readonly ValueProblem[] {
  const { fit, ...rest } = after;
  const fitToCheck = fit === undefined || fit === before.fit ? {} : { fit };
  const withoutLists = { ...rest, ...fitToCheck, underlays: [], features: [], paths: [], runs: [] };
  const problems = problemsIn(siteSchema, withoutLists, []);
  for (const name of listNames) {
    if (before[name] === after[name]) continue;
    if (after[name].length > MOST_IN_SITE[name]) {
      problems.push({ code: 'too-many', path: [name], limit: MOST_IN_SITE[name] });
    }
    for (const { item, index } of changedItems(before[name], after[name])) {
      problems.push(...problemsIn(lists[name], item, [name, index]));
    }
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
