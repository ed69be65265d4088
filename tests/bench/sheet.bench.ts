// Run: npx tsx tests/bench/sheet.bench.ts
// The mark-out of the sample site, from what is derived of it to the bytes of its PDF; the first sheet of a process, which is what a person waits for,
// and the median of RUNS after it.
import { sheetPdf } from '../../packages/sheet/src/index';
import { FONTS, sample, sheet, sourceOf } from '../sheet/sheets';
import { tell } from './figures';

const RUNS = 9;
/** Milliseconds of processor for the first: what it takes on a machine that does nothing else. */
const TARGET_MS = 1000;

const source = sourceOf(sample('rear-alley'));

type Taken = { readonly wall: number; readonly cpu: number; readonly bytes: number; readonly pages: number };

function timed(): Taken {
  const began = performance.now();
  const used = process.cpuUsage();
  const made = sheet(source);
  const bytes = sheetPdf(made, FONTS).length;
  const { user, system } = process.cpuUsage(used);
  return { wall: performance.now() - began, cpu: (user + system) / 1000, bytes, pages: made.pages.length };
}

const first = timed();
const later = Array.from({ length: RUNS }, () => timed().wall).sort((a, b) => a - b);
const median = later[Math.floor(RUNS / 2)] ?? 0;

console.log(
  `${first.pages} pages, ${first.bytes} bytes; the first in ${first.wall.toFixed(0)} ms on the clock`,
);
const met = tell({
  name: 'sheet of the sample site, the first: processor time',
  value: first.cpu,
  unit: 'ms',
  goal: { under: TARGET_MS },
  ratio: { to: `the median of ${RUNS} more, by the clock`, times: first.cpu / median },
});
process.exitCode = met ? 0 : 1;
