// Run: npx tsx tests/bench/locate.bench.ts
// 100,000 readings placed on a path of 1,000 vertices by locateMany, and one by one by @turf/turf `along` 7.4.0, in one run.
// Turf's plane is a sphere in degrees. Near the equator, over some tens of metres, the two agree to SAME_M.
import { locateMany, type PathLine, type Point, pathLength, pathLine } from '@footmark/geometry';
import { along, earthRadius, lineString } from '@turf/turf';
import { seededRandom } from '../random/seeded';
import { quantile, tell } from './figures';
import { ranOn, timesOf } from './timing';

const VERTICES = 1000;
const READINGS = 100_000;
/** Turf is far slower and is timed on every n-th reading, then scaled up. */
const TURF_EVERY = 200;
const RUNS = 15;
/** Least ratio of turf's time to ours. */
const TARGET_RATIO = 500;
/** Metres. Measured 7e-11: rounding of degrees summed over 1,000 legs; the sphere itself differs by less at 50 m from the equator. */
const SAME_M = 1e-8;
const PATH_LENGTH_M = 50;

const METRES_PER_DEGREE = (earthRadius * Math.PI) / 180;

/** A wandering line of equal legs, all within some tens of metres of the origin. */
function wanderingPath(next: () => number): Point[] {
  const leg = PATH_LENGTH_M / (VERTICES - 1);
  const points: Point[] = [{ x: 0, y: 0 }];
  let heading = 0;
  for (let i = 1; i < VERTICES; i++) {
    const last = points[i - 1] ?? { x: 0, y: 0 };
    heading += (next() - 0.5) * 0.4;
    points.push({ x: last.x + leg * Math.cos(heading), y: last.y + leg * Math.sin(heading) });
  }
  return points;
}

function lineOf(points: readonly Point[]): PathLine {
  const built = pathLine(points.map((point) => ({ point, bendRadius: 0 })));
  if (!built.ok) throw new Error(built.code);
  return built.value;
}

const medianMs = (runs: number, work: () => number) =>
  quantile(timesOf(runs, Math.ceil(runs / 2), work), 0.5);

const next = seededRandom(2026);
const points = wanderingPath(next);
const line = lineOf(points);
const length = pathLength(line);
const stations = Float64Array.from({ length: READINGS }, () => next() * length);
const asked = stations.filter((_, i) => i % TURF_EVERY === 0);
const degrees = lineString(points.map((p) => [p.x / METRES_PER_DEGREE, p.y / METRES_PER_DEGREE]));

const places = locateMany(line, stations);
const inTurf = (station: number): readonly number[] =>
  along(degrees, station, { units: 'meters' }).geometry.coordinates;

let apart = 0;
asked.forEach((station, i) => {
  const [lon = Number.NaN, lat = Number.NaN] = inTurf(station);
  const at = 2 * i * TURF_EVERY;
  const away = Math.hypot(
    lon * METRES_PER_DEGREE - (places[at] ?? Number.NaN),
    lat * METRES_PER_DEGREE - (places[at + 1] ?? Number.NaN),
  );
  apart = Math.max(apart, Number.isNaN(away) ? Infinity : away);
});

const into = new Float64Array(2 * READINGS);
const ours = medianMs(RUNS, () => locateMany(line, stations, into)[READINGS] ?? 0);
const theirs =
  TURF_EVERY * medianMs(5, () => asked.reduce((sum: number, station) => sum + (inTurf(station)[0] ?? 0), 0));
const ratio = theirs / ours;

const same = apart < SAME_M;
const [many, on] = [READINGS, VERTICES].map((count) => count.toLocaleString('en-US'));
tell({
  name: `${many} readings placed on a path of ${on} vertices`,
  value: ours,
  unit: 'ms',
  ratio: { to: `turf along (from ${asked.length} readings)`, times: ours / theirs },
});
const met = tell({
  name: `${many} readings placed, faster than turf along by`,
  value: ratio,
  unit: '',
  goal: { atLeast: TARGET_RATIO },
  ratio: null,
});
console.log(`places differ by ${apart.toExponential(1)} m at most (under ${SAME_M} m)`);
console.log(ranOn());
process.exitCode = same && met ? 0 : 1;
