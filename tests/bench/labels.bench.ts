// Run: npx tsx tests/bench/labels.bench.ts
// A crowded drawing at 1:100: from labels and obstacles to places. Median of RUNS after a warm-up.
import { type Label, type Obstacle, placeLabels } from '../../packages/drawing/src/index';
import { seededRandom } from '../random/seeded';
import { quantile, tell } from './figures';
import { ranOn, timesOf } from './timing';

const LABELS = 2000;
const OBSTACLES = 1600;
/** Side of the square that they lie in, metres. */
const SIDE_M = 80;
const MM_PER_METRE = 10;
const RUNS = 25;
const WARM_UP = 10;
/** Milliseconds: placing follows a change of scale, it need not keep up with one. */
const TARGET_MS = 80;
/** So many must have found a place, or the figure says nothing. */
const LEAST_PLACED = 1500;

const next = seededRandom(2026);
const place = () => ({ x: next() * SIDE_M, y: next() * SIDE_M });

const labels = Array.from({ length: LABELS }, (_, i): Label => {
  const inLine = i % 5 === 0;
  return {
    id: `l${i}`,
    text: `${i} a name`
      .padEnd(28, ' of a thing that lies in the yard')
      .slice(0, 14 + Math.floor(next() * 14)),
    at: place(),
    height: 2.2,
    ink: 'ink',
    weight: 'regular',
    priority: Math.floor(next() * 10),
    seat: inLine ? 'along' : 'around',
    ...(inLine ? { along: { azimuth: next() * 6, span: 4 } } : {}),
    clear: inLine ? 0 : 1,
    whenCrowded: 'leader',
  };
});

const obstacles = Array.from({ length: OBSTACLES }, (_, i): Obstacle => {
  const at = place();
  if (i % 2 === 0) return { kind: 'disc', at, radiusMm: 2 };
  return { kind: 'stroke', from: at, to: { x: at.x + next() * 8 - 4, y: at.y + next() * 8 - 4 } };
});

const measureText = (text: string, height: number) => 0.75 * height * text.length;
let placed = 0;
const times = timesOf(RUNS, WARM_UP, () => {
  placed = placeLabels(labels, obstacles, { mmPerMetre: MM_PER_METRE, measureText }).length;
  return placed;
});
const median = quantile(times, 0.5);
console.log(`${LABELS} labels on ${SIDE_M} m at 1:${1000 / MM_PER_METRE}, ${ranOn()}`);
const fast = tell({
  name: `${LABELS.toLocaleString('en-US')} labels find their places`,
  value: median,
  unit: 'ms',
  goal: { under: TARGET_MS },
  ratio: null,
});
const many = tell({
  name: `of ${LABELS.toLocaleString('en-US')} labels are placed`,
  value: placed,
  unit: '',
  goal: { atLeast: LEAST_PLACED },
  ratio: null,
});
process.exitCode = fast && many ? 0 : 1;
