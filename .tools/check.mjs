// All that CI runs, without the install: `node .tools/check.mjs [STEP…] [arguments for the last step's tool]`.
import { findBrowser } from './browser.mjs';
import { stopWithSignals } from './run.mjs';
import { runSteps, STEP_NAMES } from './steps.mjs';
import { resultLine } from './tally.mjs';

stopWithSignals();
const args = process.argv.slice(2);
const firstExtra = args.findIndex((arg) => !STEP_NAMES.includes(arg));
const named = firstExtra < 0 ? args : args.slice(0, firstExtra);
const extra = firstExtra < 0 ? [] : args.slice(firstExtra);
const last = named.at(-1);
if (last === undefined && extra.length > 0) {
  console.error(`"${extra[0]}" is no step. Steps: ${STEP_NAMES.join(', ')}.`);
  process.exit(2);
}

const tally = await runSteps(last === undefined ? STEP_NAMES : named, {
  extraFor: (step) => (step === last ? extra : []),
  browser: async () => findBrowser(),
});
console.log(resultLine(tally));
process.exitCode = tally.failed > 0 ? 1 : 0;
