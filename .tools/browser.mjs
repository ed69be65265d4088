// The browser for the journeys in e2e/: found, or installed when asked to.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { cleanEnvironment } from './environment.mjs';
import { CACHE } from './paths.mjs';
import { run, runNode, runNpm } from './run.mjs';

const SYSTEM = '/usr/bin/chromium';
/** Chromium as a package of the npm registry, for machines without a package manager of their own that we may use. */
const PACKAGE = '@sparticuz/chromium';
const PACKAGE_VERSION = '153.0.0';
const HOME = join(CACHE, `chromium-${PACKAGE_VERSION}`);

/**
 * A browser by path, with the environment that it needs.
 * @typedef {{ path: string, env: NodeJS.ProcessEnv }} Browser
 */

/** @param {string} path @param {NodeJS.ProcessEnv} env */
function starts(path, env) {
  try {
    execFileSync(path, ['--version'], {
      env: { ...cleanEnvironment(), ...env },
      stdio: 'ignore',
      timeout: 30_000,
    });
    return true;
  } catch {
    return false;
  }
}

/** The packaged browser with the libraries and fonts that it ships. @returns {Browser} */
function packaged() {
  const libraries = join(HOME, 'al2023', 'lib');
  const others = process.env.LD_LIBRARY_PATH;
  return {
    path: join(HOME, 'chromium'),
    env: {
      LD_LIBRARY_PATH: others ? `${libraries}:${others}` : libraries,
      FONTCONFIG_PATH: join(HOME, 'fonts'),
    },
  };
}

/**
 * The browser that is already here: FOOTMARK_BROWSER, else the system's Chromium, else the one that an earlier
 * `npm test` put into the cache. A FOOTMARK_BROWSER that does not start is an error, not a reason to look further.
 *
 * @returns {Browser | null}
 */
export function findBrowser() {
  const chosen = process.env.FOOTMARK_BROWSER;
  if (chosen) {
    if (starts(chosen, {})) return { path: chosen, env: {} };
    throw new Error(`FOOTMARK_BROWSER is ${chosen}, and that does not start.`);
  }
  if (existsSync(SYSTEM) && starts(SYSTEM, {})) return { path: SYSTEM, env: {} };
  const cached = packaged();
  return existsSync(cached.path) && starts(cached.path, cached.env) ? cached : null;
}

/** Debian's Chromium, where this process may install it. */
async function installSystem() {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
  console.log('No browser found: installing chromium with apt-get.');
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  if ((await run('apt-get', ['update'], { env })) !== 0) return;
  await run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], { env });
}

/** Chromium from the npm registry, unpacked beside its final place and then moved, so that a broken-off unpacking is not found later. */
async function installPackaged() {
  if (process.platform !== 'linux' || process.arch !== 'x64') return;
  console.log(`No browser found: installing ${PACKAGE} from the npm registry.`);
  const work = `${HOME}.part`;
  rmSync(work, { recursive: true, force: true });
  mkdirSync(work, { recursive: true });
  const args = [
    'install',
    '--prefix',
    work,
    '--no-save',
    '--ignore-scripts',
    '--no-audit',
    '--no-fund',
    '--no-update-notifier',
  ];
  const installed = await runNpm('npm', [...args, '--loglevel=error', `${PACKAGE}@${PACKAGE_VERSION}`]);
  if (installed !== 0) return;
  // The package unpacks into the temporary folder, and its libraries only where it believes to be on Amazon Linux.
  const unpack = `import(${JSON.stringify(join(work, 'node_modules', PACKAGE, 'build', 'index.js'))})
    .then((module) => module.default.executablePath())`;
  const env = { TMPDIR: work, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' };
  if ((await runNode('--input-type=module', ['--eval', unpack], { env })) !== 0) return;
  rmSync(join(work, 'node_modules'), { recursive: true, force: true });
  rmSync(HOME, { recursive: true, force: true });
  renameSync(work, HOME);
}

/** As `findBrowser`, but installs one where none is. @returns {Promise<Browser | null>} */
export async function findOrInstallBrowser() {
  const here = findBrowser();
  if (here !== null) return here;
  await installSystem();
  const fromSystem = findBrowser();
  if (fromSystem !== null) return fromSystem;
  await installPackaged();
  return findBrowser();
}

export const NO_BROWSER =
  'No browser for the end-to-end tests. Install Chromium, or set FOOTMARK_BROWSER to the path of one.';
