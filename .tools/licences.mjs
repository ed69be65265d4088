// Whose work the app stands on: writes the list that the app shows, and every licence in full.

import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cleanEnvironment } from './environment.mjs';
import { APP, ROOT, readJson } from './paths.mjs';

/**
 * @typedef {Readonly<{ name: string, versions: readonly string[], paths: readonly string[], license: string, homepage?: string }>} Listed
 * @typedef {Readonly<{ name: string, version: string, licence: string }>} Credit
 */

/** What may go into the app: licences that ask for their text to go along and for nothing of ours. */
const ALLOWED = new Set([
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  '0BSD',
  'Apache-2.0',
  'OFL-1.1',
  'Unlicense',
]);

/** Run from the command line of a package, not in the app. */
const COMMANDS = new Set(['tsx', 'esbuild']);

const LIST = join(APP, 'src', 'about', 'thirdParty.json');
const TEXTS = join(APP, 'public', 'third-party.txt');

/** @returns {readonly Listed[]} */
function listed() {
  const { packageManager } = readJson(join(ROOT, 'package.json'));
  const args = ['--yes', packageManager, 'licenses', 'list', '--prod', '--json'];
  const shell = process.platform === 'win32';
  const text = execFileSync('npx', args, { cwd: ROOT, env: cleanEnvironment(), encoding: 'utf8', shell });
  return Object.values(/** @type {Record<string, Listed[]>} */ (JSON.parse(text)))
    .flat()
    .filter(({ name }) => !COMMANDS.has(name) && !name.startsWith('@esbuild/'))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** The licence file of a package, or a line that says where the package has it. @param {Listed} of */
function licenceText({ paths, license, homepage }) {
  const [home = ''] = paths;
  const file = existsSync(home)
    ? readdirSync(home).find((name) => /^(un)?licen[cs]e/i.test(name))
    : undefined;
  if (file !== undefined) return readFileSync(join(home, file), 'utf8').trim();
  return `${license}. The package brings no licence file${homepage ? `; see ${homepage}` : ''}.`;
}

const packages = listed();
const refused = packages.filter(({ license }) => !ALLOWED.has(license));
for (const { name, license } of refused)
  console.error(`${name} is under ${license}, which is not among those allowed.`);

/** @type {readonly Credit[]} */
const credits = packages.flatMap(({ name, versions, license }) =>
  versions.map((version) => ({ name, version, licence: license })),
);
writeFileSync(LIST, `${JSON.stringify(credits, null, 2)}\n`);
/** Packages by the text that they share. @type {Map<string, string[]>} */
const byText = new Map();
for (const each of packages) {
  const text = licenceText(each);
  byText.set(text, [
    ...(byText.get(text) ?? []),
    ...each.versions.map((version) => `${each.name} ${version}`),
  ]);
}
const rule = '-'.repeat(72);
const texts = [...byText].map(([text, names]) => `${names.join('\n')}\n${rule}\n${text}\n`);
writeFileSync(TEXTS, `Footmark stands on the work of others. Their licences:\n\n${texts.join('\n\n')}`);
for (const { name, version, licence } of credits) console.log(`${licence.padEnd(14)} ${name} ${version}`);
process.exitCode = refused.length > 0 ? 1 : 0;
