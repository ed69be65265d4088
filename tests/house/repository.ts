import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Sources } from './arrows';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A copy without git's folder has no list of tracked files. */
export const HAS_GIT = existsSync(join(ROOT, '.git'));

/** Paths of all tracked files that are still there, from the top, with `/`. */
export function trackedFiles(): readonly string[] {
  // The checkout of a build machine may belong to another user; reading a list of names is no danger.
  const args = ['-c', 'safe.directory=*', 'ls-files', '-z'];
  const listed = execFileSync('git', args, { cwd: ROOT, encoding: 'utf8', maxBuffer: 2 ** 26 });
  return listed.split('\0').filter((path) => path !== '' && existsSync(join(ROOT, path)));
}

export const readText = (path: string) => readFileSync(join(ROOT, path), 'utf8');

/** Every .ts and .tsx file under packages/NAME/src and app/src, tracked or not. */
export function houseSources(): Sources {
  const packages = readdirSync(join(ROOT, 'packages')).map((name) => join(ROOT, 'packages', name, 'src'));
  const folders = [...packages, join(ROOT, 'app', 'src')].filter((folder) => existsSync(folder));
  const files = folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name)),
  );
  return Object.fromEntries(
    files
      .filter((file) => /\.tsx?$/.test(file))
      .map((file) => [relative(ROOT, file).split(sep).join('/'), readFileSync(file, 'utf8')]),
  );
}
