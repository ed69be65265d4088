// Bringing a fresh clone to the state of the lock file.
import { join } from 'node:path';
import { ROOT, readJson } from './paths.mjs';
import { runNpm } from './run.mjs';

/** Vite's floor among the Node 20 releases. */
const OLDEST_NODE = [20, 19];

/** What is wrong with the Node that runs this, or null. */
export function nodeProblem(version = process.versions.node) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [needMajor = 0, needMinor = 0] = OLDEST_NODE;
  if (major > needMajor || (major === needMajor && minor >= needMinor)) return null;
  return `Footmark needs Node ${OLDEST_NODE.join('.')} or newer; this is Node ${version}.`;
}

/**
 * Installs with the pnpm that package.json pins, from the lock and nothing else.
 *
 * @returns {Promise<string | null>} what went wrong, in words, or null
 */
export async function install() {
  const tooOld = nodeProblem();
  if (tooOld !== null) return tooOld;
  /** @type {string} */
  const pnpm = readJson(join(ROOT, 'package.json')).packageManager;
  // Without a terminal pnpm stops at the question whether it may renew a node_modules that another pnpm made.
  const args = ['--yes', pnpm, 'install', '--frozen-lockfile', '--config.confirm-modules-purge=false'];
  const env = { pnpm_config_update_notifier: 'false' };
  const code = await runNpm('npx', args, { cwd: ROOT, env });
  if (code === 0) return null;
  return `The install failed (${pnpm} ended with ${code}). The first install needs the npm registry: see the lines above.`;
}
