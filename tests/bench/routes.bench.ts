// Run: npx tsx tests/bench/routes.bench.ts
// Routes around 0, 50 and 200 invented things and on a sample site, against A* on a grid by ngraph.path 1.6.1 (ngraph.graph 20.1.2), in one run. The grid
// knows clearances and nothing of bends, headings, fittings or fall: its way is shorter than can be laid, or longer than the straight one by its eight
// directions. Times are medians of the whole answer with its alternatives, of the grid's with the making of its graph.
import { readFileSync } from 'node:fs';
import { distance, type Point } from '@footmark/geometry';
import { requestOf, usualAsk } from '@footmark/reroute';
import { findRoutes, type RouteRequest } from '@footmark/route';
import { derive, openSite } from '@footmark/site';
import createGraph from 'ngraph.graph';
import { aStar } from 'ngraph.path';
import { randomRequest } from '../route/randomRequest';
import { awayFrom } from '../route/rays';
import { quantile, tell } from './figures';
import { ranOn, timesOf } from './timing';

const RUNS = 7;
const WARM_UP = 5;
const CELL_M = 0.2;
/** Ground beside the straight way that the grid covers (m). */
const BESIDE_M = 8;

const cases: readonly (readonly [name: string, request: RouteRequest, targetMs: number])[] = [
  ['sample site', sampleRequest(), 150],
  ['50 things', randomRequest(12, { obstacles: 50, mostBends: 6 }), 1000],
  ['200 things', randomRequest(12, { obstacles: 200, mostBends: 6 }), 5000],
];

let met = true;
for (const [name, request, target] of cases) {
  const answer = findRoutes(request);
  const ours = quantile(
    timesOf(RUNS, WARM_UP - 1, () => (findRoutes(request).is === 'found' ? 1 : 0)),
    0.5,
  );
  const way = gridWay(request);
  const theirs = quantile(
    timesOf(RUNS, 0, () => gridWay(request) ?? 0),
    0.5,
  );
  const best = answer.is === 'found' ? answer.routes[0]?.cost.length : undefined;
  console.log(
    `${name}: ${answer.is === 'found' ? answer.routes.length : 0} routes, best ${best?.toFixed(2) ?? answer.is} m; ` +
      `grid of ${CELL_M} m: ${theirs.toFixed(0)} ms, ${way === null ? 'none' : `${way.toFixed(2)} m`}`,
  );
  met =
    tell({
      name: `routes, ${name}`,
      value: ours,
      unit: 'ms',
      goal: { under: target },
      ratio: { to: 'one way of A* on a grid (ngraph.path)', times: ours / theirs },
    }) && met;
}
console.log(ranOn());
process.exitCode = met ? 0 : 1;

function sampleRequest(): RouteRequest {
  const file = new URL('../../packages/site/samples/rear-alley.json', import.meta.url);
  const opened = openSite(readFileSync(file, 'utf8'));
  if (!opened.ok) throw new Error('the sample does not open');
  const derived = derive(opened.site);
  const ask = usualAsk(derived);
  const rerouting = ask === null ? null : requestOf(opened.site, derived, ask);
  if (!rerouting?.ok) throw new Error('the sample has no pipe');
  return rerouting.value.request;
}

/** Length (m) of the way over the grid; null without one. */
function gridWay(request: RouteRequest): number | null {
  const { start, ends, obstacles, diameter, freeEnds } = request;
  const [end] = ends;
  if (end === undefined) return null;
  const to = 'from' in end.at ? end.at.from : end.at;
  const left = Math.min(start.at.x, to.x) - BESIDE_M;
  const low = Math.min(start.at.y, to.y) - BESIDE_M;
  const columns = Math.ceil((Math.max(start.at.x, to.x) + BESIDE_M - left) / CELL_M);
  const rows = Math.ceil((Math.max(start.at.y, to.y) + BESIDE_M - low) / CELL_M);
  const middle = (k: number): Point => ({
    x: left + ((k % columns) + 0.5) * CELL_M,
    y: low + (Math.floor(k / columns) + 0.5) * CELL_M,
  });
  const cellOf = (p: Point) => Math.floor((p.y - low) / CELL_M) * columns + Math.floor((p.x - left) / CELL_M);
  const free = (p: Point) =>
    distance(p, start.at) < freeEnds ||
    distance(p, to) < freeEnds ||
    obstacles.every(({ shape, clearance }) => awayFrom(p.x, p.y, shape) >= clearance + diameter / 2);
  const graph = createGraph<Point>();
  for (let k = 0; k < columns * rows; k++) if (free(middle(k))) graph.addNode(k, middle(k));
  graph.forEachNode(({ id }) => {
    const k = Number(id);
    for (const step of [1, columns - 1, columns, columns + 1]) {
      const wraps = Math.abs(((k + step) % columns) - (k % columns)) > 1;
      if (!wraps && graph.hasNode(k + step) !== undefined) graph.addLink(k, k + step);
    }
  });
  const apart = (a: { data: Point }, b: { data: Point }) => distance(a.data, b.data);
  const found = aStar(graph, { distance: apart, heuristic: apart, oriented: false }).find(
    cellOf(start.at),
    cellOf(to),
  );
  if (found.length < 2) return null;
  return found.slice(1).reduce((sum, node, i) => sum + apart(found[i] ?? node, node), 0);
}
