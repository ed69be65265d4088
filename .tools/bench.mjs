// Every benchmark in turn, each in a process of its own: `node .tools/bench.mjs [part of a file's name]`.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { findBrowser } from './browser.mjs';
import { commandFile, E2E, ROOT } from './paths.mjs';
import { runNode, stopWithSignals } from './run.mjs';

stopWithSignals();
const wanted = process.argv[2] ?? '';
/** Those of computation, then those that a browser runs. */
const files = [join(ROOT, 'tests', 'bench'), join(E2E, 'bench')].flatMap((folder) =>
  (existsSync(folder) ? readdirSync(folder) : [])
    .filter((name) => name.endsWith('.bench.ts') && name.includes(wanted))
    .sort()
    .map((name) => join(folder, name)),
);

let failed = files.length === 0 ? 1 : 0;
if (files.length === 0) console.error(`No benchmark has "${wanted}" in its name.`);
for (const file of files) {
  console.log(`\n== ${file.slice(ROOT.length + 1)}`);
  const browser = file.startsWith(E2E) ? findBrowser() : null;
  const env = browser === null ? {} : { ...browser.env, FOOTMARK_BROWSER: browser.path };
  if ((await runNode(commandFile(ROOT, 'tsx', 'tsx'), [file], { cwd: ROOT, env })) !== 0) failed += 1;
}
process.exitCode = failed > 0 ? 1 : 0;
