// Every benchmark in turn, each in a process of its own: `node .tools/bench.mjs [part of a file's name]`.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { commandFile, ROOT } from './paths.mjs';
import { runNode, stopWithSignals } from './run.mjs';

stopWithSignals();
const folder = join(ROOT, 'tests', 'bench');
const wanted = process.argv[2] ?? '';
const files = existsSync(folder)
  ? readdirSync(folder).filter((name) => name.endsWith('.bench.ts') && name.includes(wanted))
  : [];

let failed = files.length === 0 ? 1 : 0;
if (files.length === 0) console.error(`No benchmark in tests/bench has "${wanted}" in its name.`);
for (const name of files.sort()) {
  console.log(`\n== ${name}`);
  const args = [join(folder, name)];
  if ((await runNode(commandFile(ROOT, 'tsx', 'tsx'), args, { cwd: ROOT })) !== 0) failed += 1;
}
process.exitCode = failed > 0 ? 1 : 0;
