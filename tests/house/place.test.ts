import { describe, expect, it } from 'vitest';
import { HAS_GIT, readText, trackedFiles } from './repository';

/** What the top level may hold besides dot files. */
const TOP = new Set([
  'app',
  'packages',
  'e2e',
  'tests',
  'README.md',
  'DEVELOPERS.md',
  'package.json',
  'pnpm-workspace.yaml',
  'pnpm-lock.yaml',
  'tsconfig.base.json',
]);

/** Lines; above this a source file has more than one subject, or a reason below. */
const LONGEST = 350;

/** Longer files and why they are in one piece. */
const LONG_FOR_A_REASON: Readonly<Record<string, string>> = {};

function strangersAtTop(paths: readonly string[]): readonly string[] {
  const names = new Set(paths.map((path) => path.split('/')[0] ?? path));
  return [...names].filter((name) => !name.startsWith('.') && !TOP.has(name));
}

const isSource = (path: string) => /^(?:packages\/[^/]+|app)\/src\//.test(path) && !path.endsWith('.json');
const linesOf = (text: string) => text.split('\n').length - (text.endsWith('\n') ? 1 : 0);

/** Paths of source files that are too long; a NUL byte marks a font or a picture, which has no lines. */
function tooLong(files: Readonly<Record<string, string>>): readonly string[] {
  return Object.entries(files)
    .filter(([path, text]) => isSource(path) && !text.includes('\0') && linesOf(text) > LONGEST)
    .map(([path]) => path);
}

describe.skipIf(!HAS_GIT)('the repository', () => {
  const tracked = HAS_GIT ? trackedFiles() : [];
  const sources = Object.fromEntries(tracked.filter(isSource).map((path) => [path, readText(path)]));

  it('is read at all', () => {
    expect(tracked).toContain('package.json');
    expect(Object.keys(sources).length).toBeGreaterThan(0);
  });

  it('has nothing unknown at its top', () => {
    expect(strangersAtTop(tracked)).toEqual([]);
  });

  it(`has no source file of more than ${LONGEST} lines without a reason`, () => {
    expect(tooLong(sources).filter((path) => LONG_FOR_A_REASON[path] === undefined)).toEqual([]);
  });

  it('excuses no file that is gone or has become short', () => {
    const long = new Set(tooLong(sources));
    expect(Object.keys(LONG_FOR_A_REASON).filter((path) => !long.has(path))).toEqual([]);
  });
});

describe('what these checks find', () => {
  it('a stranger at the top', () => {
    expect(strangersAtTop(['.npmrc', '.ci/run', 'app/a.ts', 'scripts/a.sh', 'notes.md'])).toEqual([
      'scripts',
      'notes.md',
    ]);
  });

  it('a file of one line too many', () => {
    const lines = (count: number) => 'x\n'.repeat(count);
    const files = {
      'packages/site/src/a.ts': lines(LONGEST),
      'packages/site/src/b.ts': lines(LONGEST + 1),
      'app/src/deep/c.css': `${lines(LONGEST)}x`,
      'app/src/font.woff2': `\0${lines(LONGEST + 1)}`,
      'tests/house/d.ts': lines(LONGEST + 1),
    };
    expect(tooLong(files)).toEqual(['packages/site/src/b.ts', 'app/src/deep/c.css']);
  });
});
