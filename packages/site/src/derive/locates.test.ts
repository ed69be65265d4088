import { describe, expect, it } from 'vitest';
import type { Feature } from '../document/feature';
import type { Run } from '../document/run';
import type { Site } from '../document/site';
import { pipe, push, tee, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';

/** A locate at a place, tied to a reading of the run. */
function locate(x: number, y: number, reading: string | null = 'r1', fields: object = {}): Feature {
  const tied = reading === null ? {} : { reading: { run: 'run', reading } };
  return thing(`at-${x}-${y}`, 'locate', [typed(x, y)], { ...tied, ...fields });
}

function located(
  facts: Partial<Run>,
  readings: readonly number[],
  locates: readonly Feature[],
  parts: Pick<Site, 'features' | 'paths'> = tee(),
) {
  const { features, paths } = parts;
  const derived = derive(yard({ features: [...features, ...locates], paths, runs: [push(facts, readings)] }));
  return { ...derived, findings: derived.findings.filter((f) => f.code.startsWith('locate-')) };
}

const down = { entry: 'head', path: 'main' } as const;
const head = { length: 0.4, zeroed: 'lens' } as const;

describe('a locate', () => {
  it('lies ahead and to the right of where the computation has the sonde, a head’s length behind the lens', () => {
    // the pipe runs east: right of the flow is south; the sonde is computed at x = 7 − 0.4
    const { locates, findings } = located({ ...down, head }, [7], [locate(8, -0.5, 'r1', { depth: 1.2 })]);
    expect(findings).toEqual([]);
    expect(locates).toMatchObject([
      {
        feature: 'at-8--0.5',
        method: null,
        depth: 1.2,
        found: { x: 8, y: -0.5 },
        computed: { x: expect.closeTo(6.6, 12), y: expect.closeTo(0, 12) },
        distance: expect.closeTo(Math.hypot(1.4, 0.5), 12),
        along: expect.closeTo(1.4, 12),
        across: expect.closeTo(0.5, 12),
        weighed: false,
      },
    ]);
    expect(locates[0]?.mark.label).toBe('A1');
  });

  it('counts along the flow also when the camera goes against it', () => {
    const up = { entry: 'end', path: 'main', direction: 'against-flow', head } as const;
    const { locates } = located(up, [7], [locate(13, 0.2)]);
    // lens at x = 13, sonde behind it downstream at 13.4
    expect(locates[0]?.computed.x).toBeCloseTo(13.4, 12);
    expect(locates[0]?.along).toBeCloseTo(-0.4, 12);
    expect(locates[0]?.across).toBeCloseTo(-0.2, 12);
  });

  it('is compared with the pipe that the sonde is still in when the lens has turned off', () => {
    const { locates } = located({ entry: 'side', path: 'branch', head }, [5.3], [locate(10.1, 0.2)]);
    // the branch runs south into (10, 0): right of its flow is west
    expect(locates[0]?.computed).toEqual({ x: expect.closeTo(10, 12), y: expect.closeTo(0.1, 12) });
    expect(locates[0]?.along).toBeCloseTo(-0.1, 12);
    expect(locates[0]?.across).toBeCloseTo(-0.1, 12);
  });

  it('follows a bend: a quarter circle of 2 m about (8, −2)', () => {
    const parts = {
      ...tee(),
      paths: [pipe('main', [typed(0, 0), typed(10, 0), typed(10, -9)], { bendRadius: 2 })],
    };
    const half = 8 + Math.PI / 2; // in the middle of the arc
    const { locates } = located(down, [half], [locate(8, -2)], parts);
    const onArc = { x: 8 + Math.SQRT2, y: -2 + Math.SQRT2 };
    expect(locates[0]?.computed).toEqual({ x: expect.closeTo(onArc.x, 9), y: expect.closeTo(onArc.y, 9) });
    expect(locates[0]?.along).toBeCloseTo(0, 9);
    expect(locates[0]?.across).toBeCloseTo(2, 9); // the centre is square to the right
  });

  it('has the sonde at the entry while it hangs in the riser', () => {
    const { locates } = located({ ...down, head }, [0.1], [locate(1, 0)]);
    expect(locates[0]?.computed).toEqual({ x: 0, y: 0 });
  });

  it('is left out with a note when it is tied to no reading, or to one without a place', () => {
    const { locates, findings, accuracy } = located(
      down,
      [25],
      [locate(1, 0, null), locate(2, 0), locate(3, 0)],
    );
    expect(locates).toEqual([]);
    expect(accuracy).toBeNull();
    expect(findings).toMatchObject([
      { code: 'locate-has-no-reading', severity: 'note', at: { kind: 'feature', id: 'at-1-0' } },
      { code: 'locate-reading-has-no-place', severity: 'note', values: { reading: 'A1' } },
      { code: 'locate-reading-has-no-place' },
    ]);
  });
});

describe('a locate that the lines were fitted to', () => {
  const site = yard({
    ...tee(),
    features: [...tee().features, locate(7, 0.3), locate(7, 0.4)],
    runs: [push(down, [7])],
  });
  const main = site.paths.find((p) => p.id === 'main')?.vertices ?? [];
  const fitted: Site = {
    ...site,
    fit: {
      paths: [{ id: 'main', drawn: main, fitted: main, added: [] }],
      runs: [],
      counters: [],
      sigma0: null,
      dof: 0,
      evidence: [{ observation: 'locate/at-7-0.3', sigma: 0.1, residual: 0, standardized: 0 }],
    },
  };

  it('says so, and is no independent check', () => {
    const derived = derive(fitted);
    expect(derived.locates.map((l) => l.weighed)).toEqual([true, false]);
    expect(derived.accuracy?.independent).toBe(false);
    expect(derive(site).accuracy?.independent).toBe(true);
  });
});
