import { describe, expect, it } from 'vitest';
import type { Feature } from '../document/feature';
import type { Path } from '../document/path';
import { changeRule } from '../edits/ruleEdits';
import { DEGREE, pipe, push, square, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';
import { setOutOf, setOutsOf } from './setOut';

const INCH_M = 0.0254;
const FOOT_M = 0.3048;

/** Offset by two equal bends of 45°: travel and run by the offset, as handbooks for pipe fitters print them. */
// biome-ignore lint/suspicious/noApproximativeNumericConstant: the printed ratio is what is checked against
const TRAVEL_45 = 1.41421;
const RUN_45 = 1;

/** North from the origin, and by two 1/8 bends 4 m to the east of that, north again. */
const offset = (facts: Partial<Path> = {}) =>
  pipe('new', [typed(0, 0), typed(0, 10), typed(4, 14), typed(4, 30)], { state: 'proposed', ...facts });

function setOutIn(path: Path, features: readonly Feature[] = [], spacing?: number) {
  const plain = yard({ paths: [path], features: [...features] });
  const change = { rule: 'setOutSpacing', value: spacing ?? 0, who: '', why: '' } as const;
  const site = spacing === undefined ? plain : changeRule(plain, { change });
  return setOutOf(site, derive(site), path.id)?.points ?? [];
}

describe('the points that set a pipe out', () => {
  it('are its ends, its bends where their legs meet, and between them as many as the rule asks', () => {
    const points = setOutIn(offset(), [], 6);
    expect(points.map((p) => p.is)).toEqual([
      ...['start', 'between', 'bend', 'bend', 'between', 'between', 'end'],
    ]);
    expect(points.map((p) => p.number)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(points.map((p) => p.at.y)).toEqual([0, 5, 10, 14, 14 + 16 / 3, 14 + 32 / 3, 30].map(near));
    expect(points.map((p) => p.at.x)).toEqual([0, 0, 0, 4, 4, 4, 4].map(near));
  });

  it('leave no gap along the pipe over 25 ft where nobody said otherwise', () => {
    const stations = setOutIn(offset({ bendRadius: 9 * INCH_M })).map((p) => p.station);
    const gaps = stations.slice(1).map((station, i) => station - (stations[i] ?? 0));
    expect(Math.max(...gaps)).toBeLessThanOrEqual(25 * FOOT_M);
    expect(stations).toHaveLength(4 + 1 + 2);
    expect(stations.at(-1)).toBeCloseTo(derivedLength(offset({ bendRadius: 9 * INCH_M })), 9);
  });

  it('fill a stretch of just the rule with none, and with a rule of 0 nothing is filled', () => {
    const straight = pipe('new', [typed(0, 0), typed(0, 20)], { state: 'proposed' });
    expect(setOutIn(straight, [], 10)).toHaveLength(3);
    expect(setOutIn(straight, [], 20)).toHaveLength(2);
    expect(setOutIn(straight, [], 0)).toHaveLength(2);
  });

  // a curve of R 9 in turning 45°: T 3.7279 in, L 7.0686 in by R·tan(Δ/2) and R·Δ of any route-surveying text
  it('of a pair of 45s are apart by the published travel, and its arcs as long as the tables have them', () => {
    const radius = 9 * INCH_M;
    const [, , first, second] = setOutIn(offset({ bendRadius: radius }));
    expect(second?.fromBefore).toBeCloseTo(TRAVEL_45 * 4, 4);
    expect((second?.at.y ?? 0) - (first?.at.y ?? 0)).toBeCloseTo(RUN_45 * 4, 9);
    expect(first?.bend?.turn).toBeCloseTo(45 * DEGREE, 12);
    expect(second?.bend?.turn).toBeCloseTo(-45 * DEGREE, 12);
    expect((first?.bend?.tangent ?? 0) / INCH_M).toBeCloseTo(3.7279, 4);
    // from middle to middle of the arcs: the travel less what each arc is shorter than its tangents
    const saved = (3.7279 - 7.0686 / 2) * INCH_M;
    expect((second?.station ?? 0) - (first?.station ?? 0)).toBeCloseTo(TRAVEL_45 * 4 - 2 * saved, 4);
  });

  // 1/8 of a circle is 45°, 1/16 22½°: lists of ASTM A74
  it('name the standard bend: the known one, else what is drawn within a degree', () => {
    const bendsOf = (path: Path) => setOutIn(path, [], 0).flatMap((p) => p.bend ?? []);
    expect(bendsOf(offset()).map((b) => b.fitting?.name)).toEqual(['1/8', '1/8']);
    const by = (degrees: number, bend?: number) =>
      pipe('new', [
        typed(0, 0),
        { spot: typed(0, 10), ...(bend === undefined ? {} : { bend: bend * DEGREE }) },
        typed(10 * Math.sin(degrees * DEGREE), 10 + 10 * Math.cos(degrees * DEGREE)),
      ]);
    expect(bendsOf(by(23.4))[0]?.fitting?.name).toBe('1/16');
    expect(bendsOf(by(25))[0]?.fitting).toBeNull();
    expect(bendsOf(by(25, 22.5))[0]).toMatchObject({ known: 22.5 * DEGREE, fitting: { name: '1/16' } });
    expect(bendsOf(by(23, 30))[0]?.fitting).toBeNull();
    expect(bendsOf(by(0.5))).toEqual([]);
    expect(setOutIn(by(0.5), [], 0).map((p) => p.is)).toEqual(['start', 'vertex', 'end']);
  });

  it('are taped by the distances that right triangles give', () => {
    const post = (id: string, x: number, y: number) => thing(id, 'reference-point', [typed(x, y)]);
    const posts = [post('p5', 3, 14), post('p10', 8, 4), post('p13', -5, 22)];
    const bend = setOutIn(offset(), posts, 0)[1];
    const { pair, check, cutAngle } = bend?.ties ?? {};
    const taped = [...(pair ?? []), ...(check ? [check] : [])];
    // from (0, 10): 3-4-5, 6-8-10 square to it, 5-12-13
    expect(taped).toHaveLength(3);
    for (const { from, distance } of taped) expect(distance).toBeCloseTo(Number(from.ref.of.slice(1)), 12);
    expect(pair?.map((tie) => tie.from.ref.of)).toEqual(['p5', 'p10']);
    expect(cutAngle).toBeCloseTo(90 * DEGREE, 12);
    expect(check?.distance).toBeCloseTo(13, 12);
  });

  it('have no tapes under a building, and say which it is', () => {
    const house = square('house', 'building', -3, 8, 5);
    const [start, bend] = setOutIn(offset(), [house, square('shed', 'building', -9, -9, 3)], 0);
    expect(bend).toMatchObject({ ties: null, under: 'house' });
    expect(start?.under).toBeNull();
    expect(start?.ties).not.toBeNull();
  });
});

describe('how deep a pipe is to lie', () => {
  const sloped = (vertices: Parameters<typeof pipe>[1]) =>
    pipe('new', vertices, {
      state: 'proposed',
      stretches: [{ from: 0, material: 'plastic', diameter: 0.1, slope: 0.02 }],
    });
  const level = (at: number) => ({ level: { is: 'invert', level: at } }) as const;
  const spotLevel = (id: string, y: number, at: number) =>
    thing(id, 'spot-level', [typed(1, y)], { level: at });

  it('follows from one known level and the slope, and its length from both', () => {
    const path = sloped([
      { spot: typed(0, 0), ...level(100) },
      { spot: typed(0, 10), drop: 0.5 },
      typed(0, 20),
    ]);
    const points = setOutIn(path, [spotLevel('g', 0, 101.2)], 0);
    // 2 % of 10 m is 0.2 m; the level at a drop is that below it
    expect(points.map((p) => p.invert?.invert)).toEqual([100, 99.3, 99.1].map(near));
    expect(points.map((p) => p.invert?.by)).toEqual(['point', 'beyond', 'beyond']);
    // √(10² + 0.2²) a piece, and the drop once it is passed
    expect(points.map((p) => p.developed)).toEqual([0, 10.0019998, 20.5039996].map((m) => near(m, 6)));
    // the ground is known at the start only
    expect(points.map((p) => p.depth?.depth)).toEqual([near(1.2), undefined, undefined]);
  });

  it('counts from the ground where its level is known', () => {
    const path = sloped([
      { spot: typed(0, 0), ...level(100) },
      { spot: typed(0, 10), ...level(99.7) },
    ]);
    const points = setOutIn(path, [spotLevel('g', 0, 101), spotLevel('h', 10, 101.5)], 5);
    expect(points.map((p) => p.invert?.invert)).toEqual([100, 99.85, 99.7].map(near));
    expect(points.map((p) => p.depth?.depth)).toEqual([1, 1.4, 1.8].map(near));
  });

  it('is a depth without a level where only depths are known, and nothing where nothing is', () => {
    const depth = (metres: number) => ({ level: { is: 'depth-to-invert', depth: metres } }) as const;
    const path = sloped([
      { spot: typed(0, 0), ...depth(1) },
      { spot: typed(0, 10), ...depth(1.4) },
    ]);
    const points = setOutIn(path, [], 5);
    expect(points.map((p) => p.invert)).toEqual([null, null, null]);
    expect(points.map((p) => p.depth?.depth)).toEqual([1, 1.2, 1.4].map(near));
    expect(setOutIn(offset(), [], 0).map((p) => [p.invert, p.depth])).toEqual(Array(4).fill([null, null]));
  });
});

describe('what is painted', () => {
  const short = (id: string, name: string, facts: Partial<Path> = {}) =>
    pipe(id, [typed(0, 0), typed(0, 5)], { name, state: 'proposed', ...facts });
  const labels = (paths: readonly Path[], letters: readonly string[] = []) => {
    const runs = letters.map((letter) => push({ id: `run${letter}`, letter }));
    const site = yard({ paths: [...paths], runs });
    return setOutsOf(site, derive(site)).map(({ points }) => points[0]?.label);
  };

  it('is the initials of the pipe and a number, whatever the name is made of', () => {
    expect(labels([short('a', 'New lateral')])).toEqual(['NL-1']);
    expect(labels([short('a', 'Reroute past the old maple')])).toEqual(['RPT-1']);
    expect(labels([short('a', 'Überlauf 2')])).toEqual(['U-1']);
    expect(labels([short('a', ''), short('b', '12″ 新')])).toEqual(['P-1', 'PB-1']);
  });

  it('is never that of another path, nor like a mark of a run', () => {
    expect(labels([short('a', 'New'), short('b', 'North'), short('c', 'NB')])).toEqual([
      'N-1',
      'NB-1',
      'NC-1',
    ]);
    expect(labels([short('a', 'New')], ['N', 'NB'])).toEqual(['NC-1']);
  });

  it('is for what is to be laid; a pipe that is there keeps no letters from it', () => {
    expect(labels([short('old', 'New', { state: 'existing' }), short('a', 'New')])).toEqual(['N-1']);
  });
});

function near(value: number, digits = 9): unknown {
  return expect.closeTo(value, digits);
}

function derivedLength(path: Path): number {
  const site = yard({ paths: [path] });
  return derive(site).paths.get(path.id)?.length ?? 0;
}
