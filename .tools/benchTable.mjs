// The table of benchmarks: what the last run of each gave.

/**
 * @typedef {Readonly<{ under: number } | { atLeast: number }>} Goal
 * @typedef {Readonly<{ name: string, value: number, unit: string, goal?: Goal, ratio: Readonly<{ to: string, times: number }> | null, met: boolean }>} Figure
 * @typedef {Readonly<{ bench: string, machine: string, date: string, load: number, figures: readonly Figure[] }>} BenchRun `load`: of the last minute, before it began
 */

const HEAD = `# Benchmarks

Written by \`pnpm bench --write\`; a benchmark that was not run keeps its rows. The ratio is to something comparable, taken in the same run. The load
is how many processes wanted a processor in the minute before: over the number of cores, others were at work and the times are theirs, too.

| benchmark | what | figure | goal | | ratio | machine | date | load |
| --- | --- | --: | --: | --- | --- | --- | --- | --: |
`;

/** @param {number} value three digits that count, and no powers of ten */
function inThree(value) {
  return Number(value.toPrecision(3)).toLocaleString('en-US', { maximumFractionDigits: 6 });
}

/** @param {string} text */
const cell = (text) => text.replaceAll('|', '/').replaceAll('\n', ' ');

/** @param {BenchRun} run @param {Figure} figure */
function rowOf({ bench, machine, date, load }, { name, value, unit, goal, ratio, met }) {
  const aim =
    goal === undefined
      ? ''
      : 'under' in goal
        ? `under ${inThree(goal.under)}`
        : `${inThree(goal.atLeast)} or more`;
  const cells = [
    bench,
    name,
    `${inThree(value)} ${unit}`.trim(),
    aim,
    goal === undefined ? '' : met ? 'met' : '**missed**',
    ratio === null ? '' : `${inThree(ratio.times)} × ${ratio.to}`,
    machine,
    date,
    load.toFixed(1),
  ];
  return `| ${cells.map(cell).join(' | ')} |`;
}

/**
 * The table with the rows of these runs in place of what it had of the same benchmarks, in order of their names.
 *
 * @param {string} before the file as it was; '' for none
 * @param {readonly BenchRun[]} runs
 */
export function mergedTable(before, runs) {
  const ran = new Set(runs.map(({ bench }) => bench));
  /** @type {[string, string][]} */
  const kept = before
    .split('\n')
    .filter((line) => /^\| [a-zA-Z]/.test(line) && !line.startsWith('| benchmark |'))
    .map((line) => /** @type {[string, string]} */ ([line.split(' | ')[0]?.slice(2) ?? '', line]))
    .filter(([bench]) => !ran.has(bench));
  const rows = [
    ...kept,
    ...runs.flatMap((run) =>
      run.figures.map((figure) => /** @type {[string, string]} */ ([run.bench, rowOf(run, figure)])),
    ),
  ];
  // a stable sort: the figures of one benchmark stay in their order
  rows.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return `${HEAD}${rows.map(([, row]) => `${row}\n`).join('')}`;
}
