import { describe, expect, it } from 'vitest';
import type { Run } from '../document/run';
import type { Site } from '../document/site';
import type { Ref } from '../document/spot';
import { pipe, push, ref, tee, thing, typed, yard } from '../testing/yard';
import { derive } from './derive';

function routed(
  facts: Partial<Run>,
  readings: Parameters<typeof push>[1] = [],
  parts: Partial<Site> = tee(),
) {
  const derived = derive({ ...yard(), ...parts, runs: [push(facts, readings)] });
  return {
    legs: derived.routes.get('run')?.legs.map((l) => [l.path, l.fromStation, l.toStation]),
    length: derived.routes.get('run')?.length,
    places: derived.marks.map((m) => m.place && [m.place.path, m.place.station]),
    points: derived.marks.map((m) => m.place?.at),
    findings: derived.findings.filter((f) => !/tie/.test(f.code)),
  };
}

describe('a run that was zeroed at a point of the plan', () => {
  const zero = (of: string, at = 'a') => ({ zero: { at: 'point', counter: 4, point: ref(of, at) } as const });

  it('counts from there, with the flow and against it, on the path or through a branch', () => {
    const down = routed({ entry: 'head', path: 'main', ...zero('main', 'b') }, [4, 7]);
    expect(down.findings).toEqual([]);
    expect(down.places).toEqual([
      ['main', 10],
      ['main', 13],
    ]);
    const against: Partial<Run> = { direction: 'against-flow', branches: ['branch'] };
    const up = routed({ entry: 'end', path: 'main', ...against, ...zero('branch', 'b') }, [4, 6]);
    expect(up.places.at(-1)).toEqual(['branch', 3]);
    // the cleanout over the head of the branch: 10 along the main and 5 up the branch
    const over = routed({ entry: 'end', path: 'main', ...against, ...zero('side') }, [4]);
    expect(over.places).toEqual([['branch', 0]]);
  });

  it('says when that point is not on its way, and then counts from the entry', () => {
    const { findings, places } = routed({ entry: 'head', path: 'main', ...zero('side') }, [7]);
    expect(findings).toMatchObject([
      { code: 'zero-point-not-on-run', severity: 'error', at: { kind: 'run', id: 'run' } },
    ]);
    expect(places).toEqual([['main', 3]]);
  });
});

describe('a point that a reading saw', () => {
  it('is told when it is not on the way', () => {
    const seen = (seenAt: Ref) => routed({ entry: 'head', path: 'main' }, [{ counter: 7, seenAt }]).findings;
    expect(seen(ref('main', 'b'))).toEqual([]);
    expect(seen(ref('side'))).toMatchObject([
      { code: 'seen-point-not-on-run', severity: 'warning', at: { kind: 'reading', run: 'run', id: 'r1' } },
    ]);
  });
});

describe('a run with the flow', () => {
  it('goes down its branch and on through the junction', () => {
    const { legs, length, places, points } = routed({ entry: 'side', path: 'branch' }, [0, 3, 5, 7, 15]);
    expect(legs).toEqual([
      ['branch', 0, 5],
      ['main', 10, 20],
    ]);
    expect(length).toBe(15);
    expect(places).toEqual([
      ['branch', 0],
      ['branch', 3],
      ['branch', 5],
      ['main', 12],
      ['main', 20],
    ]);
    expect(points[1]).toEqual({ x: 10, y: 2 });
    expect(points[3]).toEqual({ x: 12, y: expect.closeTo(0, 12) });
  });

  it('starts where its entry stands', () => {
    const features = [thing('mid', 'cleanout', [typed(4, 0)])];
    expect(routed({ entry: 'mid', path: 'main' }, [3], { ...tee(), features }).places).toEqual([['main', 7]]);
  });

  it('starts at the bend that is tied to its entry, however far the arc passes beside it', () => {
    const features = [thing('corner', 'cleanout', [typed(0, 10)])];
    const vertices = [typed(0, 0), { by: 'at', point: ref('corner') } as const, typed(10, 10)];
    const { legs, findings } = routed({ entry: 'corner', path: 'main' }, [], {
      features,
      paths: [pipe('main', vertices, { bendRadius: 3 })],
    });
    expect(findings).toEqual([]);
    // 7 m to the arc, and half of its 3·π/2
    expect(legs?.[0]?.[1]).toBeCloseTo(7 + (3 * Math.PI) / 4, 9);
  });

  it('counts the slope: 5 of cable for 4 of plan', () => {
    const paths = [
      pipe('main', [typed(0, 0), typed(20, 0)], {
        stretches: [
          { from: 0, material: 'clay', diameter: 0.1, slope: 0.75 },
          { from: 12, material: 'clay', diameter: 0.1, slope: 0 },
        ],
      }),
    ];
    const { places, length } = routed({ entry: 'head', path: 'main' }, [5, 15, 17], { ...tee(), paths });
    expect(length).toBeCloseTo(23, 12);
    expect(places.map((p) => p?.[1])).toEqual([4, 12, 14].map((s) => expect.closeTo(s, 9)));
  });
});

describe('a run against the flow', () => {
  const up = { entry: 'end', path: 'main', direction: 'against-flow' } as const;

  it('stays on its path when it turned nowhere', () => {
    const { legs, places } = routed(up, [2, 18]);
    expect(legs).toEqual([['main', 20, 0]]);
    expect(places).toEqual([
      ['main', 18],
      ['main', 2],
    ]);
  });

  it('turns into the branch that it took', () => {
    const { legs, places, points } = routed({ ...up, branches: ['branch'] }, [10, 12, 15]);
    expect(legs).toEqual([
      ['main', 20, 10],
      ['branch', 5, 0],
    ]);
    expect(places).toEqual([
      ['main', 10],
      ['branch', 3],
      ['branch', 0],
    ]);
    expect(points[1]).toEqual({ x: 10, y: 2 });
  });

  it('cannot turn into a branch that joins behind it', () => {
    const features = [thing('mid', 'cleanout', [typed(4, 0)])];
    const { findings, legs } = routed({ ...up, entry: 'mid', branches: ['branch'] }, [], {
      ...tee(),
      features,
    });
    expect(findings).toMatchObject([
      { code: 'branch-not-on-run', severity: 'error', values: { branch: 'branch' } },
    ]);
    expect(legs).toEqual([['main', 4, 4]]);
  });

  it('cannot turn into a path that joins another', () => {
    const { findings } = routed({ ...up, branches: ['branch', 'branch'] });
    expect(findings).toMatchObject([{ code: 'branch-not-on-run' }]);
  });
});

describe('a branch list that makes no sense', () => {
  const up = { entry: 'end', path: 'main', direction: 'against-flow' } as const;

  it('puts no mark on a pipe that the camera did not follow', () => {
    const stray = pipe('stray', [typed(30, 5), typed(30, 0)]);
    const parts = { ...tee(), paths: [...tee().paths, stray] };
    const alone = routed({ ...up, branches: ['stray'] }, [0, 14], parts);
    expect(alone.places).toEqual([['main', 20], null]);
    expect(alone.findings.map((f) => [f.code, f.severity])).toEqual([
      ['branch-not-on-run', 'error'],
      ['reading-off-known-way', 'error'],
    ]);
    expect(alone.findings[1]?.values).toEqual({ beyond: 14, length: 0 });
  });

  it('keeps the way up to where it still made sense', () => {
    const { legs, places } = routed({ ...up, branches: ['branch', 'branch'] }, [8, 10, 12]);
    expect(legs).toEqual([
      ['main', 20, 10],
      ['branch', 5, 5],
    ]);
    expect(places).toEqual([['main', 12], ['main', 10], null]);
  });
});

describe('a drop on the way', () => {
  const paths = [pipe('main', [typed(0, 0), { spot: typed(10, 0), drop: 2 }, typed(20, 0)])];
  const parts = { ...tee(), paths };

  it('takes cable while the plan stands still', () => {
    const { places, length, findings } = routed({ entry: 'head', path: 'main' }, [10, 11, 12, 13], parts);
    expect(length).toBe(22);
    expect(places.map((p) => p?.[1])).toEqual([10, 10, 10, 11]);
    expect(findings).toMatchObject([{ code: 'reading-in-drop', severity: 'note', at: { id: 'r2' } }]);
  });

  it('takes the same cable upwards', () => {
    const { places } = routed({ entry: 'end', path: 'main', direction: 'against-flow' }, [9, 11, 13], parts);
    expect(places.map((p) => p?.[1])).toEqual([11, 10, 9]);
  });

  it('at the head of the path can be gone up, and not beyond', () => {
    const headed = [pipe('main', [{ spot: typed(0, 0), drop: 3 }, typed(20, 0)])];
    const { places, length } = routed(
      { entry: 'end', path: 'main', direction: 'against-flow' },
      [20, 22, 24],
      {
        ...tee(),
        paths: headed,
      },
    );
    expect(length).toBe(23);
    expect(places.map((p) => p?.[1])).toEqual([0, 0, undefined]);
  });
});

describe('a run that leads nowhere', () => {
  it('has no entry, or no path', () => {
    expect(routed({ path: 'main' }).findings).toMatchObject([{ code: 'run-has-no-entry' }]);
    expect(routed({ entry: 'head' }).findings).toMatchObject([{ code: 'run-has-no-path' }]);
  });

  it('has a path without a curve', () => {
    const paths = [pipe('main', [typed(0, 0), typed(0, 0), typed(5, 0)])];
    const { findings, legs } = routed({ entry: 'head', path: 'main' }, [1], { ...tee(), paths });
    expect(findings).toMatchObject([
      { code: 'path-leg-has-no-length', values: { leg: 1 } },
      { code: 'path-cannot-be-computed', values: { path: 'main' } },
    ]);
    expect(legs).toBeUndefined();
  });

  it('has its entry off the path, and the finding says how far', () => {
    const features = [thing('off', 'cleanout', [typed(5, 3)])];
    const { findings, legs } = routed({ entry: 'off', path: 'main' }, [1], { ...tee(), features });
    expect(legs).toBeUndefined();
    expect(findings).toMatchObject([
      {
        code: 'entry-not-on-path',
        severity: 'error',
        values: { entry: 'off', path: 'main', distance: expect.closeTo(3, 9) },
      },
    ]);
    expect(findings[0]?.values).toHaveProperty('reach', expect.closeTo(0.9144, 9));
  });

  it('is helped when its entry stands beside the path', () => {
    const features = [thing('near', 'cleanout', [typed(5, 0.5)])];
    const { findings, places } = routed({ entry: 'near', path: 'main' }, [1], { ...tee(), features });
    expect(places).toEqual([['main', 6]]);
    expect(findings).toMatchObject([
      { code: 'entry-beside-path', severity: 'note', values: { distance: expect.closeTo(0.5, 9) } },
    ]);
  });

  it('has a reading past the end: nothing is placed, and the finding says by how much', () => {
    const { places, findings } = routed({ entry: 'side', path: 'branch' }, [15, 16.5]);
    expect(places[1]).toBeNull();
    expect(findings).toMatchObject([
      {
        code: 'reading-past-end',
        severity: 'error',
        at: { run: 'run', id: 'r2' },
        values: { beyond: 1.5, length: 15, path: 'main' },
      },
    ]);
  });
});

describe('a branch', () => {
  it('joins at the station of the vertex that it ends at', () => {
    const derived = derive(yard(tee()));
    expect(derived.paths.get('branch')?.joins).toEqual({ path: 'main', vertex: 'b', station: 10 });
    expect(derived.paths.get('main')?.joins).toBeNull();
  });

  it('that ends at a feature joins nothing', () => {
    const paths = [pipe('main', [typed(0, 0), { spot: { by: 'at', point: ref('end') } }])];
    expect(derive(yard({ ...tee(), paths })).paths.get('main')?.joins).toBeNull();
  });
});
