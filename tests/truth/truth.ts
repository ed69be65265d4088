// Run: pnpm truth
// Simulates yards whose truth is known and says how often a zone held the true point and a blunder was named first.
import { writeFileSync } from 'node:fs';
import { measureTruth } from './measure';

const SITES = 2000;
const SEED = 20_260_101;

const started = performance.now();
const { sites, held, drawn, taken, blunders } = measureTruth(SITES, SEED);
const seconds = (performance.now() - started) / 1000;
const share = (part: number, of: number, digits: number) => `${((100 * part) / of).toFixed(digits)} %`;

const rows = [
  ['one mark of each site, fit taken', String(sites), share(held, sites, 1), ''],
  [
    'all marks, as drawn',
    String(drawn.marks),
    share(drawn.held, drawn.marks, 1),
    `${drawn.meanSize.toFixed(2)} m`,
  ],
  [
    'all marks, fit taken',
    String(taken.marks),
    share(taken.held, taken.marks, 1),
    `${taken.meanSize.toFixed(2)} m`,
  ],
];
const table = [
  '# Truth',
  '',
  `Made by \`pnpm truth\`: ${SITES} simulated sites, seed ${SEED}. Errors are drawn from the distributions of the program's own table.`,
  '',
  '| zones of | marks | hold the true point | mean radius |',
  '| --- | --- | --- | --- |',
  ...rows.map((row) => `| ${row.join(' | ')} |`),
  '',
  `Blunders: ${blunders.injected} injected into ${blunders.sites} sites (3 % of counts, locates, pairs and points seen), 3 to 20 of their own deviations.`,
  '',
  '| of the worst blunder of each site | sites | named first |',
  '| --- | --- | --- |',
  `| bound to raise a standardised residual over 5 | ${blunders.large} | ${share(blunders.named, blunders.large, 1)} |`,
  `| over 5 of its own deviations, seen by a check or not | ${blunders.largeOfOwn} | ${share(blunders.namedOfOwn, blunders.largeOfOwn, 1)} |`,
  '',
  'The second row is lower because most blunders of the counter are a few inches in a reading that nothing else was measured to:',
  'no method can see them, and the zone has room for them.',
  '',
];
writeFileSync(new URL('./truth.md', import.meta.url), table.join('\n'));
console.log(rows.map((row) => row.join('  ')).join('\n'));
console.log(`${blunders.injected} blunders injected; took ${seconds.toFixed(0)} s, node ${process.version}`);
console.log(
  `zone holds ${share(held, sites, 1)} of ${sites}, blunders named first ${share(blunders.named, blunders.large, 0)}`,
);
