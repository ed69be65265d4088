// Run: npx tsx tests/bench/clearances.bench.ts
// All clearances of a path of 50 vertices against 10,000 features, from the derived site to the ranked list: those that are listed, and every
// one however far; and distances to every one by a plain loop over @turf/turf 7.4.0 and by jsts 2.12.1 DistanceOp, in one run. Both only measure
// between centre lines: no widths, no depths, no rules. The index of places is made once for a site, not for each path: timed by itself.
// The targets are for the list that people see: theirs has no index and measures every pair to find it, ours leaves out what lies too far off.
// Of measuring every one of the pairs, the same work for all three, the ratios are printed beside it, and there is no target for them.
// Turf's plane is a sphere in degrees; near the equator, over some hundred metres, the two agree to SAME_M.
import {
  clearancesFrom,
  type FeatureIndex,
  featureIndex,
  pathSubject,
  requiredOn,
  worstFirst,
} from '@footmark/dig';
import type { Point } from '@footmark/geometry';
import {
  type Derived,
  type DerivedPath,
  derive,
  type Feature,
  newSite,
  type Path,
  type Site,
} from '@footmark/site';
import {
  booleanPointInPolygon,
  earthRadius,
  lineIntersect,
  lineString,
  pointToLineDistance,
  polygon,
  point as turfPoint,
} from '@turf/turf';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import { seededRandom } from '../random/seeded';
import { type Figure, tell } from './figures';
import { ranOn, timesOf } from './timing';

const VERTICES = 50;
const MANY = 10_000;
const FEW = 300;
const RUNS = 600;
const WARM_UP = 600;
/** Side (m) of the square that all lies in: as crowded as the yard of derive.bench.ts. */
const SIDE_M = 283;
/** From a vertex of the path to the next (m). */
const LEG_M = 2;
/** Turf and jsts are far slower: timed on every n-th feature (of each kind alike), then scaled up. */
const TURF_EVERY = 201;
const JSTS_EVERY = 21;
const TURF_RATIO = 1000;
const JSTS_RATIO = 100;
/** Milliseconds for `FEW` features. */
const FEW_MS = 4;
/** Metres. Turf measures geodesics; the widest pair here is 250 m apart and less than 150 m from the equator. */
const SAME_M = 1e-3;

const METRES_PER_DEGREE = (earthRadius * Math.PI) / 180;
const letters = 'abcdefgh';

/** Trees, fences, services, decks and beds of five corners, evenly mixed. */
function features(count: number, next: () => number): Feature[] {
  return Array.from({ length: count }, (_, i): Feature => {
    const id = `f${i}`;
    const [x, y] = [(next() - 0.5) * SIDE_M, (next() - 0.5) * SIDE_M];
    const corner = (dx: number, dy: number, n: number) => ({
      id: letters[n] ?? 'z',
      spot: { by: 'coordinates' as const, x: x + dx, y: y + dy },
    });
    const common = { id, name: '' };
    const vertices = [corner(0, 0, 0), corner(3 + next(), 1, 1), corner(5, next(), 2)];
    switch (i % 5) {
      case 0:
        return {
          ...common,
          kind: 'tree',
          fields: { trunkDiameter: 0.2 + next() },
          vertices: vertices.slice(0, 1),
        };
      case 1:
        return { ...common, kind: 'fence', fields: {}, vertices };
      case 2:
        return { ...common, kind: 'service', fields: { diameter: 0.1 }, vertices: vertices.slice(0, 2) };
      case 3:
        return { ...common, kind: 'deck', fields: {}, vertices: [...vertices, corner(4, 3, 3)] };
      default:
        return {
          ...common,
          kind: 'patio',
          fields: {},
          vertices: [...vertices, corner(4, 3, 3), corner(1, 2, 4)],
        };
    }
  });
}

function yard(count: number): Site {
  const next = seededRandom(2026);
  const path: Path = {
    id: 'lateral',
    name: '',
    state: 'proposed',
    bendRadius: 0,
    vertices: Array.from({ length: VERTICES }, (_, i) => ({
      id: `v${i}`,
      spot: {
        by: 'coordinates' as const,
        x: LEG_M * (i - VERTICES / 2),
        y: 10 * Math.sin(i * 0.3) + 3 * next(),
      },
    })),
    stretches: [{ from: 0, material: 'plastic', diameter: 0.1016, slope: 1 / 96 }],
  };
  const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
  const empty = newSite({ id: 'yard', name: 'Yard', createdAt: '2026-01-02T03:04:05Z', units });
  return { ...empty, features: features(count, next), paths: [path] };
}

const leastMs = (runs: number, warmUp: number, work: () => number) =>
  Math.min(...timesOf(runs, warmUp, work));

function lateralOf(derived: Derived): DerivedPath {
  const lateral = derived.paths.get('lateral');
  if (lateral === undefined) throw new Error('the path has no curve');
  return lateral;
}

/** Legs, distances, rules, rank. */
function ours(site: Site, derived: Derived, index: FeatureIndex, reach?: number) {
  const required = requiredOn(site);
  const subject = pathSubject(lateralOf(derived));
  return worstFirst(clearancesFrom(subject, index, required, reach));
}

const site = yard(MANY);
const derived = derive(site);
const centreLine = lateralOf(derived).points;
const indexed = () => {
  const made = featureIndex(derived.features.values());
  made.near(subject.table, 0);
  return made;
};
const subject = pathSubject(lateralOf(derived));
const outside = subject.legs?.radii[0] ?? 0;
const index = indexed();
const found = new Map(ours(site, derived, index, Infinity).map((c) => [c.feature, c]));
const near = ours(site, derived, index);

const oursMs = leastMs(RUNS, WARM_UP, () => ours(site, derived, index).at(-1)?.distance ?? 0);
const everyMs = leastMs(
  RUNS / 5,
  WARM_UP / 5,
  () => ours(site, derived, index, Infinity).at(-1)?.distance ?? 0,
);
const indexMs = leastMs(RUNS / 10, WARM_UP / 10, () => indexed().all.length);
const few = yard(FEW);
const fewDerived = derive(few);
const fewMs = leastMs(
  RUNS,
  WARM_UP,
  () => ours(few, fewDerived, featureIndex(fewDerived.features.values()), Infinity).at(-1)?.distance ?? 0,
);

// ---- turf: each vertex of the one to the line of the other, 0 where lines cross or one lies within
const degrees = ({ x, y }: Point) => [x / METRES_PER_DEGREE, y / METRES_PER_DEGREE];
const turfPath = lineString(centreLine.map(degrees));
const turfVertices = centreLine.map((p) => turfPoint(degrees(p)));
const asTurf = [...derived.features.values()].map(({ outline, spec }) => {
  const ring = spec.shape === 'area' ? [...outline, ...outline.slice(0, 1)] : outline;
  return {
    vertices: outline.map((p) => turfPoint(degrees(p))),
    line: outline.length > 1 ? lineString(ring.map(degrees)) : null,
    area: spec.shape === 'area' ? polygon([ring.map(degrees)]) : null,
  };
});
const METRES = { units: 'meters' } as const;

function byTurf({ vertices, line, area }: (typeof asTurf)[number]): number {
  let least = Infinity;
  for (const vertex of vertices) least = Math.min(least, pointToLineDistance(vertex, turfPath, METRES));
  if (line === null) return least;
  if (lineIntersect(line, turfPath).features.length > 0) return 0;
  for (const vertex of turfVertices) {
    if (area !== null && booleanPointInPolygon(vertex, area)) return 0;
    least = Math.min(least, pointToLineDistance(vertex, line, METRES));
  }
  return least;
}

// ---- jsts
const factory = new GeometryFactory();
const coordinates = (points: readonly Point[]) => points.map((p) => new Coordinate(p.x, p.y));
const jtsPath = factory.createLineString(coordinates(centreLine));
const asJts = [...derived.features.values()].map(({ outline, spec }) => {
  const [first] = coordinates(outline);
  if (spec.shape === 'point') return factory.createPoint(first);
  return spec.shape === 'area'
    ? factory.createPolygon(coordinates([...outline, ...outline.slice(0, 1)]))
    : factory.createLineString(coordinates(outline));
});

const every = <Item>(items: readonly Item[], n: number) => items.filter((_, i) => i % n === 0);
const turfAsked = every(asTurf, TURF_EVERY);
const jtsAsked = every(asJts, JSTS_EVERY);
const turfMs = TURF_EVERY * leastMs(3, 1, () => turfAsked.reduce((sum, one) => sum + byTurf(one), 0));
const jtsMs =
  JSTS_EVERY *
  leastMs(60, 60, () => jtsAsked.reduce((sum: number, one) => sum + DistanceOp.distance(jtsPath, one), 0));

/** The greatest difference (m) from another's distances between centre lines; ours are without widths and, inside, not negative. */
function apartFrom(others: readonly number[], n: number): number {
  const ids = every([...derived.features.values()], n);
  return others.reduce((worst, theirs, i) => {
    const feature = ids[i];
    const mine = feature === undefined ? undefined : found.get(feature.feature.id);
    if (feature === undefined || mine === undefined) return Infinity;
    const { fields } = feature.feature;
    const width = 'diameter' in fields ? (fields.diameter ?? 0) / 2 : feature.radius;
    return Math.max(worst, Math.abs(Math.max(0, mine.distance + outside + width) - theirs));
  }, 0);
}
const fromTurf = apartFrom(turfAsked.map(byTurf), TURF_EVERY);
const fromJts = apartFrom(
  jtsAsked.map((one) => DistanceOp.distance(jtsPath, one) as number),
  JSTS_EVERY,
);

/** What is not listed lies too far off, and nothing else. */
const { nearby, widest } = requiredOn(site);
const nothingLost =
  near.length === [...found.values()].filter((c) => c.distance < Math.max(nearby, c.required ?? 0)).length;

const turfRatio = turfMs / oursMs;
const jtsRatio = jtsMs / oursMs;
const same = fromTurf < SAME_M && fromJts < 1e-8 && found.size === MANY && nothingLost;
console.log(
  `a path of ${VERTICES} vertices, ${MANY} features, ${near.length} of them nearer than ${nearby.toFixed(2)} m (a well ${widest.toFixed(2)} m); ` +
    `turf ${turfMs.toFixed(0)} ms (from ${turfAsked.length} features), jsts ${jtsMs.toFixed(0)} ms (from ${jtsAsked.length}); the index ${indexMs.toFixed(2)} ms`,
);
console.log(
  `distances differ by ${fromTurf.toExponential(1)} m from turf's, ${fromJts.toExponential(1)} m from jsts's at most, and nothing is lost: ${same}`,
);
const things = MANY.toLocaleString('en-US');
const figures: readonly Figure[] = [
  {
    name: `clearances of a path to what of ${things} things is near`,
    value: oursMs,
    unit: 'ms',
    ratio: { to: 'turf, every pair', times: oursMs / turfMs },
  },
  {
    name: 'the same, faster than turf by',
    value: turfRatio,
    unit: '',
    goal: { atLeast: TURF_RATIO },
    ratio: null,
  },
  {
    name: 'the same, faster than jsts by',
    value: jtsRatio,
    unit: '',
    goal: { atLeast: JSTS_RATIO },
    ratio: null,
  },
  {
    name: `clearances of a path to every one of ${things} things`,
    value: everyMs,
    unit: 'ms',
    ratio: { to: 'jsts, every pair', times: everyMs / jtsMs },
  },
  {
    name: `clearances of a path to ${FEW} things, every one`,
    value: fewMs,
    unit: 'ms',
    goal: { under: FEW_MS },
    ratio: null,
  },
];
const met = figures.map(tell).every((one) => one);
console.log(ranOn());
process.exitCode = same && met ? 0 : 1;
