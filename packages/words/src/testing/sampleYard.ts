import { type Derived, derive, openSiteValue, type Site, type Units } from '@footmark/site';

const FT = 0.3048;

/** A yard for the tests of every language: a house, a tree, a cleanout without a name, a lateral with a branch, two runs. Invented. */
export function sampleYard(units: Units): { readonly site: Site; readonly derived: Derived } {
  const at = (x: number, y: number) => ({ by: 'coordinates', x: x * FT, y: y * FT });
  const corner = (id: string, x: number, y: number) => ({ id, spot: at(x, y) });
  const opened = openSiteValue({
    format: 'footmark-site',
    version: 1,
    id: 'yard',
    name: 'Sample yard',
    address: '',
    note: '',
    createdAt: '2026-05-04T08:00:00Z',
    units,
    frame: { north: { by: 'assumed' }, control: [] },
    underlays: [],
    tape: { length: 100 * FT, sigma: 0.02 },
    entryReach: 3 * FT,
    features: [
      {
        id: 'f1',
        kind: 'building',
        name: 'House',
        vertices: [corner('a', 0, 0), corner('b', 30, 0), corner('c', 30, 25), corner('d', 0, 25)],
        fields: {},
      },
      {
        id: 'f2',
        kind: 'tree',
        name: 'Maple',
        vertices: [corner('a', 45, 10)],
        fields: { trunkDiameter: 0.4 },
      },
      { id: 'f3', kind: 'cleanout', name: '', vertices: [corner('a', 32, 0)], fields: {} },
      { id: 'f4', kind: 'pole', name: 'Pole', vertices: [corner('a', 60, -40)], fields: {} },
      {
        id: 'f5',
        kind: 'fence',
        name: 'Fence',
        vertices: [corner('a', 70, -40), corner('b', 70, 40)],
        fields: {},
      },
    ],
    paths: [
      {
        id: 'p1',
        name: 'Lateral',
        state: 'existing',
        vertices: [corner('a', 32, 0), corner('b', 32, -50), corner('c', 32, -90)],
        bendRadius: 0.2,
        stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: 0.125 }],
      },
      {
        id: 'p2',
        name: '',
        state: 'existing',
        vertices: [corner('a', 52, -50), { id: 'b', spot: { by: 'at', point: { of: 'p1', at: 'b' } } }],
        bendRadius: 0.2,
        stretches: [{ from: 0, material: 'plastic', diameter: 0.1, slope: 0 }],
      },
    ],
    runs: [
      {
        ...run('r1', 'A'),
        entry: 'f3',
        path: 'p1',
        zero: { at: 'rim', counter: 1 * FT, riser: 4 * FT, sweepRadius: 0.75 * FT },
        scale: 1.002,
        readings: [
          reading('q1', 1, 20),
          { ...reading('q2', 2, 40), newZero: 0 },
          reading('q3', 3, 30),
          reading('q4', 4, 94.2),
        ],
      },
      {
        ...run('r2', 'B'),
        entry: 'f3',
        path: 'p1',
        zero: { at: 'in-pipe', counter: 0 },
        readings: [reading('q5', 1, 12.25)],
      },
    ],
  });
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return { site: opened.site, derived: derive(opened.site) };
}

function run(id: string, letter: string) {
  return { id, letter, name: '', direction: 'with-flow', branches: [], scale: 1, resolution: 0.03, note: '' };
}

function reading(id: string, number: number, feet: number) {
  return { id, number, counter: feet * FT, seen: 'roots', passed: true, note: '' };
}
