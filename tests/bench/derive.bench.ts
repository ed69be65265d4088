// Run: npx tsx tests/bench/derive.bench.ts
// A crowded yard: from moving one vertex of the pipe to everything derived anew. Median of RUNS after a warm-up.
import {
  type Derived,
  derive,
  type Feature,
  movePoint,
  newSite,
  type Path,
  type Run,
  type Site,
} from '@footmark/site';
import { seededRandom } from '../random/seeded';
import { quantile, tell } from './figures';
import { ranOn, timesOf } from './timing';

const FEATURES = 300;
const READINGS = 200;
const RUNS = 101;
const WARM_UP = 300;
const WHOLE_RUNS = 31;
/** Milliseconds, half a frame at 60 a second. */
const TARGET_MS = 8;

/** One outline with as many corners as a careless import brings, and one with an arc of a mistyped radius. */
const CORNERS = 3000;
const ARC_RADIUS_M = 10_000;
const OUTLINE_RUNS = 7;
const OUTLINE_TARGET_MS = 20;

const letters = 'abcdefghijkl';

/** A house by courses and turns, taped trees, lines, areas and points around a lateral of ten vertices. */
function crowdedYard(next: () => number): Site {
  const place = () => ({ x: next() * 40, y: next() * 60 });
  const typed = () => ({ by: 'coordinates' as const, ...place() });
  const features: Feature[] = [
    {
      id: 'house',
      kind: 'building',
      name: 'House',
      fields: {},
      vertices: [
        { id: 'a', spot: { by: 'coordinates', x: 4, y: 2 } },
        { id: 'b', spot: { by: 'course', azimuth: Math.PI / 2, distance: 9 } },
        { id: 'c', spot: { by: 'turn', turn: -Math.PI / 2, distance: 12 } },
        { id: 'd', spot: { by: 'turn', turn: -Math.PI / 2, distance: 9 } },
      ],
    },
  ];
  for (let i = 1; i < FEATURES; i++) {
    const id = `f${i}`;
    const here = place();
    const corner = (dx: number, dy: number, n: number) => ({
      id: letters[n] ?? 'z',
      spot: { by: 'coordinates' as const, x: here.x + dx, y: here.y + dy },
    });
    const shapes: readonly (() => Feature)[] = [
      () => ({
        id,
        kind: 'tree',
        name: '',
        fields: { trunkDiameter: 0.2 + next() },
        vertices: [
          {
            id: 'a',
            spot: {
              by: 'tapes',
              side: (here.x - 4) * 12 > (here.y - 2) * 9 ? 'right' : 'left',
              tapes: [
                { from: { of: 'house', at: 'a' }, distance: Math.hypot(here.x - 4, here.y - 2) },
                { from: { of: 'house', at: 'c' }, distance: Math.hypot(here.x - 13, here.y - 14) },
                { from: { of: 'house', at: 'b' }, distance: Math.hypot(here.x - 13, here.y - 2) },
              ].slice(0, i % 4 === 0 ? 3 : 2),
            },
          },
        ],
      }),
      () => ({
        id,
        kind: 'fence',
        name: '',
        fields: {},
        vertices: [corner(0, 0, 0), corner(3, 1, 1), corner(5, 0, 2)],
      }),
      () => ({ id, kind: 'service', name: '', fields: {}, vertices: [corner(0, 0, 0), corner(9, 4, 1)] }),
      () => ({
        id,
        kind: i % 20 === 0 ? 'shed' : 'deck',
        name: '',
        fields: {},
        vertices: [corner(0, 0, 0), corner(2, 0, 1), corner(2, 2, 2), corner(0, 2, 3)],
      }),
      () => ({ id, kind: 'pole', name: '', fields: { diameter: 0.3 }, vertices: [corner(0, 0, 0)] }),
      () => ({ id, kind: 'cleanout', name: '', fields: {}, vertices: [{ id: 'a', spot: typed() }] }),
    ];
    const shape = shapes[i % shapes.length];
    if (shape !== undefined) features.push(shape());
  }
  features.push({
    id: 'entry',
    kind: 'cleanout',
    name: '',
    fields: {},
    vertices: [{ id: 'a', spot: { by: 'coordinates', x: 10, y: 12 } }],
  });
  const lateral: Path = {
    id: 'lateral',
    name: 'Lateral',
    state: 'existing',
    bendRadius: 0.2286,
    vertices: Array.from({ length: 10 }, (_, i) => ({
      id: letters[i] ?? 'z',
      spot: { by: 'finger' as const, x: 10 + 8 * Math.sin(i * 0.7), y: 12 + i * 5 },
    })),
    stretches: [{ from: 0, material: 'clay', diameter: 0.1016, slope: 1 / 96 }],
  };
  const run: Run = {
    id: 'run',
    letter: 'A',
    name: '',
    visit: null,
    entry: 'entry',
    path: 'lateral',
    direction: 'with-flow',
    branches: [],
    zero: { at: 'in-pipe', counter: 0 },
    scale: { by: 'said', factor: 1 },
    resolution: 0.03048,
    head: { length: 0, zeroed: 'lens' },
    note: '',
    readings: Array.from({ length: READINGS }, (_, i) => ({
      id: `r${i}`,
      number: i + 1,
      counter: i * 0.24,
      seen: 'crack' as const,
      passed: true,
      note: '',
    })),
  };
  const units = { length: 'ft', diameter: 'in', direction: 'bearing' } as const;
  const empty = newSite({ id: 'yard', name: 'Crowded yard', createdAt: '2026-01-02T03:04:05Z', units });
  return { ...empty, features, paths: [lateral], runs: [run] };
}

const yard = crowdedYard(seededRandom(2026));
let derived: Derived = derive(yard);
const placed = derived.marks.filter((m) => m.place !== null).length;
const tied = derived.marks.filter((m) => m.place?.ties).length;

/** Asks for all of it: some is computed when it is first asked for. */
function weigh({ marks, profiles, findings }: Derived): number {
  return (marks.at(-1)?.place?.at.x ?? 0) + profiles.size + findings.length;
}

let moved = 0;
const times = timesOf(RUNS, WARM_UP, () => {
  moved += 1;
  const to = { x: 10 + 8 * Math.sin(2.8) + 0.01 * (moved % 50), y: 32 };
  derived = derive(movePoint(yard, { ref: { of: 'lateral', at: 'e' }, to, places: derived.points }));
  return weigh(derived);
});
const median = quantile(times, 0.5);
// each time another site by its objects: nothing is known of it
const copies = Array.from({ length: WHOLE_RUNS }, () => structuredClone(yard));
const whole = timesOf(WHOLE_RUNS, 0, () => weigh(derive(copies.pop() ?? yard)));
console.log(
  `${yard.features.length} features, ${READINGS} readings (${placed} placed, ${tied} with ties, ${derived.references.length} references); ` +
    `${quantile(times, 0.95).toFixed(2)} ms at 95 of 100`,
);
const met =
  tell({
    name: `one vertex of the pipe moves: all of ${FEATURES} things and ${READINGS} readings derived anew`,
    value: median,
    unit: 'ms',
    goal: { under: TARGET_MS },
    ratio: { to: 'the same from nothing', times: median / quantile(whole, 0.5) },
  }) && placed === READINGS;
/** Best of a few: milliseconds from a site of one outline to everything derived. */
function msOf(outline: Feature): number {
  const alone: Site = { ...yard, features: [outline], paths: [], runs: [] };
  return Math.min(
    ...timesOf(OUTLINE_RUNS, 0, () => derive(alone).features.get(outline.id)?.outline.length ?? 0),
  );
}

const round: Feature = {
  id: 'round',
  kind: 'boundary',
  name: '',
  fields: {},
  vertices: Array.from({ length: CORNERS }, (_, i) => {
    const turned = (2 * Math.PI * i) / CORNERS;
    return { id: `v${i}`, spot: { by: 'finger', x: 100 * Math.sin(turned), y: 100 * Math.cos(turned) } };
  }),
};
const wide: Feature = {
  id: 'wide',
  kind: 'boundary',
  name: '',
  fields: {},
  vertices: [
    { id: 'a', spot: { by: 'finger', x: 0, y: 0 } },
    { id: 'b', spot: { by: 'arc', radius: ARC_RADIUS_M, sweep: 3, chord: 0 } },
    { id: 'c', spot: { by: 'finger', x: 3 * ARC_RADIUS_M, y: 0 } },
  ],
};
const [roundMs, wideMs] = [msOf(round), msOf(wide)];
const outlines = [
  [`an outline of ${CORNERS.toLocaleString('en-US')} corners derived`, roundMs],
  [`an outline with an arc of ${ARC_RADIUS_M / 1000} km derived`, wideMs],
] as const;
const outlinesMet = outlines
  .map(([name, value]) => tell({ name, value, unit: 'ms', goal: { under: OUTLINE_TARGET_MS }, ratio: null }))
  .every((one) => one);
console.log(ranOn());
process.exitCode = met && outlinesMet ? 0 : 1;
