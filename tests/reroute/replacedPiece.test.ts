// What is told of an old pipe of which a piece is replaced. Outside of it: IRC P3005.3, plane geometry by hand.
import { treeZones } from '@footmark/dig';
import type { Way } from '@footmark/reroute';
import { derive, type Feature, profileAt } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { at, oldOn, only, SAMPLES, sample, stationsAsked, straightDrain, thing } from './drain';

describe('an old pipe of which a piece is replaced', () => {
  const ring = (id: string, kind: Feature['kind'], [low, high]: readonly [number, number]) =>
    thing(id, kind, [
      [-6, low],
      [6, low],
      [6, high],
      [-6, high],
    ]);
  const across = (id: string, y: number) =>
    thing(
      id,
      'service',
      [
        [-4, y],
        [4, y],
      ],
      { carries: 'gas' },
    );
  const site = straightDrain([
    ring('house', 'building', [-5, -2]),
    ring('lot', 'boundary', [-6, 10]),
    across('before', 3),
    across('within', 8),
    across('past', 15),
    thing(
      'slanted',
      'service',
      [
        [0.5, 0],
        [3, 20],
      ],
      { carries: 'telecom' },
    ),
    thing('oak', 'tree', [[-1, 12]], { trunkDiameter: 0.3 }),
  ]);
  const facts = (from: number, to: number | null) => {
    const ways = oldOn(site, { from, to: { is: 'station', station: to } });
    return ['repair', 'in-place'].map((is) => {
      const found = ways.find((w) => w.is === is);
      if (found === undefined) throw new Error(is);
      return found.facts;
    });
  };

  it('is told by that piece: its length, fall, what it crosses, whose land, roots', () => {
    const zone = treeZones(site, derive(site)).trees[0]?.chosen.radius ?? 0;
    for (const piece of facts(5, 12)) {
      expect(piece.length).toBeCloseTo(7, 9);
      // 1/8 in per foot of 4 in pipe (IRC P3005.3), and 0.4 m in 20 m as its levels say
      expect(piece.fall.required).toBeCloseTo(7 / 96, 4);
      expect(piece.fall.available).toBeCloseTo(0.4 * (7 / 20), 9);
      expect(piece.services).toEqual(['within']);
      expect(piece.others + piece.unknownLand).toBeCloseTo(2, 6);
      // half the chord of a circle 1 m off its middle
      expect(piece.trees.map((t) => t.length)).toEqual([expect.closeTo(Math.sqrt(zone ** 2 - 1), 6)]);
    }
    for (const whole of facts(0, null)) {
      expect(whole.length).toBeCloseTo(20, 9);
      expect(whole.services).toEqual(['before', 'within', 'past']);
    }
  });

  it('is as near to a thing as that piece comes', () => {
    const slanted = (of: ReturnType<typeof facts>) => of[0]?.nearest.find((n) => n.feature === 'slanted');
    const [piece, whole] = [slanted(facts(5, 12)), slanted(facts(0, null))];
    expect(piece?.station).toBeCloseTo(5, 3);
    // the line stands off by an eighth of a metre more for each metre north, seen square to it
    const square = Math.hypot(1, 1 / 8);
    expect(piece?.distance).toBeCloseTo((whole?.distance ?? 9) + (0.5 + 5 / 8) / square - 0.5, 6);
  });

  it.each(SAMPLES)('lies as deep as that piece does at its shallowest: %s, step by step', (name) => {
    const real = sample(name);
    const derived = derive(real);
    const { path, from, to } = stationsAsked(derived);
    const profile = derived.profiles.get(path);
    if (profile === undefined) throw new Error('no profile');
    const third = (to - from) / 3;
    for (const [a, b] of [
      [from, from + third],
      [from + third, to - third],
      [to - third, to],
    ] as const) {
      const [repair] = only(oldOn(real, { from: a, to: { is: 'station', station: b } }), 'repair');
      const steps = Array.from({ length: 4001 }, (_, i) => a + ((b - a) * i) / 4000);
      const covers = steps.flatMap((s) => profileAt(profile, s).cover?.depth ?? []);
      if (covers.length === 0) expect(repair?.facts.cover).toBeNull();
      else expect(repair?.facts.cover).toBeCloseTo(Math.min(...covers), 2);
    }
  });

  it('has the bends of that piece', () => {
    const [old] = site.paths;
    if (old === undefined) throw new Error('no pipe');
    const places = [
      [0, 0],
      [0, 3],
      [2, 5],
      [2, 10],
      [4, 12],
      [4, 20],
    ] as const;
    const vertices = places.map(([x, y], i) => ({ id: `v${i}`, spot: at(x, y) }));
    const bent = { ...site, features: [], paths: [{ ...old, vertices }] };
    const ways = oldOn(bent, { from: 7, to: { is: 'station', station: 12 } });
    const count = (is: Way['is']) => only(ways, is)[0]?.facts.bends.map((b) => [b.name, b.count]);
    expect(count('repair')).toEqual([['1/8', 1]]);
    const [whole] = only(oldOn(bent), 'repair');
    expect(whole?.facts.bends.map((b) => b.count)).toEqual([4]);
  });
});
