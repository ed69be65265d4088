import { concerns, standsInTheWay } from '@footmark/dig';
import { derive } from '@footmark/site';
import { expect, it } from 'vitest';
import { pipe, thing, typed } from '../../packages/site/src/testing/yard';
import { digSite, trench } from './digSite';

// A planned drain with a trench runs from a lot through an easement to a tap, which it comes out below, over a gas service and beside water.

const box = (id: string, kind: 'boundary' | 'easement', x0: number, x1: number) =>
  thing(id, kind, [typed(x0, -3), typed(x1, -3), typed(x1, 3), typed(x0, 3)]);
const level = (invert: number) => ({ level: { is: 'invert', level: invert } }) as const;
const site = digSite({
  things: {
    features: [
      box('lot', 'boundary', -5, 15),
      box('easement', 'easement', 10, 15),
      thing('tap', 'tap', [typed(20, 0)], { invert: 99 }),
      thing('gas', 'service', [typed(5, -9), typed(5, 9)], { carries: 'gas' }),
      thing('water', 'service', [typed(0, 0.4), typed(20, 0.4)], { carries: 'water', diameter: 0.02 }),
      thing('oak', 'tree', [typed(8, 2)], { trunkDiameter: 0.5 }),
    ],
    paths: [
      pipe(
        'p',
        [
          { spot: typed(0, 0), ...level(98) },
          { spot: typed(20, 0), ...level(97) },
        ],
        { state: 'proposed' },
      ),
    ],
  },
  digging: { digs: [trench(10, 40, { depth: 2 })] },
});
const { findings } = standsInTheWay(site, derive(site), null, '2026-05-10');
const said = (kind: 'feature' | 'path' | 'dig', id: string) =>
  findings.filter((f) => concerns(f, { kind, id })).map((f) => f.code);

it.each([
  ['easement', 'path-in-easement', 'path', 'p'],
  ['easement', 'dig-in-easement', 'dig', 'trench'],
  ['tap', 'end-below-tap', 'path', 'p'],
  ['gas', 'service-crossed', 'path', 'p'],
  ['water', 'water-depth-not-known', 'path', 'p'],
  ['oak', 'dig-takes-trunk', 'dig', 'trench'],
  ['oak', 'dig-in-root-zone', 'dig', 'trench'],
] as const)('of the %s it is said: %s, as of the %s', (id, code, kind, other) => {
  expect(said('feature', id)).toContain(code);
  expect(said(kind, other)).toContain(code);
});

it('whatever a finding names, it concerns, and nothing else', () => {
  const ids = (value: unknown): unknown[] => (Array.isArray(value) ? value : [value]);
  for (const finding of findings) {
    const { at, values } = finding;
    const named = [
      at.kind === 'site' ? null : 'id' in at ? at.id : null,
      ...Object.values(values).flatMap(ids),
    ];
    for (const { id } of site.features)
      expect([finding.code, id, concerns(finding, { kind: 'feature', id })]).toEqual([
        finding.code,
        id,
        named.includes(id),
      ]);
  }
});
