// Run: pnpm truth:routes
// Compares the best route found with what an exhaustive search on a fine grid finds, on small invented sites.
import { writeFileSync } from 'node:fs';
import { checkRoute, findRoutes } from '@footmark/route';
import { measuredCost } from './measuredCost';
import { randomRequest } from './randomRequest';
import { shortestWay } from './shortestWay';
import { slowSearch } from './slowSearch';

const SITES = 100;
const STEP = 0.1;
/** One in so many may take four bends; the others three. */
const FOUR_BENDS = 10;

type Compared = {
  readonly seed: number;
  readonly obstacles: number;
  readonly bends: number;
  readonly bound: number;
  readonly found: { readonly cost: number; readonly developed: number } | null;
  readonly slow: { readonly cost: number; readonly developed: number } | null;
  readonly broken: boolean;
};

/** Null for a site on which neither finds a route. */
function compare(seed: number): Compared | null {
  const obstacles = 2 + (seed % 4);
  const mostBends = seed % FOUR_BENDS === 0 ? 4 : 3;
  const request = randomRequest(seed, { obstacles, mostBends });
  const answer = findRoutes(request);
  const routes = answer.is === 'found' ? answer.routes : [];
  const slow = slowSearch(request, { mostBends, step: STEP });
  if (slow !== null && checkRoute(request, slow.route).length > 0)
    throw new Error(`seed ${seed}: the slow search is wrong`);
  const [best] = routes;
  if (best === undefined && slow === null) return null;
  const bound = shortestWay(request) ?? 0;
  const found = best === undefined ? null : measuredCost(request, best);
  const broken =
    found === null ||
    routes.some((r) => checkRoute(request, r).length > 0 || measuredCost(request, r).developed < bound);
  return { seed, obstacles, bends: mostBends, bound, found, slow, broken };
}

const ratioOf = ({ found, slow }: Compared) =>
  found === null ? null : found.cost / Math.min(found.cost, slow?.cost ?? Infinity);
const metres = (length: number | undefined) => length?.toFixed(3) ?? 'none';

function rowOf(c: Compared): string {
  const cells = [
    c.seed,
    c.obstacles,
    c.bends,
    metres(c.bound),
    metres(c.found?.developed),
    metres(c.slow?.developed),
    metres(c.found?.cost),
    metres(c.slow?.cost),
    ratioOf(c)?.toFixed(3) ?? '',
    c.broken ? 'broken' : '',
  ];
  return `| ${cells.join(' | ')} |`;
}

const HEAD = [
  '| seed | obstacles | most bends | bound | length found | length slow | cost found | cost slow | ratio | |',
  '| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |',
];
const started = performance.now();
const compared: Compared[] = [];
let barred = 0;
console.log(HEAD.join('\n'));
for (let seed = 1; compared.length < SITES; seed++) {
  const one = compare(seed);
  if (one === null) {
    barred += 1;
    continue;
  }
  compared.push(one);
  console.log(rowOf(one));
}
const seconds = (performance.now() - started) / 1000;

const ratios = compared.map(ratioOf).filter((r) => r !== null);
const mean = ratios.reduce((sum, r) => sum + r, 0) / ratios.length;
const broken = compared.filter((c) => c.broken).length;
const last = `routes ${compared.length}, broken ${broken}, worst ${Math.max(...ratios).toFixed(3)}, mean ${mean.toFixed(3)}`;
const table = [
  '# Truth of routes',
  '',
  `Made by \`pnpm truth:routes\`: ${SITES} invented sites (${barred} more have no way through for either search). The slow search tries every`,
  `sequence of bends with its straights on a grid of ${STEP} m, then moves the best of each sequence until it gets no cheaper.`,
  '',
  'Lengths along the centre line, and costs (length, bends and ground that costs) in metres. Bound: the shortest way with no bends asked.',
  'Ratio: the cost of the route found to the lower of both. Broken: no route where there is one, a fault, or shorter than the bound.',
  '',
  ...HEAD,
  ...compared.map(rowOf),
  '',
  last,
  '',
];
writeFileSync(new URL('./truth.md', import.meta.url), table.join('\n'));
console.log(
  table
    .slice(8)
    .filter((line) => line.startsWith('|'))
    .join('\n'),
);
console.log(`took ${seconds.toFixed(0)} s, node ${process.version}`);
console.log(last);
