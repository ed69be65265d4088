import { describe, expect, it } from 'vitest';
import type { Run } from '../document/run';
import type { Site } from '../document/site';
import { seeded } from '../testing/dice';
import { push, tee, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';
import { placeOnRoute } from './runRoute';

describe('coverage', () => {
  const seen = (facts: Partial<Run>, readings: readonly number[]) =>
    derive(yard({ ...tee(), runs: [push(facts, readings)] })).coverage;

  it('reaches from the entry to the furthest reading, path by path', () => {
    expect(seen({ entry: 'side', path: 'branch' }, [9, 2])).toMatchObject([
      { path: 'branch', run: 'run', from: 0, to: 5, atFrom: 'began', atTo: 'turned' },
      { path: 'main', run: 'run', from: 10, to: 14, atFrom: 'turned', atTo: 'stopped' },
    ]);
    expect(
      seen({ entry: 'end', path: 'main', direction: 'against-flow', branches: ['branch'] }, [12]),
    ).toMatchObject([
      { path: 'main', run: 'run', from: 10, to: 20, atFrom: 'turned', atTo: 'began' },
      { path: 'branch', run: 'run', from: 3, to: 5, atFrom: 'stopped', atTo: 'turned' },
    ]);
  });

  it('is nothing without a reading in the pipe', () => {
    expect(seen({ entry: 'side', path: 'branch' }, [])).toEqual([]);
    expect(seen({ entry: 'side', path: 'branch', zero: { at: 'in-pipe', counter: 50 } }, [2])).toEqual([]);
  });
});

const down = { entry: 'head', path: 'main' } as const;
const up = { entry: 'end', path: 'main', direction: 'against-flow' } as const;

type Push = readonly [facts: Partial<Run>, readings: Parameters<typeof push>[1]];

function covered(pushes: readonly Push[], parts: Pick<Site, 'features' | 'paths'> = tee()) {
  const runs = pushes.map(([facts, readings = []], i) => {
    const letter = String.fromCharCode(65 + i);
    const named = readings.map((given, j) => ({
      ...(typeof given === 'number' ? { counter: given } : given),
      id: `${letter}${j + 1}`,
    }));
    return push({ id: letter, letter, ...facts }, named);
  });
  return derive(yard({ ...parts, runs }));
}

describe('what a run saw', () => {
  const reach = (facts: Partial<Run>, readings: Parameters<typeof push>[1]) =>
    covered([[{ ...down, ...facts }, readings]]).coverage.map((s) => [s.path, s.from, s.to]);

  it('goes on to the far end of something that goes on, in metres of cable', () => {
    const scale = { by: 'said', factor: 2 } as const;
    expect(reach({ scale }, [{ counter: 3, to: 5 }, 4])).toEqual([['main', 0, 10]]);
  });

  it('ends at the end of the way though something is counted past it', () => {
    expect(reach({}, [{ counter: 18, to: 25 }])).toEqual([['main', 0, 20]]);
  });

  it('is counted to the lens when the tail of the head stood at the zero', () => {
    expect(reach({ head: { length: 0.5, zeroed: 'tail' } }, [6])).toEqual([['main', 0, 6.5]]);
    expect(reach({ head: { length: 0.5, zeroed: 'lens' } }, [6])).toEqual([['main', 0, 6]]);
  });

  it('is nothing of a pipe that is only proposed', () => {
    const { features, paths } = tee();
    const parts = { features, paths: paths.map((p) => ({ ...p, state: 'proposed' as const })) };
    const { coverage, lookedAt, unseen } = covered([[down, [6]]], parts);
    expect([coverage, lookedAt.size, unseen]).toEqual([[], 0, []]);
  });
});

describe('what was looked at', () => {
  const looked = (pushes: readonly Push[], path = 'main') =>
    covered(pushes)
      .lookedAt.get(path)
      ?.map((s) => [s.from, s.to, s.runs.join('')]);

  it('is the whole length, by the runs that saw each piece', () => {
    const pushes: readonly Push[] = [
      [down, [8]],
      [up, [14]],
      [{ entry: 'side', path: 'branch' }, [7]],
    ];
    expect(looked(pushes)).toEqual([
      [0, 6, 'A'],
      [6, 8, 'AB'],
      [8, 10, 'B'],
      [10, 12, 'BC'],
      [12, 20, 'B'],
    ]);
    expect(looked(pushes, 'branch')).toEqual([[0, 5, 'C']]);
    expect(looked([])).toEqual([[0, 20, '']]);
  });

  it('has no piece that is only rounding', () => {
    expect(
      looked([
        [down, [8]],
        [down, [8.0004]],
        [up, [11.9993]],
        [down, [19.9995]],
      ]),
    ).toEqual([
      [0, 8, 'ABD'],
      [8, 20, 'CD'],
    ]);
  });

  it('agrees with walking every run, two centimetres at a time', () => {
    const random = seeded(7);
    const STEP_M = 0.02;
    const entries = ['head', 'side', 'mid', 'end'] as const;
    const { features, paths } = tee();
    const parts = { features: [...features, thing('mid', 'cleanout', [typed(6.4, 0)])], paths };
    const wrong: string[] = [];
    for (let k = 0; k < 15; k++) {
      const pushes = Array.from({ length: 1 + Math.floor(4 * random()) }, (): Push => {
        const entry = entries[Math.floor(4 * random())] ?? 'head';
        const against = entry === 'end' || (entry === 'mid' && random() < 0.5);
        return [
          {
            entry,
            path: entry === 'side' ? 'branch' : 'main',
            direction: against ? 'against-flow' : 'with-flow',
            branches: entry === 'end' && random() < 0.5 ? ['branch'] : [],
          },
          [14 * random(), 14 * random()],
        ];
      });
      const derived = covered(pushes, parts);
      const walked = new Map<string, Set<string>>();
      for (const [run, route] of derived.routes) {
        const placed = derived.marks.filter((m) => m.run.id === run && m.place !== null);
        const furthest = Math.max(0, ...placed.map((m) => m.trace.along));
        for (let along = STEP_M / 2; along < furthest; along += STEP_M / 4) {
          const place = placeOnRoute(route, derived.paths, along);
          if (place === null) break;
          const bin = `${place.path} ${Math.floor(place.station / STEP_M)}`;
          walked.set(bin, (walked.get(bin) ?? new Set()).add(run));
        }
      }
      for (const [path, stretches] of derived.lookedAt) {
        expect(stretches[0]?.from).toBe(0);
        expect(stretches.at(-1)?.to).toBe(derived.paths.get(path)?.length);
        for (const [i, s] of stretches.entries()) {
          expect(s.to).toBeGreaterThan(s.from);
          if (i > 0) expect(s.from).toBe(stretches[i - 1]?.to);
          // away from the cuts by more than a step
          for (let bin = Math.ceil(s.from / STEP_M) + 2; (bin + 3) * STEP_M < s.to; bin++) {
            const seen = [...(walked.get(`${path} ${bin}`) ?? [])].sort().join();
            if (seen !== [...s.runs].sort().join()) wrong.push(`${path} at ${bin * STEP_M}: ${seen}`);
          }
        }
      }
    }
    expect(wrong).toEqual([]);
  });
});
