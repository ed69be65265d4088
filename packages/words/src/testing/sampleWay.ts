import type { EdgeClearance } from '@footmark/dig';
import type { Way } from '@footmark/reroute';
import { need } from './need';
import { yard } from './weighedYard';

const FT = 0.3048;

export const clearance: EdgeClearance = {
  of: { is: 'path', id: 'p1', state: 'existing' },
  feature: 'f3',
  kind: 'cleanout',
  distance: 0.5,
  from: { x: 0, y: 0 },
  at: { x: 0, y: 0.5 },
  station: 3,
  toCentre: true,
  rule: 'building',
  required: 0.6096,
  verdict: 'misses',
};

export const way: Way = {
  id: 'new-1',
  is: 'new',
  route: null,
  onto: null,
  path: need(yard.paths[0]),
  digs: [],
  bored: [{ from: 3, to: 6 }],
  branches: ['p2'],
  facts: {
    length: 60 * FT,
    developed: 60 * FT,
    bends: [{ name: '1/8', turn: Math.PI / 4, count: 2 }],
    fall: { required: 0.8 * FT, available: -1.4 * FT },
    cover: 3 * FT,
    cleanouts: { asked: 2, missing: [12 * FT] },
    nearest: [clearance],
    trees: [{ tree: 'f2', length: 3, share: 0.14, side: 'left' }],
    dug: { length: 5, deepest: 1.5, volume: 6, paved: 4, lawn: 3, beyond: 2 },
    services: ['f5'],
    shared: 1,
    others: 2,
    public: 3,
    unknownLand: 4,
    findings: [],
  },
};
