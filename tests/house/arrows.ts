import { builtinModules } from 'node:module';
import { posix } from 'node:path';
import { findCycles } from './cycles';
import { mask, specifiersOf } from './specifiers';

/** Who may import whom; `app` may import every package. A package that is not named here is a breach by itself. */
export const ARROWS: Readonly<Record<string, readonly string[]>> = {
  adjust: [],
  geometry: [],
  route: ['geometry'],
  site: ['adjust', 'geometry'],
  grid: ['geometry', 'site'],
  merge: ['site'],
  team: ['merge', 'site'],
  dig: ['geometry', 'site'],
  reroute: ['dig', 'geometry', 'route', 'site'],
  words: ['dig', 'grid', 'link', 'reroute', 'route', 'site'],
  drawing: ['dig', 'geometry', 'site', 'words'],
  exchange: ['dig', 'drawing', 'geometry', 'grid', 'site', 'words'],
  link: ['site'],
  sheet: ['dig', 'drawing', 'geometry', 'reroute', 'site', 'words'],
  report: ['exchange', 'geometry', 'site', 'words'],
};

/** Runs on Node, from a command line; every other package runs anywhere. */
const ON_NODE = new Set(['report']);

/** Libraries that are wrapped once: all use of them passes through one file of ours. */
/** The folder of a package that may be read past its index: data, not code. */
const DATA_DOOR = 'samples';

const WRAPPED_ONCE = ['@turf', 'proj4'];

export type Rule =
  | 'arrow'
  | 'unknown package'
  | 'out of the package'
  | 'inside of another package'
  | 'node'
  | 'own index'
  | 'export star'
  | 'default export'
  | 'computed import'
  | 'wrapped once'
  | 'cycle';

export type Breach = Readonly<{ rule: Rule; at: string; what: string }>;

/** Source text by its path from the top of the repository, with `/`. */
export type Sources = Readonly<Record<string, string>>;

type Owner = Readonly<{ name: string; folder: string; index: string }>;

function ownerOf(path: string): Owner | null {
  if (path.startsWith('app/src/')) return { name: 'app', folder: 'app/', index: 'app/src/index' };
  const name = /^packages\/([^/]+)\/src\//.exec(path)?.[1];
  if (name === undefined) return null;
  return { name, folder: `packages/${name}/`, index: `packages/${name}/src/index` };
}

const isTest = (path: string) => /\.test\.tsx?$/.test(path);
const isRelative = (from: string) => /^\.{0,2}(\/|$)/.test(from);
const isOf = (library: string, from: string) => from === library || from.startsWith(`${library}/`);
const isNode = (from: string) => from.startsWith('node:') || builtinModules.includes(from);

/** The path that a relative specifier means, without Vite's `?worker` and the like and without an extension of code. */
function targetOf(path: string, from: string): string {
  const plain = from.replace(/\?.*$/, '').replace(/\.(?:[cm]?[jt]s|[jt]sx)$/, '');
  return posix.join(posix.dirname(path), plain).replace(/\/$/, '');
}

function isOwnIndex(owner: Owner, target: string): boolean {
  return target === owner.index || target === posix.dirname(owner.index);
}

function relativeBreach(owner: Owner, path: string, from: string): Rule | null {
  const target = targetOf(path, from);
  if (from.startsWith('/') || !`${target}/`.startsWith(owner.folder)) return 'out of the package';
  return isOwnIndex(owner, target) ? 'own index' : null;
}

function ownBreach(owner: Owner, from: string): Rule | null {
  const [name = '', ...inside] = from.slice('@footmark/'.length).split('/');
  if (name === owner.name) return 'own index';
  if (inside.length > 0 && inside[0] !== DATA_DOOR) return 'inside of another package';
  if (ARROWS[name] === undefined) return name === 'app' ? 'arrow' : 'unknown package';
  if (owner.name === 'app' || ARROWS[owner.name]?.includes(name)) return null;
  return 'arrow';
}

function importBreach(owner: Owner, path: string, from: string): Rule | null {
  if (isRelative(from)) return relativeBreach(owner, path, from);
  if (from.startsWith('@footmark/')) return ownBreach(owner, from);
  return isNode(from) && !ON_NODE.has(owner.name) && owner.name !== 'app' ? 'node' : null;
}

/** Forms of code that a package does not use, whatever they import; matched on masked text. */
const FORMS: readonly Readonly<{ rule: Rule; form: RegExp }>[] = [
  { rule: 'export star', form: /(?<![.\w$])export\s+(?:type\s+)?\*/ },
  { rule: 'default export', form: /(?<![.\w$])export\s+default\b/ },
  { rule: 'default export', form: /(?<![.\w$])export\s*\{[^}]*\bas\s+default\b[^}]*\}/ },
  { rule: 'computed import', form: /(?<![.\w$])import\s*\(\s*(?!"#)/ },
];

function formBreaches(owner: Owner, path: string, code: string): readonly Breach[] {
  if (owner.name === 'app') return [];
  return FORMS.flatMap(({ rule, form }) => {
    const found = form.exec(code);
    if (found === null) return [];
    return [{ rule, at: `${path}:${code.slice(0, found.index).split('\n').length}`, what: found[0] }];
  });
}

/** The path of the source file that a relative specifier reaches, or null: a style sheet, a picture, nothing. */
function reached(sources: Sources, path: string, from: string): string | null {
  const target = targetOf(path, from);
  const ways = [`${target}.ts`, `${target}.tsx`, `${target}/index.ts`, `${target}/index.tsx`];
  return ways.find((way) => sources[way] !== undefined) ?? null;
}

/**
 * Every breach of the house's rules by the sources under packages/NAME/src and app/src; other paths are passed over, and so are
 * unit tests (NAME.test.ts), which may import anything of ours. Type imports count like all others.
 */
export function breachesOf(sources: Sources): readonly Breach[] {
  const breaches: Breach[] = [];
  const graph = new Map<string, string[]>();
  const users = new Map<string, string[]>(WRAPPED_ONCE.map((library) => [library, []]));
  const unknown = new Set<string>();

  for (const [path, text] of Object.entries(sources)) {
    const owner = ownerOf(path);
    if (owner === null || isTest(path)) continue;
    if (owner.name !== 'app' && ARROWS[owner.name] === undefined) unknown.add(owner.name);
    const masked = mask(text);
    breaches.push(...formBreaches(owner, path, masked.code));
    const specifiers = specifiersOf(masked);
    for (const { from, line } of specifiers) {
      const rule = importBreach(owner, path, from);
      if (rule !== null) breaches.push({ rule, at: `${path}:${line}`, what: from });
    }
    for (const [library, files] of users)
      if (specifiers.some(({ from }) => isOf(library, from))) files.push(path);
    const next = specifiers
      .filter(({ from }) => isRelative(from))
      .map(({ from }) => reached(sources, path, from));
    graph.set(
      path,
      next.filter((way) => way !== null),
    );
  }

  for (const name of unknown)
    breaches.push({ rule: 'unknown package', at: `packages/${name}`, what: 'has no arrows in ARROWS' });
  for (const [library, files] of users)
    if (files.length > 1) breaches.push({ rule: 'wrapped once', at: files.join(', '), what: library });
  for (const cycle of findCycles(graph))
    breaches.push({ rule: 'cycle', at: cycle[0] ?? '', what: cycle.join(' → ') });
  return breaches;
}
