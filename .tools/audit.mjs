// Whether anything that goes into the app is known to be unsafe, as far as the registry tells.
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { cleanEnvironment } from './environment.mjs';
import { ROOT, readJson } from './paths.mjs';

/** Worse than this is not built upon. @type {ReadonlySet<string>} */
const GRAVE = new Set(['high', 'critical']);

/** @typedef {Readonly<{ severity: string, module_name?: string, title?: string, url?: string }>} Advisory */

/**
 * What an audit's answer comes to: its advisories, or null when it is none.
 * @param {string} text @returns {readonly Advisory[] | null}
 */
export function advisoriesIn(text) {
  try {
    const { advisories } = JSON.parse(text);
    return advisories !== null && typeof advisories === 'object' ? Object.values(advisories) : null;
  } catch {
    return null;
  }
}

/** @param {readonly Advisory[]} advisories */
export const graveAmong = (advisories) => advisories.filter(({ severity }) => GRAVE.has(severity));

/** The answer also comes with an exit code of its own when there are advisories. @returns {string} */
function asked() {
  const { packageManager } = readJson(join(ROOT, 'package.json'));
  try {
    return execFileSync('npx', ['--yes', packageManager, 'audit', '--prod', '--json'], {
      cwd: ROOT,
      env: cleanEnvironment(),
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
      shell: process.platform === 'win32',
      timeout: 60_000,
    });
  } catch (error) {
    return error instanceof Error && 'stdout' in error ? String(error.stdout) : '';
  }
}

/** Tells what is known. A registry that does not answer is a warning: it says nothing about the code. @returns {boolean} whether nothing grave is known */
export function audit() {
  const advisories = advisoriesIn(asked());
  if (advisories === null) {
    console.warn('Warning: the registry gave no answer about advisories; nothing was checked.');
    return true;
  }
  for (const { severity, module_name: name, title, url } of advisories)
    console.log(`${severity}: ${name}: ${title} ${url ?? ''}`);
  console.log(`${advisories.length} advisories`);
  return graveAmong(advisories).length === 0;
}
