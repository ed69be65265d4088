// `npm test`: install, a browser, every step; the last line is the one that CI reads.
import { findOrInstallBrowser } from './browser.mjs';
import { install } from './install.mjs';
import { stopWithSignals } from './run.mjs';
import { runSteps, STEP_NAMES } from './steps.mjs';
import { resultLine, tallyOfCode } from './tally.mjs';

stopWithSignals();

async function testAll() {
  const problem = await install();
  if (problem === null) return runSteps(STEP_NAMES, { extraFor: () => [], browser: findOrInstallBrowser });
  console.error(problem);
  return tallyOfCode(1);
}

const tally = await testAll();
console.log(resultLine(tally));
process.exitCode = tally.failed > 0 ? 1 : 0;
