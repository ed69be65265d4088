import {
  derive,
  type Feature,
  newSite,
  type Path,
  type Reading,
  type Run,
  type RunsFit,
  type SearchZone,
  type Site,
} from '@footmark/site';
import { draw } from '../draw';
import type { Drawing, LayerName } from '../drawing';
import type { DrawOptions } from '../drawOptions';
import type { Label } from '../label';
import type { Primitive } from '../primitive';

// A level pipe from (0, 0) straight north to (0, 30), a cleanout at its head, and runs pushed down it: a reading's place is (0, counter).

const at = (x: number, y: number) => ({ by: 'coordinates', x, y }) as const;

export const lateral: Path = {
  id: 'p',
  name: '',
  state: 'existing',
  vertices: [
    { id: 'a', spot: at(0, 0) },
    { id: 'b', spot: at(0, 30) },
  ],
  bendRadius: 0,
  stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: 0 }],
};

export function pushed(
  letter: string,
  readings: readonly (Partial<Reading> & { counter: number })[],
  facts: Partial<Run> = {},
): Run {
  return {
    id: letter,
    letter,
    name: '',
    visit: null,
    entry: 'head',
    path: 'p',
    direction: 'with-flow',
    branches: [],
    zero: { at: 'in-pipe', counter: 0 },
    scale: { by: 'said', factor: 1 },
    resolution: 0,
    head: { length: 0, zeroed: 'lens' },
    note: '',
    readings: readings.map((given, i) => ({
      id: `${letter}${i + 1}`,
      number: i + 1,
      seen: 'crack',
      passed: true,
      note: '',
      ...given,
    })),
    ...facts,
  };
}

export function pointFeature(
  id: string,
  kind: Feature['kind'],
  x: number,
  y: number,
  fields: object = {},
): Feature {
  return { id, kind, name: '', vertices: [{ id: 'a', spot: at(x, y) }], fields } as Feature; // the caller's fields fit the kind
}

export function straightSite(parts: Partial<Pick<Site, 'features' | 'paths' | 'runs' | 'pairs'>>): Site {
  const empty = newSite({
    id: 's',
    name: '',
    createdAt: '2026-01-01T00:00:00Z',
    units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
  });
  const { features = [], ...others } = parts;
  return {
    ...empty,
    paths: [lateral],
    ...others,
    features: [pointFeature('head', 'cleanout', 0, 0), ...features],
  };
}

/** A fit that says only what it is given. */
export function fitOf(parts: Partial<RunsFit>): RunsFit {
  return {
    status: 'fitted',
    loose: [],
    marks: new Map(),
    observations: [],
    aside: [],
    blunders: [],
    runs: [],
    paths: [],
    sigma0: null,
    dof: 0,
    test: null,
    iterations: 0,
    counters: new Map(),
    taken: false,
    pending: 0,
    ...parts,
  };
}

export function zoneOf(parts: Partial<SearchZone>): SearchZone {
  return {
    semiMajor: 2,
    semiMinor: 1,
    azimuth: 0,
    along: 2,
    across: 1,
    hole: { length: 4, width: 2.1 },
    makeUp: [],
    ...parts,
  };
}

export function drawn(site: Site, options: DrawOptions = {}): Drawing {
  return draw(site, derive(site), options);
}

export function primitivesOn(drawing: Drawing, layer: LayerName): readonly Primitive[] {
  return drawing.layers.find((l) => l.name === layer)?.primitives ?? [];
}

export function labelsOn(drawing: Drawing, layer: LayerName): readonly Label[] {
  return drawing.layers.find((l) => l.name === layer)?.labels ?? [];
}
