import type { Feature } from '../document/feature';
import type { Path, PathVertex } from '../document/path';
import type { Reading, Run } from '../document/run';
import type { Site } from '../document/site';
import type { Ref, Spot } from '../document/spot';
import { newSite } from '../edits/siteEdits';
import { letters } from '../edits/vertexEdits';
import type { FeatureKind } from '../kinds/featureKinds';

// Small yards for tests, in whole metres, with every name that a test does not care about filled in.

export const DEGREE = Math.PI / 180;

export function ref(of: string, at = 'a'): Ref {
  return { of, at };
}

export function typed(x: number, y: number): Spot {
  return { by: 'coordinates', x, y };
}

/** A feature whose vertices are a, b, c … at these spots. */
export function thing(id: string, kind: FeatureKind, spots: readonly Spot[], fields: object = {}): Feature {
  const vertices = spots.map((spot, i) => ({ id: letters(i).toLowerCase(), spot }));
  return { id, kind, name: '', vertices, fields } as Feature; // the caller's fields fit the kind
}

export function square(id: string, kind: FeatureKind, x: number, y: number, side: number): Feature {
  return thing(id, kind, [typed(x, y), typed(x + side, y), typed(x + side, y + side), typed(x, y + side)]);
}

/** A level pipe with sharp corners, its vertices a, b, c … */
export function pipe(
  id: string,
  spots: readonly (Spot | Omit<PathVertex, 'id'>)[],
  facts: Partial<Path> = {},
): Path {
  const vertices = spots.map((given, i) => ({
    id: letters(i).toLowerCase(),
    ...('by' in given ? { spot: given } : given),
  }));
  return {
    id,
    name: '',
    state: 'existing',
    vertices,
    bendRadius: 0,
    stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: 0 }],
    ...facts,
  };
}

/** A run whose readings r1, r2 … stand at these counter values; a reading may be given in part. */
export function push(
  facts: Partial<Run>,
  readings: readonly (number | (Partial<Reading> & { counter: number }))[] = [],
): Run {
  return {
    id: 'run',
    letter: 'A',
    name: '',
    visit: null,
    entry: null,
    path: null,
    direction: 'with-flow',
    branches: [],
    zero: { at: 'in-pipe', counter: 0 },
    scale: { by: 'said', factor: 1 },
    resolution: 0.03,
    head: { length: 0, zeroed: 'lens' },
    note: '',
    readings: readings.map((given, i) => ({
      id: `r${i + 1}`,
      number: i + 1,
      seen: 'crack',
      passed: true,
      note: '',
      ...(typeof given === 'number' ? { counter: given } : given),
    })),
    ...facts,
  };
}

export function yard(
  parts: Partial<Pick<Site, 'features' | 'paths' | 'visits' | 'runs' | 'pairs' | 'tape'>> = {},
): Site {
  const empty = newSite({
    id: 'yard',
    name: 'Yard',
    createdAt: '2026-01-02T03:04:05Z',
    units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
  });
  return { ...empty, ...parts };
}

/**
 * A main from (0, 0) by (10, 0) to (20, 0) and a branch from (10, 5) that joins it at (10, 0); a cleanout at the head of
 * each and a manhole at the end.
 */
export function tee(): Pick<Site, 'features' | 'paths'> {
  return {
    features: [
      thing('head', 'cleanout', [typed(0, 0)]),
      thing('side', 'cleanout', [typed(10, 5)]),
      thing('end', 'manhole', [typed(20, 0)]),
    ],
    paths: [
      pipe('main', [typed(0, 0), typed(10, 0), typed(20, 0)]),
      pipe('branch', [typed(10, 5), { spot: { by: 'at', point: ref('main', 'b') } }]),
    ],
  };
}
