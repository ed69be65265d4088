// Run: pnpm fuzz [all | reader [number]] [--inputs N] [--seed N]. Mutated files and links before every reader of them; with `all`, also what is
// pasted, sent back by a crew or written by another device. A reader and a number say what one input, found before, comes to.
import { cpus, loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import { fuzzReader } from './fuzzReader';
import { otherReaders, readersOfFiles } from './readers/names';
import type { Tally } from './tally';

const SEED = 20_261_126;
const INPUTS = 10_000;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { inputs: { type: 'string' }, seed: { type: 'string' } },
});
const [wanted, number] = positionals;
const seed = Number(values.seed ?? SEED);
const inputs = number === undefined ? Number(values.inputs ?? INPUTS) : 1;
const all = [...readersOfFiles, ...otherReaders];
const files =
  wanted === undefined ? readersOfFiles : all.filter((file) => wanted === 'all' || file === wanted);
if (files.length === 0) throw new Error(`no reader ${wanted}: ${all.join(', ')}`);

const started = performance.now();
const secondsFrom = (from: number) => ((performance.now() - from) / 1000).toFixed(0);
const MOST_TOLD = 20;

const load = () => loadavg()[0]?.toFixed(1) ?? '?';
console.log(
  `seed ${seed}, ${inputs} inputs for each of ${files.length} readers; ${cpus().length} cores, load ${load()}`,
);
const sum = { inputs: 0, crashes: 0, hangs: 0, partial: 0 };
for (const file of files) {
  const from = performance.now();
  let [told, faults] = [0, 0];
  const tally: Tally = await fuzzReader({
    module: new URL(`./readers/${file}.ts`, import.meta.url),
    seed,
    from: Number(number ?? 0),
    inputs,
    onFault: (fault) => {
      faults += 1;
      if (faults <= MOST_TOLD) console.log(`${file} ${fault.number}: ${fault.is}: ${fault.why}`);
    },
    onProgress: (done) => {
      if (done - told < inputs / 4) return;
      told = done;
      console.log(`${file}: ${done} of ${inputs}, ${secondsFrom(from)} s`);
    },
  });
  if (faults > MOST_TOLD) console.log(`${file}: and ${faults - MOST_TOLD} more`);
  console.log(
    `${file}: ${tally.inputs} inputs, ${tally.accepted} accepted, ${tally.refused} refused, ` +
      `${tally.crashes} crashes, ${tally.hangs} hangs, ${tally.partial} partial; ${secondsFrom(from)} s`,
  );
  sum.inputs += tally.inputs;
  sum.crashes += tally.crashes;
  sum.hangs += tally.hangs;
  sum.partial += tally.partial;
}
console.log(`${secondsFrom(started)} s, load ${load()}, node ${process.version}`);
console.log(`inputs ${sum.inputs}, crashes ${sum.crashes}, hangs ${sum.hangs}, partial ${sum.partial}`);
process.exitCode = sum.crashes + sum.hangs + sum.partial > 0 ? 1 : 0;
