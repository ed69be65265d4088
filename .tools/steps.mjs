// The steps of a check, in their order.
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { audit } from './audit.mjs';
import { NO_BROWSER } from './browser.mjs';
import { APP, CACHE, commandFile, DIST, E2E, ROOT, readJson } from './paths.mjs';
import { runNode } from './run.mjs';
import { printSizes } from './sizes.mjs';
import { resultLine, sum, tallyOfCode, tallyOfPlaywright, tallyOfVitest } from './tally.mjs';

/**
 * @typedef {import('./tally.mjs').Tally} Tally
 * @typedef {import('./browser.mjs').Browser} Browser
 * @typedef {{ extraFor: (step: string) => readonly string[], browser: () => Promise<Browser | null> }} Context
 */

const VITEST_REPORT = join(CACHE, 'vitest.json');
const PLAYWRIGHT_REPORT = join(CACHE, 'playwright.json');

/** @param {string} file */
function reportAt(file) {
  try {
    return readJson(file);
  } catch {
    return null;
  }
}

/** A tool of the root's node_modules. @param {string} name @param {string} command @param {readonly string[]} args */
function tool(name, command, args) {
  return runNode(commandFile(ROOT, name, command), args, { cwd: ROOT });
}

/** Every folder with a TypeScript project, packages first. */
function projects() {
  const packages = readdirSync(join(ROOT, 'packages')).map((name) => join('packages', name));
  return [...packages, 'app', 'tests', 'e2e', '.tools'].filter((at) =>
    existsSync(join(ROOT, at, 'tsconfig.json')),
  );
}

/** @param {Context} context @returns {Promise<Tally>} */
async function unit({ extraFor }) {
  rmSync(VITEST_REPORT, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${VITEST_REPORT}`];
  const config = ['--config', 'tests/vitest.config.ts', '--allowOnly=false'];
  const code = await tool('vitest', 'vitest', ['run', ...config, ...reporters, ...extraFor('unit')]);
  return tallyOfVitest(reportAt(VITEST_REPORT), code);
}

async function build() {
  rmSync(DIST, { recursive: true, force: true });
  const code = await runNode(commandFile(APP, 'vite', 'vite'), ['build'], { cwd: APP });
  return tallyOfCode(code === 0 && !existsSync(join(DIST, 'index.html')) ? 1 : code);
}

/** @param {Context} context @returns {Promise<Tally>} */
async function e2e({ extraFor, browser }) {
  if (!existsSync(join(DIST, 'index.html')))
    throw new Error('There is no built app to test in app/dist: the build comes first.');
  const found = await browser();
  if (found === null) throw new Error(NO_BROWSER);
  rmSync(PLAYWRIGHT_REPORT, { force: true });
  const args = ['test', '--reporter=list,json', '--forbid-only', ...extraFor('e2e')];
  const code = await runNode(commandFile(E2E, '@playwright/test', 'playwright'), args, {
    cwd: E2E,
    env: { ...found.env, FOOTMARK_BROWSER: found.path, PLAYWRIGHT_JSON_OUTPUT_FILE: PLAYWRIGHT_REPORT },
  });
  return tallyOfPlaywright(reportAt(PLAYWRIGHT_REPORT), code);
}

/** @type {Readonly<Record<string, (context: Context) => Promise<Tally>>>} */
const STEPS = {
  lint: async ({ extraFor }) =>
    tallyOfCode(await tool('@biomejs/biome', 'biome', ['check', '.', ...extraFor('lint')])),
  types: async ({ extraFor }) =>
    tallyOfCode(await tool('typescript', 'tsc', ['-b', ...projects(), ...extraFor('types')])),
  knip: async ({ extraFor }) => tallyOfCode(await tool('knip', 'knip', extraFor('knip'))),
  audit: async () => tallyOfCode(audit() ? 0 : 1),
  unit,
  build,
  sizes: async () => tallyOfCode(printSizes() ? 0 : 1),
  e2e,
};

export const STEP_NAMES = Object.keys(STEPS);

/**
 * Runs the named steps in their order. A failed one does not stop those after it.
 *
 * @param {readonly string[]} names
 * @param {Context} context
 * @returns {Promise<Tally>}
 */
export async function runSteps(names, context) {
  /** @type {{ name: string, tally: Tally, seconds: number }[]} */
  const done = [];
  for (const name of STEP_NAMES.filter((each) => names.includes(each))) {
    console.log(`\n== ${name}`);
    const from = performance.now();
    /** @type {Tally} */
    let tally = tallyOfCode(1);
    try {
      tally = (await STEPS[name]?.(context)) ?? tally;
    } catch (error) {
      console.error(error instanceof Error ? error.message : String(error));
    }
    done.push({ name, tally, seconds: (performance.now() - from) / 1000 });
  }
  console.log('');
  for (const { name, tally, seconds } of done)
    console.log(`${name.padEnd(6)} ${seconds.toFixed(1).padStart(6)} s  ${resultLine(tally)}`);
  return sum(done.map(({ tally }) => tally));
}
