// Every benchmark in turn, each in a process of its own: `node .tools/bench.mjs [--write] [part of a file's name]`. With --write the figures go into
// the table in tests/bench/RESULTS.md.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { mergedTable } from './benchTable.mjs';
import { findBrowser } from './browser.mjs';
import { commandFile, E2E, ROOT } from './paths.mjs';
import { runNode, stopWithSignals } from './run.mjs';

stopWithSignals();
const RESULTS = join(ROOT, 'tests', 'bench', 'RESULTS.md');
const writes = process.argv.includes('--write');
const wanted = process.argv.slice(2).find((arg) => arg !== '--write') ?? '';
/** Those of computation, then those that a browser runs. */
const files = [join(ROOT, 'tests', 'bench'), join(E2E, 'bench')].flatMap((folder) =>
  (existsSync(folder) ? readdirSync(folder) : [])
    .filter((name) => name.endsWith('.bench.ts') && name.includes(wanted))
    .sort()
    .map((name) => join(folder, name)),
);

let failed = files.length === 0 ? 1 : 0;
if (files.length === 0) console.error(`No benchmark has "${wanted}" in its name.`);
const work = mkdtempSync(join(tmpdir(), 'footmark-bench-'));
const machine = `${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}`;
/** @type {import('./benchTable.mjs').BenchRun[]} */
const runs = [];
for (const file of files) {
  const bench = basename(file, '.bench.ts');
  const load = loadavg()[0] ?? 0;
  console.log(`\n== ${file.slice(ROOT.length + 1)} (load ${load.toFixed(1)})`);
  const browser = file.startsWith(E2E) ? findBrowser() : null;
  const figures = join(work, `${bench}.jsonl`);
  const env = {
    FOOTMARK_FIGURES: figures,
    ...(browser === null ? {} : { ...browser.env, FOOTMARK_BROWSER: browser.path }),
  };
  if ((await runNode(commandFile(ROOT, 'tsx', 'tsx'), [file], { cwd: ROOT, env })) !== 0) failed += 1;
  if (!existsSync(figures)) continue;
  const told = readFileSync(figures, 'utf8').trim().split('\n');
  const date = new Date().toISOString().slice(0, 10);
  runs.push({ bench, machine, date, load, figures: told.map((line) => JSON.parse(line)) });
}
rmSync(work, { recursive: true, force: true });
if (writes) {
  writeFileSync(RESULTS, mergedTable(existsSync(RESULTS) ? readFileSync(RESULTS, 'utf8') : '', runs));
  console.log(`\nThe table is in ${RESULTS.slice(ROOT.length + 1)}.`);
}
process.exitCode = failed > 0 ? 1 : 0;
