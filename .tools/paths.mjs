// Where things are, from the place of this file.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));
export const APP = join(ROOT, 'app');
export const DIST = join(APP, 'dist');
export const E2E = join(ROOT, 'e2e');
/** Reports and a browser of last resort; not in git, gone with node_modules. */
export const CACHE = join(ROOT, 'node_modules', '.cache', 'footmark');

/** @param {string} file @returns {any} */
export function readJson(file) {
  return JSON.parse(readFileSync(file, 'utf8'));
}

/**
 * The script behind a command of an installed package, to be run with this Node: no shell and no `.cmd` file in between.
 * Throws with words for people when the package is not installed there.
 *
 * @param {string} folder the workspace folder whose node_modules has the package
 * @param {string} name the package
 * @param {string} command the name of its command
 */
export function commandFile(folder, name, command) {
  const home = join(folder, 'node_modules', name);
  const manifest = join(home, 'package.json');
  if (!existsSync(manifest))
    throw new Error(`${name} is not installed in ${folder}: run "npm test" once, or "pnpm install".`);
  const { bin } = readJson(manifest);
  const file = typeof bin === 'string' ? bin : bin?.[command];
  if (!file) throw new Error(`${name} has no command "${command}".`);
  return join(home, file);
}
