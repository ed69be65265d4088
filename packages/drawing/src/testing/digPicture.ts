import { excavationsOf, treeZones } from '@footmark/dig';
import { type Dig, derive, type Site } from '@footmark/site';
import type { DigDrawing } from '../dig/digDrawing';
import { draw } from '../draw';
import type { DrawOptions } from '../drawOptions';
import type { LinePrimitive } from '../primitive';
import { pointFeature, primitivesOn, pushed, straightSite } from './straightRun';

// A trench 2 m deep along the pipe north from (0, 10) to (0, 14), 1 m wide at the bottom.
const trench: Dig = {
  is: 'trench',
  id: 't',
  name: '',
  path: 'p',
  from: 10,
  to: 14,
  depth: 2,
  bottomWidth: 1,
  protection: 'slope',
  spoil: 'left',
  note: '',
};

export const oak = pointFeature('oak', 'tree', 4, 12, { trunkDiameter: 0.3 });

export function siteWith(dig: Partial<Dig> = {}, features = [oak]): Site {
  const site = straightSite({ features, runs: [pushed('A', [{ counter: 12 }])] });
  const digs = [{ ...trench, ...dig } as Dig]; // what is given fits a trench
  const withSoil = { ...site.digging, soil: 'c' as const, digs };
  return { ...site, digging: withSoil, rules: { ...site.rules, trees: 'as-4970' } };
}

export function digOf(site: Site): DigDrawing {
  const derived = derive(site);
  return { excavations: excavationsOf(site, derived, new Map()), treeZones: treeZones(site, derived).trees };
}

export const picture = (site: Site, options: DrawOptions = {}) =>
  draw(site, derive(site), { dig: digOf(site), ...options });
export const lines = (drawing: ReturnType<typeof draw>, layer: 'excavation' | 'root-zones' | 'clearances') =>
  primitivesOn(drawing, layer).filter((p): p is LinePrimitive => p.kind === 'line');
