import type { Point } from '@footmark/geometry';
import {
  type Feature,
  newSite,
  type PathVertex,
  type Reading,
  type Run,
  type Site,
  sigmas,
} from '@footmark/site';
import { normal, seededRandom } from '../random/seeded';
import { alongNearest, lengthOf, pointAt, truePipe } from './truePipe';

// Invented yards with a known truth. Every error is drawn from the distribution that the program's own table states for it.

export type SimulatedSite = {
  readonly site: Site;
  /** By reading: where what it saw really is. */
  readonly truth: ReadonlyMap<string, Point>;
  /** What was made wrong on purpose: names of observations, and by how many of their standard deviations. */
  readonly blunders: ReadonlyMap<string, number>;
};

export type Recipe = {
  /** Chance that an observation is a blunder. */
  readonly blunderShare: number;
  /** Plenty of evidence, so that one piece can be told wrong by the others. */
  readonly rich: boolean;
};

const DEGREE = Math.PI / 180;
const TURNS = [0, 22.5, 22.5, 45, 45, 60, 90].map((d) => d * DEGREE);
const RESOLUTION = 0.03048;
const BEND_RADIUS = 0.2286;
const SLOPE = 1 / 96;
/** An instrument's or a tape's deviation in placing what was located (m). */
const PLACED = 0.02;
const value = (name: keyof typeof sigmas) => sigmas[name].value;

/** One site for a seed. */
export function simulatedSite(seed: number, recipe: Recipe): SimulatedSite {
  const random = seededRandom(seed);
  const gauss = () => normal(random);
  const between = (a: number, b: number) => a + (b - a) * random();
  const count = (a: number, b: number) => a + Math.floor((b - a + 1) * random());

  const corners = shape(between, count, random);
  const pipe = truePipe(
    { corners, bendRadius: BEND_RADIUS, slope: SLOPE, perMetre: (4 * value('pipeStray') ** 2) / 10 },
    gauss,
  );
  const truth = new Map<string, Point>();
  const blunders = new Map<string, number>();
  /** A blunder in units of the observation's deviation, noted under its name, or none. */
  const blunder = (name: string): number => {
    if (random() >= recipe.blunderShare) return 0;
    const size = between(3, 20) * (random() < 0.5 ? -1 : 1);
    blunders.set(name, Math.abs(size));
    return size;
  };

  const vertices = drawn(corners, gauss, random);
  const ends = [corners[0] as Point, corners.at(-1) as Point].map((p) =>
    off(p, value('tiedPipePoint'), gauss),
  );
  const features: Feature[] = [
    { id: 'head', kind: 'cleanout', name: '', vertices: [spotAt(ends[0] as Point)], fields: {} },
    { id: 'end', kind: 'manhole', name: '', vertices: [spotAt(ends[1] as Point)], fields: {} },
  ];
  const runs: Run[] = [];
  const both = recipe.rich || random() < 0.6;
  const things = Array.from({ length: count(3, 6) }, () => between(0.08, 0.92) * lengthOf(pipe));
  // things that both runs saw, the second look a little beside the first: another part of the thing
  const pairs: Site['pairs'] = [];
  const looks = things.map((along, i) => {
    if (!both || random() > (recipe.rich ? 0.8 : 0.4)) return along;
    const id = `pair-${i}`;
    pairs.push({ id, a: { run: 'A', reading: `A${i + 1}` }, b: { run: 'B', reading: `B${i + 1}` } });
    return along + value('sameThing') * (gauss() + blunder(`pair/${id}`));
  });
  for (const which of both ? ['A', 'B'] : ['A']) {
    const down = which === 'A';
    const startAt = (corner: number) => {
      const along = alongNearest(pipe, corners[corner] as Point);
      return down ? along : lengthOf(pipe) - along;
    };
    const rim = random() < 0.3;
    const scale = 1 + value('scale') * gauss();
    const zero = between(0, 1);
    const trueZero = zero + value('zero') * gauss();
    // some counters were zeroed at a bend, where the camera could be seen to pass
    const bend = !rim && vertices.length > 2 && random() < 0.3 ? count(1, vertices.length - 2) : null;
    const start = bend === null ? 0 : startAt(bend) + value('sameThing') * gauss();
    const shownAtStart = bend === null ? zero : zero + start;
    const riser = between(1, 2);
    const sweep = BEND_RADIUS;
    const leg = riser - sweep * (2 - Math.PI / 2) + value('riser') * gauss();
    const head = 0.1;
    const readings: Reading[] = [];
    const counterSigma = Math.hypot(value('counter'), RESOLUTION / Math.sqrt(12));
    const read = (seenAlong: number, facts: Partial<Reading> = {}): string => {
      const id = `${which}${readings.length + 1}`;
      const along = down ? seenAlong : lengthOf(pipe) - seenAlong;
      const gone = along - start + (rim ? leg : 0);
      const counted = shownAtStart + trueZero - zero + gone / scale + value('counter') * gauss();
      const shown = Math.max(
        0,
        Math.round(counted / RESOLUTION) * RESOLUTION + blunder(`counter/${which}/${id}`) * counterSigma,
      );
      truth.set(id, pointAt(pipe, seenAlong));
      readings.push({
        id,
        number: readings.length + 1,
        counter: shown,
        seen: 'crack',
        passed: true,
        note: '',
        ...facts,
      });
      return id;
    };
    const locate = (reading: string, seenAlong: number) => {
      const method = (['crossed', 'peak', 'peak', 'rough', 'exposed'] as const)[count(0, 4)] ?? 'peak';
      const depth = between(0.6, 2);
      const sigma = methodSigma(method, depth);
      const id = `locate-${reading}`;
      const sonde = pointAt(
        pipe,
        down ? Math.max(0, seenAlong - head) : Math.min(lengthOf(pipe), seenAlong + head),
      );
      const wrong = blunder(`locate/${id}`) * sigma;
      const toward = 2 * Math.PI * random();
      const at = off(off(sonde, sigma, gauss), PLACED, gauss);
      const placed = { x: at.x + wrong * Math.cos(toward), y: at.y + wrong * Math.sin(toward) };
      features.push({
        id,
        kind: 'locate',
        name: '',
        vertices: [{ id: 'a', spot: { by: 'coordinates', ...placed, sigma: PLACED } }],
        fields: { reading: { run: which, reading }, method, depth },
      });
    };
    for (const along of down ? things : looks) {
      const id = read(along);
      if (random() < (recipe.rich ? 0.6 : 0.3)) locate(id, along);
    }
    for (const [i, v] of vertices.entries()) {
      if (i === 0 || i === vertices.length - 1 || random() > (recipe.rich ? 0.5 : 0.15)) continue;
      const at = alongNearest(pipe, corners[i] as Point);
      const wrong = blunder(`seen/${which}/${which}${readings.length + 1}`);
      read(at + value('sameThing') * (gauss() + wrong), { seenAt: { of: 'pipe', at: v.id } });
    }
    runs.push({
      id: which,
      letter: which,
      name: '',
      visit: null,
      entry: down ? 'head' : 'end',
      path: 'pipe',
      direction: down ? 'with-flow' : 'against-flow',
      branches: [],
      zero: rim
        ? { at: 'rim', counter: zero, riser, sweepRadius: sweep }
        : bend === null
          ? { at: 'in-pipe', counter: zero }
          : {
              at: 'point',
              counter: shownAtStart,
              point: { of: 'pipe', at: (vertices[bend] as PathVertex).id },
            },
      scale: { by: 'said', factor: 1 },
      resolution: RESOLUTION,
      head: { length: head, zeroed: 'lens' },
      note: '',
      readings: readings.toSorted((a, b) => a.counter - b.counter),
    });
  }
  const empty = newSite({
    id: 'simulated',
    name: '',
    createdAt: '2026-01-01T00:00:00Z',
    units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
  });
  return {
    site: {
      ...empty,
      features,
      paths: [
        {
          id: 'pipe',
          name: '',
          state: 'existing',
          vertices,
          bendRadius: BEND_RADIUS,
          stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: SLOPE }],
        },
      ],
      runs,
      pairs,
    },
    truth,
    blunders,
  };
}

function shape(
  between: (a: number, b: number) => number,
  count: (a: number, b: number) => number,
  random: () => number,
): Point[] {
  const corners: Point[] = [{ x: between(-50, 50), y: between(-50, 50) }];
  let heading = between(0, 2 * Math.PI);
  for (let leg = count(2, 6); leg > 0; leg--) {
    const length = between(3, 11);
    const last = corners.at(-1) as Point;
    corners.push({ x: last.x + length * Math.sin(heading), y: last.y + length * Math.cos(heading) });
    heading += (TURNS[Math.floor(random() * TURNS.length)] ?? 0) * (random() < 0.5 ? -1 : 1);
  }
  return corners;
}

/** The ends are tied to what is seen of the pipe there; between them some points were measured, the others drawn by eye. */
function drawn(corners: readonly Point[], gauss: () => number, random: () => number): PathVertex[] {
  return corners.map((p, i): PathVertex => {
    const id = `v${i}`;
    if (i === 0) return { id, spot: { by: 'at', point: { of: 'head', at: 'a' } } };
    if (i === corners.length - 1) return { id, spot: { by: 'at', point: { of: 'end', at: 'a' } } };
    const measured = random() < 0.3;
    const at = off(p, measured ? value('tiedPipePoint') : value('drawnPipePoint'), gauss);
    return { id, spot: { by: measured ? 'coordinates' : 'finger', ...at } };
  });
}

function methodSigma(method: 'crossed' | 'peak' | 'rough' | 'exposed', depth: number): number {
  switch (method) {
    case 'crossed':
      return Math.max(value('locateCrossed'), value('locateCrossedShare') * depth);
    case 'peak':
      return Math.max(value('locatePeak'), value('locatePeakShare') * depth);
    case 'rough':
      return value('locateRough');
    case 'exposed':
      return value('exposed');
  }
}

function off(p: Point, sigma: number, gauss: () => number): Point {
  return { x: p.x + sigma * gauss(), y: p.y + sigma * gauss() };
}

function spotAt(p: Point): Feature['vertices'][number] {
  return { id: 'a', spot: { by: 'coordinates', ...p } };
}
