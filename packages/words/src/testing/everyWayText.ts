import type { RouteFault } from '@footmark/route';
import type { Words } from '../words';
import type { SaidBy } from './everyName';
import { way } from './sampleWay';
import { units, yard } from './weighedYard';

const cover = { path: 'p1', state: 'proposed', station: 0, cover: 0.9, sure: true } as const;
const covers = (['cover-too-thin', 'cover-above-frost'] as const).map((code) => ({
  code,
  severity: 'should' as const,
  at: { kind: 'path' as const, id: 'p1' },
  values: { ...cover, asked: 1.2 },
  place: null,
  rule: null,
}));

/** What is said of ways and routes in the sample yard. */
export const everyWayText = {
  wayText: (w) => [
    w.wayText(way, yard),
    w.wayText({ ...way, bored: [], facts: { ...way.facts, bends: [], trees: [] } }, yard),
  ],
  wayRows: (w) =>
    [
      way,
      {
        ...way,
        is: 'in-place' as const,
        bored: [],
        branches: [],
        facts: {
          ...way.facts,
          fall: { required: 1, available: null },
          cover: null,
          nearest: [],
          trees: [],
          services: [],
          bends: [],
          dug: { length: 0, deepest: null, volume: null, paved: null, lawn: 0, beyond: 0 },
        },
      },
      { ...way, path: { ...way.path, stretches: [] } },
      {
        ...way,
        is: 'repair' as const,
        facts: { ...way.facts, cleanouts: { asked: 2, missing: [] }, findings: covers },
      },
    ].flatMap((each) => w.wayRows(each, yard).flatMap(({ name, text }) => [name, text])),
  priceItemName: (w) =>
    (['pipe', 'bored', 'bend', 'cleanout', 'dug', 'paved', 'lawn'] as const).map((item) =>
      w.priceItemName(item, units),
    ),
  priceText: (w) => [w.priceText(null, units), w.priceText({ total: 900, without: ['bend', 'dug'] }, units)],
  blockedText: (w) => [
    ...(['ground', 'obstacles', 'together'] as const).map((code) =>
      w.blockedText({ code, obstacles: ['f2', 'roots/f2'] }, yard),
    ),
    ...(['fall', 'headings', 'bends', 'straight'] as const).map((code) => w.blockedText({ code }, yard)),
  ],
  relaxationText: (w) =>
    [
      { is: 'less-clearance', obstacle: 'f3', from: 3, to: 2 } as const,
      { is: 'through', obstacle: 'roots/f2' } as const,
      { is: 'less-fall', from: 0.02, to: 0.01 } as const,
      { is: 'any-heading', end: 'end' } as const,
      { is: 'more-bends', from: 3, to: 4 } as const,
      { is: 'no-straight', from: 0.3 } as const,
    ].map((change) =>
      w.relaxationText(
        {
          change,
          route: { points: [], bends: [], end: 'end', cost: { length: 18, areas: [], bends: 0, total: 18 } },
        },
        yard,
      ),
    ),
  routeProblemText: (w) =>
    [
      w.routeProblemText({ code: 'start-inside', values: { obstacle: 'f3', depth: 0.6 } }, yard),
      w.routeProblemText({ code: 'end-inside', values: { end: 'end', obstacle: 'f1', depth: 0.6 } }, yard),
      w.routeProblemText({ code: 'start-is-end', values: { end: 'end' } }, yard),
      w.routeProblemText({ code: 'end-not-lower', values: { end: 'end', rise: 0.1 } }, yard),
      w.routeProblemText({ code: 'end-not-lower', values: { end: 'end', rise: 0 } }, yard),
      w.routeProblemText(
        { code: 'too-little-fall', values: { end: 'end', needed: 0.5, available: 0.3 } },
        yard,
      ),
      w.routeProblemText({ code: 'no-ground', values: { obstacle: 'f1', clearance: 3, most: 0.6 } }, yard),
      w.routeProblemText({ code: 'no-bends', values: {} }, yard),
      w.routeProblemText({ code: 'no-end', values: {} }, yard),
      w.routeProblemText({ code: 'bend-turn', values: { bend: 'b', turn: 4 } }, yard),
      w.routeProblemText({ code: 'bend-laying', values: { bend: 'b', laying: 1, tangent: 2 } }, yard),
    ].flatMap(({ text, cure }) => [text, cure]),
  routeFaultText: (w) =>
    [
      { code: 'wrong-turn', values: { vertex: 1, bend: 'b', turn: 0.5, asked: 0.7 } },
      { code: 'unknown-bend', values: { vertex: 1, bend: 'b' } },
      { code: 'short-leg', values: { leg: 0, length: 0.3, least: 0.5 } },
      { code: 'too-near', values: { obstacle: 'f3', clearance: 0.3, asked: 0.6 } },
      { code: 'too-near', values: { obstacle: 'f3', clearance: -0.3, asked: 0.6 } },
      { code: 'too-little-fall', values: { needed: 0.5, available: 0.3 } },
      { code: 'too-many-bends', values: { bends: 5, most: 4 } },
      { code: 'no-line', values: { points: 1 } },
    ].flatMap((fault) =>
      Object.values(w.routeFaultText({ ...fault, at: null } as unknown as RouteFault, ['A', 'B'], yard)),
    ), // each is one of them
  sidesText: (w) => [0, 0.75].map((slope) => w.sidesText(slope)),
  mindedName: (w) => [
    w.mindedName('f3', 'f3', yard),
    w.mindedName('roots/f2', 'f2', yard),
    w.mindedName('beyond', '', yard),
  ],
} as const satisfies Partial<Record<keyof Words, SaidBy>>;
