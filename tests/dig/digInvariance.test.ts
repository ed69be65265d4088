// Random yards turned, moved and mirrored: the same is found in all of them, and nothing that is not a number.

import { excavationsOf, treeEncroachments } from '@footmark/dig';
import {
  type Derived,
  type Dig,
  derive,
  type Feature,
  type FeatureKind,
  type Path,
  type Site,
} from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { pipe, thing, typed } from '../../packages/site/src/testing/yard';
import { digSite } from './digSite';

const SITES = 25;

/** Uniform in [0, 1), the same for a seed everywhere (Park and Miller's generator). */
function seeded(seed: number): () => number {
  let state = seed * 7919 + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

type Move = {
  readonly name: string;
  readonly mirrored: boolean;
  readonly to: (x: number, y: number) => { x: number; y: number };
};

const turned = (angle: number, dx: number, dy: number, mirrored: boolean): Move['to'] => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (x, y) => {
    const [u, v] = [mirrored ? -x : x, y];
    return { x: u * cos - v * sin + dx, y: u * sin + v * cos + dy };
  };
};

const MOVES: readonly Move[] = [
  { name: 'turned', mirrored: false, to: turned(1.234, 0, 0, false) },
  { name: 'turned by a right angle', mirrored: false, to: turned(Math.PI / 2, 0, 0, false) },
  { name: 'moved far away', mirrored: false, to: turned(0, 12_345.6, -9876.5, false) },
  { name: 'mirrored', mirrored: true, to: turned(0, 0, 0, true) },
  { name: 'mirrored and turned', mirrored: true, to: turned(-2.1, 50, 20, true) },
];
const asIs: Move = { name: 'as it is', mirrored: false, to: (x, y) => ({ x, y }) };

const OUTLINES: readonly FeatureKind[] = [
  'building',
  'driveway',
  'sidewalk',
  'easement',
  'boundary',
  'deck',
  'septic-tank',
];
const LINES: readonly FeatureKind[] = ['service', 'boundary-line', 'fence', 'right-of-way'];

/** A yard with two pipes, trees, outlines (some of which cross themselves), lines and digs. */
function randomSite(seed: number, { to, mirrored }: Move): Site {
  const random = seeded(seed);
  const spot = (x: number, y: number) => {
    const p = to(x, y);
    return typed(p.x, p.y);
  };
  const anywhere = () => spot(40 * random() - 20, 40 * random() - 20);
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  const features: Feature[] = [];
  for (let i = 0; i < 4; i += 1)
    features.push(
      thing(`tree${i}`, 'tree', [anywhere()], {
        ...(random() < 0.9 ? { trunkDiameter: 0.1 + 0.6 * random() } : {}),
        ...(random() < 0.5 ? { baseDiameter: 0.2 + 0.8 * random() } : {}),
      }),
    );
  for (let i = 0; i < 5; i += 1)
    features.push(
      thing(`area${i}`, pick(OUTLINES), Array.from({ length: 3 + Math.floor(3 * random()) }, anywhere)),
    );
  for (let i = 0; i < 4; i += 1)
    features.push(thing(`line${i}`, pick(LINES), [anywhere(), anywhere(), anywhere()]));
  const paths: Path[] = ['p', 'q'].map((id) =>
    pipe(
      id,
      Array.from({ length: 2 + Math.floor(4 * random()) }, () => ({
        spot: anywhere(),
        level: { is: 'depth-to-invert', depth: 0.6 + 2 * random() } as const,
      })),
      { bendRadius: random() < 0.5 ? 0 : 0.5, state: pick(['existing', 'proposed', 'as-built']) },
    ),
  );
  const digs = Array.from({ length: 3 }, (_, i): Dig => {
    const spoil = pick(['left', 'right', 'away'] as const);
    const swapped = spoil === 'left' ? 'right' : spoil === 'right' ? 'left' : spoil;
    return {
      is: 'trench',
      id: `dig${i}`,
      name: '',
      note: '',
      path: pick(['p', 'q']),
      from: 8 * random(),
      to: 4 + 14 * random(),
      spoil: mirrored ? swapped : spoil,
      protection: pick(['slope', 'shield']),
      ...(random() < 0.5 ? { depth: 0.5 + 3 * random() } : {}),
    };
  });
  return digSite({
    things: { features, paths },
    digging: { digs, soil: pick(['a', 'b', 'c', 'not-chosen', 'rock']), disturbed: random() < 0.5 },
    rules: { set: pick(['us-ipc', 'britain', 'australia']) },
  });
}

/** A pipe that ends under a building has ground above its very end or not by rounding alone. */
function endsIndoors({ profiles }: Derived): boolean {
  return [...profiles.values()].some(({ ground, length }) =>
    ground.indoors.some(({ from, to }) => from < 1e-6 || to > length - 1e-6),
  );
}

function resultOf(site: Site) {
  const derived = derive(site);
  const digs = excavationsOf(site, derived, new Map());
  const trees = treeEncroachments(site, derived, digs);
  return { digs, trees, findings: [...digs.flatMap((d) => d.findings), ...trees.findings] };
}

/** Every number in a value, in order, with sides as they are before mirroring. */
function flat(value: unknown, mirrored: boolean): readonly (number | string)[] {
  if (typeof value === 'number') return [value];
  if (typeof value === 'string') {
    if (!mirrored) return [value];
    return [value === 'left' ? 'right' : value === 'right' ? 'left' : value];
  }
  if (value === null || typeof value !== 'object') return [String(value)];
  return Object.entries(value)
    .sort(([a], [b]) => a.localeCompare(b))
    .flatMap(([, inner]) => flat(inner, mirrored));
}

function expectAlike(got: readonly (number | string)[], wanted: readonly (number | string)[]) {
  expect(got).toHaveLength(wanted.length);
  for (const [i, value] of wanted.entries()) {
    const other = got[i];
    if (typeof value === 'number' && typeof other === 'number')
      expect(Math.abs(other - value)).toBeLessThan(1e-5);
    else expect(other).toBe(value);
  }
}

describe.each(MOVES)('a yard $name', (move) => {
  it('has the same findings, volumes and shares', () => {
    let compared = 0;
    for (let seed = 1; seed <= SITES; seed += 1) {
      if (endsIndoors(derive(randomSite(seed, asIs)))) continue;
      compared += 1;
      const [before, after] = [resultOf(randomSite(seed, asIs)), resultOf(randomSite(seed, move))];
      expect(after.findings.map((f) => f.code)).toEqual(before.findings.map((f) => f.code));
      for (const [i, found] of before.findings.entries())
        expectAlike(flat(after.findings[i]?.values, move.mirrored), flat(found.values, false));
      const facts = ({ digs, trees }: ReturnType<typeof resultOf>) => ({
        digs: digs.map(({ volume, restore, top, spoil, depth }) => ({
          volume,
          restore,
          area: top?.area ?? null,
          width: spoil?.width ?? null,
          depth,
        })),
        taken: trees.digs,
        totals: trees.totals,
        pipes: trees.pipes.map(({ tree, path, distance, zones, bore }) => ({
          tree,
          path,
          distance,
          zones,
          bore,
        })),
      });
      expectAlike(flat(facts(after), false), flat(facts(before), false));
    }
    expect(compared).toBeGreaterThan(SITES / 2);
  }, 120_000);
});

describe('random yards', () => {
  it('have nothing that is not a number, and no share above all', () => {
    let said = 0;
    for (let seed = 1; seed <= 2 * SITES; seed += 1) {
      const { digs, trees, findings } = resultOf(randomSite(seed, asIs));
      said += findings.length;
      for (const value of [...flat(digs, false), ...flat(trees, false)])
        if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      for (const { zones } of trees.totals)
        for (const { share, dug, spoil } of zones) {
          expect(share).toBeLessThanOrEqual(1 + 1e-9);
          expect(share).toBeLessThanOrEqual(dug + spoil + 1e-6);
          expect(share).toBeGreaterThanOrEqual(Math.max(dug, spoil) - 1e-6);
        }
      for (const { volume, restore, top } of digs) {
        if (volume === null || restore === null || top === null) continue;
        expect(volume).toBeGreaterThan(0);
        expect(restore.paved + restore.lawn + restore.beyond).toBeLessThanOrEqual(top.area + 1e-6);
      }
    }
    expect(said).toBeGreaterThan(10 * SITES);
  }, 120_000);
});
