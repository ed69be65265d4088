import { addFeature, addPath, addReading, addRun, type Feature, newSite, type Site } from '@footmark/site';

export function placed(x: number, y: number) {
  return { by: 'coordinates' as const, x, y };
}

function thing(id: string, kind: 'tree' | 'pole', x: number, y: number): Feature {
  return { id, kind, name: '', vertices: [{ id: 'a', spot: placed(x, y) }], fields: {} };
}

/** A reading of the yard's one run, in metres of its counter. */
export function reading(site: Site, id: string, counter: number): Site {
  const made = { id, number: 1, counter, seen: 'crack' as const, passed: true, note: '' };
  return addReading(site, { run: 'run', reading: made });
}

/** A pole, an oak, a pipe and a run along it with one reading. */
export function smallYard(): Site {
  const empty = newSite({
    id: 'yard',
    name: 'Yard',
    createdAt: '2026-01-02T03:04:05Z',
    units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
  });
  const planted = addFeature(addFeature(empty, { feature: thing('pole', 'pole', 0, 0) }), {
    feature: thing('oak', 'tree', 4, 4),
  });
  const drained = addPath(planted, {
    path: {
      id: 'drain',
      name: '',
      state: 'existing',
      vertices: [
        { id: 'a', spot: placed(0, 0) },
        { id: 'b', spot: placed(20, 0) },
      ],
      bendRadius: 0,
      stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: 0.02 }],
    },
  });
  const looked = addRun(drained, {
    run: {
      id: 'run',
      letter: 'A',
      name: '',
      visit: null,
      entry: null,
      path: 'drain',
      direction: 'with-flow',
      branches: [],
      zero: { at: 'in-pipe', counter: 0 },
      scale: { by: 'said', factor: 1 },
      resolution: 0.03,
      head: { length: 0, zeroed: 'lens' },
      note: '',
      readings: [],
    },
  });
  return reading(looked, 'r1', 3);
}
