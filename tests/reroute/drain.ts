// What the tests of ways start from: the samples, and a straight drain with things around it. Invented.
import { readFileSync } from 'node:fs';
import { type RerouteAsk, requestOf, usualAsk, type Way, waysOf } from '@footmark/reroute';
import { findRoutes } from '@footmark/route';
import {
  type Derived,
  derive,
  type Feature,
  newSite,
  openSite,
  type Path,
  type Site,
  type Spot,
} from '@footmark/site';

export const TODAY = '2026-06-01';
export const SAMPLES = ['front-terrace', 'rear-alley'] as const;

export function sample(name: (typeof SAMPLES)[number]): Site {
  const opened = openSite(
    readFileSync(new URL(`../../packages/site/samples/${name}.json`, import.meta.url), 'utf8'),
  );
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return opened.site;
}

export const at = (x: number, y: number): Spot => ({ by: 'coordinates', x, y });

export function thing(
  id: string,
  kind: Feature['kind'],
  places: readonly (readonly [number, number])[],
  fields = {},
) {
  const vertices = places.map(([x, y], i) => ({ id: `v${i}`, spot: at(x, y) }));
  return { id, kind, name: '', vertices, fields } as Feature;
}

/** A pipe of 20 m to the north with levels at both ends, and things around it. */
export function straightDrain(features: readonly Feature[] = [], fall = 0.4): Site {
  const path: Path = {
    id: 'p',
    name: 'Drain',
    state: 'existing',
    bendRadius: 0.2286,
    vertices: [
      { id: 'a', spot: at(0, 0), level: { is: 'invert', level: 10 } },
      { id: 'b', spot: at(0, 20), level: { is: 'invert', level: 10 - fall } },
    ],
    stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: 0.0104 }],
  };
  return {
    ...newSite({
      id: 's',
      name: '',
      createdAt: '2026-01-01T00:00:00Z',
      units: { length: 'ft', diameter: 'in', direction: 'bearing' },
    }),
    features: [...features],
    paths: [path],
  };
}

export function asked(derived: Derived, change: Partial<RerouteAsk> = {}): RerouteAsk {
  const usual = usualAsk(derived);
  if (usual === null) throw new Error('no pipe');
  return { ...usual, ...change };
}

export function stationsAsked(derived: Derived) {
  const { path, from } = asked(derived);
  return { path, from, to: derived.paths.get(path)?.length ?? 0 };
}

export function waysOn(site: Site, change: Partial<RerouteAsk> = {}) {
  const derived = derive(site);
  const ask = asked(derived, change);
  const rerouting = requestOf(site, derived, ask);
  if (!rerouting.ok) throw new Error(rerouting.code);
  const found = findRoutes(rerouting.value.request);
  const routes = found.is === 'found' ? found.routes : [];
  return {
    found,
    request: rerouting.value.request,
    minded: rerouting.value.minded,
    ways: waysOf(site, derived, ask, rerouting.value, routes, TODAY),
  };
}

/** AS 4970-2009, 3.3.5: (D × 50)^0.42 × 0.64, at least 1.5 m; wider than three diameters for these trunks. */
export const heldRoots = (diameter: number) => Math.max(1.5, (diameter * 50) ** 0.42 * 0.64);

/** Of the old pipe alone, without a search. */
export function oldOn(site: Site, change: Partial<RerouteAsk> = {}) {
  const derived = derive(site);
  const ask = asked(derived, change);
  const rerouting = requestOf(site, derived, ask);
  if (!rerouting.ok) throw new Error(rerouting.code);
  return waysOf(site, derived, ask, rerouting.value, [], TODAY);
}

export const only = (ways: readonly Way[], is: Way['is']) => ways.filter((w) => w.is === is);
