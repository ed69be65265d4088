import type { AnyDigFinding } from '@footmark/dig';
import type { Site } from '@footmark/site';
import type { DigFindingValues } from '../digFindingValues';
import { sampleYard } from './sampleYard';

const thing = { dig: 'd1', feature: 'f1', kind: 'building', atLeast: false } as const;
const footed = { ...thing, footing: 0.4572, distance: 0.5, assumed: 'nothing' } as const;
const drain = { path: 'p1', state: 'proposed', station: 9 } as const;
const sloped = { from: 0, to: 9, slope: 0.001, sigma: 0.002, least: 1 / 96 } as const;
const water = {
  path: 'p1',
  state: 'existing',
  service: 'f1',
  distance: 1.22,
  asked: 1.524,
  aboveAsked: 0.3048,
  crosses: false,
  main: false,
} as const;
const zone = { tree: 'f2', zone: 'critical-root-radius', radius: 4.8, protected: true } as const;

const pipe = { path: 'p1', state: 'proposed' } as const;
const near = { feature: 'f1', kind: 'building', distance: 0.5, required: 0.6096 } as const;
const mark = { run: 'r1', reading: 'q1' } as const;
const stretch = { ...pipe, from: 3, to: 9, features: ['f5', 'f1'] } as const;
const ticket = { clash: false, days: null, from: null, until: null } as const;

/** Values of one finding of each code; a code without one does not compile. Numbers that would be nonsense in a sentence would show. */
const samples: DigFindingValues = {
  'dig-without-place': { dig: 'd1' },
  'trench-without-length': { dig: 'd1', from: 3, to: 3 },
  'trench-past-end': { dig: 'd1', beyond: 1.5, length: 27 },
  'pit-without-size': { dig: 'd2' },
  'depth-not-known': { dig: 'd1', because: 'no-pipe-level', station: 4 },
  'depth-carried-on': { dig: 'd1', sigma: 0.1 },
  'depth-not-positive': { dig: 'd1', depth: -0.2, station: 4 },
  'soil-not-chosen': { dig: 'd1', slope: 1.5 },
  'disturbed-soil-is-not': { dig: 'd1', chosen: 'a', as: 'b', slope: 1 },
  'protective-system-needed': { dig: 'd1', depth: 1.8, limit: 1.524, planned: 'slope', atLeast: false },
  'short-term-may-be-steeper': { dig: 'd1', depth: 1.8, slope: 0.5, limit: 3.6576, width: 2.4384 },
  'competent-person-decides': { dig: 'd1', depth: 1.2, limit: 1.524 },
  'depth-may-pass-limit': { dig: 'd1', depth: 1.4, sigma: 0.1, limit: 1.524 },
  'rock-must-be-stable': { dig: 'd1', depth: 1.8, atLeast: true },
  'engineer-designs': { dig: 'd1', depth: 6.5, limit: 6.096, atLeast: false },
  'shield-stands-above': { dig: 'd1', above: 0.4572, upright: 1.2, slope: 1.5 },
  'shield-reaches-ground': { dig: 'd1', depth: 1.8, atLeast: false },
  'egress-needed': { dig: 'd1', depth: 1.8, limit: 1.2192, places: 2, travel: 7.62, atLeast: true },
  'spoil-kept-back': { dig: 'd1', setback: 0.6096, width: 2.1, height: 0.7, volume: 6, side: 'left' },
  'spoil-without-room': { dig: 'd1', side: 'right', suggested: 'left', features: ['f1', 'f2'] },
  'dig-crosses-boundary': { ...thing, length: 2 },
  'dig-in-easement': { ...thing, area: 4 },
  'dig-reaches-building': { ...thing, area: 4 },
  'dig-takes-pavement': { ...thing, area: 4 },
  'dig-crosses-service': { ...thing, length: 2, unknown: null },
  'dig-takes-thing': thing,
  'dig-takes-trunk': thing,
  'dig-under-footing': { ...footed, depth: 2, reach: 1.5 },
  'footing-taken': { ...footed, depth: 2, reach: 1.5, shallowest: 0.4572 },
  'footing-not-judged': { ...footed, deepest: 1.6 },
  'tree-without-diameter': { tree: 'f2' },
  'tree-facts-assumed': {
    tree: 'f2',
    zone: 'critical-root-radius',
    assumed: [
      { fact: 'age', as: 'mature' },
      { fact: 'condition', as: 'good' },
    ],
  },
  'pipe-in-root-zone': {
    ...zone,
    path: 'p1',
    state: 'proposed',
    length: 6,
    distance: 1.2,
    side: 'left',
    boreDepth: 1.3716,
    cover: 1.1,
    enough: false,
  },
  'dig-in-root-zone': { ...zone, dig: 'd1', share: 0.14, atLeast: false },
  'spoil-in-root-zone': { ...zone, dig: 'd1', share: 0.05 },
  'dig-in-structural-roots': { ...zone, dig: 'd1', is: 'structural-root-zone', fromTrunk: true },
  'minor-encroachment': { ...zone, share: 0.06, limit: 0.1 },
  'major-encroachment': { ...zone, share: 0.14, limit: 0.1, structural: false },
  'fall-too-little': { ...drain, ...sloped, short: 0.06 },
  'fall-against-flow': { ...drain, ...sloped, slope: -0.002, short: 0.11 },
  'fall-not-sure': { ...drain, ...sloped, others: 1, whole: true },
  'fall-said-too-little': { ...drain, ...sloped, short: 0.06 },
  'fall-less-than-elsewhere': { ...drain, from: 0, to: 9, slope: 0.012, elsewhere: 1 / 48 },
  'fall-not-known': { ...drain, length: 27, required: 0.28 },
  'end-below-tap': { ...drain, tap: 'f1', by: 0.3, sigma: 0.04, sure: true },
  'cover-too-thin': { ...drain, cover: 0.2, asked: 0.3048, sure: true },
  'cover-above-frost': { ...drain, cover: 0.9, asked: 1.0668, sure: false },
  'cover-not-known': { path: 'p1', state: 'existing', because: 'no-ground', length: 6, whole: false },
  'cleanout-at-head': { ...drain, station: 0 },
  'cleanout-at-junction': { ...drain, limit: 3.048 },
  'manhole-along': { ...drain, spacing: 121.92 },
  'cleanout-too-small': { ...drain, feature: 'f1', diameter: 0.0762, asked: 0.1016 },
  'cleanout-at-turn': { ...drain, turn: Math.PI / 2, limit: Math.PI / 4 },
  'cleanout-after-turns': { ...drain, turn: Math.PI, limit: 0.75 * Math.PI },
  'cleanout-along': { ...drain, spacing: 30.48 },
  'turn-needs-sweep': { ...drain, turn: Math.PI / 2, limit: Math.PI / 3 },
  'water-too-near': { ...water, above: -0.1, shelf: false, sleeve: null, passBelow: 0.4572 },
  'water-allowed': { ...water, by: 'height', above: 0.35, sure: false, elsewhere: 3.048 },
  'water-nearer-than-elsewhere': { ...water, elsewhere: 3.048 },
  'pipe-too-near': { ...near, ...pipe, station: 9, toCentre: true },
  'service-nearer-than-elsewhere': { ...near, ...pipe, station: 9, elsewhere: 1.524 },
  'mark-in-tolerance-zone': { ...near, ...mark },
  'pipe-along-wall': { ...near, ...pipe, from: 3, to: 9 },
  'outline-doubtful': { feature: 'f1', kind: 'building' },
  'no-boundary': {},
  'boundary-crosses-itself': { feature: 'f5' },
  'boundary-not-closed': { feature: 'f5', gap: 0.6 },
  'lot-not-told': { lots: 2 },
  'right-of-way-without-house': { feature: 'f5' },
  'path-on-neighbour': stretch,
  'path-on-public': stretch,
  'path-in-easement': stretch,
  'path-outside': stretch,
  'path-along-boundary': stretch,
  'path-crosses-open-boundary': { ...pipe, station: 9, feature: 'f5' },
  'mark-not-private': { ...mark, whose: 'neighbour', features: ['f5'] },
  'service-crossed': {
    ...pipe,
    feature: 'f5',
    station: 9,
    angle: Math.PI / 3,
    gap: 0.4,
    over: 'service',
    missing: ['service-depth'],
    asked: 0.3048,
    carriedOn: false,
  },
  'dig-in-tolerance-zone': {
    dig: 'd1',
    feature: 'f5',
    distance: 0.2,
    zone: 0.6096,
    handDig: 1.2,
    length: 6,
    below: 0.3,
    atLeast: true,
  },
  'tolerance-under-floor': { value: 0.3048, floor: 0.6096 },
  'service-without-diameter': { feature: 'f5' },
  'one-call-missing': ticket,
  'one-call-not-called': ticket,
  'one-call-waiting': { ...ticket, from: '2026-05-04' },
  'one-call-expired': { ...ticket, until: '2026-05-18' },
  'one-call-dates-clash': { ...ticket, clash: true },
  'one-call-without-end': ticket,
  'water-depth-not-known': { ...water, missing: ['service-depth', 'pipe-level'] },
};

export const digFindingCodes = Object.keys(samples) as (keyof DigFindingValues)[]; // keys of the table above

export const digFindingSample = (code: keyof DigFindingValues, more: object = {}) =>
  ({
    code,
    severity: 'should',
    at: { kind: 'path', id: 'p1' },
    place: null,
    rule: null,
    values: { ...samples[code], ...more },
  }) as unknown as AnyDigFinding; // one member, by its code

/** The sample yard with a trench `d1` and a pit `d2`, neither with a name. */
export function dugYard(length: 'ft' | 'ft-in' | 'm'): Site {
  const { site } = sampleYard({ length, diameter: 'in', direction: 'bearing' });
  const said = { name: '', note: '' };
  return {
    ...site,
    digging: {
      ...site.digging,
      digs: [
        { id: 'd1', is: 'trench', path: 'p1', from: 0, to: 6, ...said },
        { id: 'd2', is: 'pit', at: { run: 'r1', reading: 'q1' }, ...said },
      ],
    },
  };
}

/** What else can be said of a code: each yes or no the other way, the other states, and what is not known. */
export function digFindingVariants(code: keyof DigFindingValues): readonly AnyDigFinding[] {
  const flips = Object.entries(samples[code]).flatMap(([name, value]) => {
    if (typeof value === 'boolean') return [{ [name]: !value }];
    const others = (OTHERS[name] ?? []).filter((other) => value === null || typeof other === typeof value);
    return others.map((other) => ({ [name]: other }));
  });
  return [{}, ...flips, ...(MORE[code] ?? [])].map((more) => digFindingSample(code, more));
}

const OTHERS: Readonly<Record<string, readonly unknown[]>> = {
  state: ['existing', 'proposed'],
  planned: ['slope', 'shield', 'engineer'],
  because: ['no-pipe-level', 'no-ground'],
  side: ['left', 'right'],
  places: [1],
  by: ['material'],
  whose: ['shared', 'public', 'outside'],
  unknown: ['service', 'dig'],
  over: ['pipe'],
  zone: ['bs-5837', 'as-4970', 'tolerance-and-age', 'six-diameters', 'bore-distance'],
  as: ['c'],
};

const MORE: { readonly [Code in keyof DigFindingValues]?: readonly object[] } = {
  'depth-not-known': [{ because: 'indoors' }],
  'spoil-without-room': [{ side: null, suggested: 'away', features: [] }, { features: ['f3'] }],
  'dig-under-footing': [{ assumed: null }, { assumed: 'foundation', atLeast: true }],
  'footing-taken': [{ assumed: null }, { assumed: 'foundation' }],
  'footing-not-judged': [{ assumed: null, distance: -0.1 }],
  'tree-facts-assumed': [{ assumed: [{ fact: 'tolerance', as: 'poor' }] }],
  'pipe-in-root-zone': [
    { distance: -0.1, cover: null },
    { state: 'existing', cover: null },
    { state: 'existing', enough: true },
  ],
  'dig-in-structural-roots': [{ is: 'stability' }],
  'cover-too-thin': [{ cover: -0.2 }],
  'pipe-too-near': [{ distance: -0.3 }],
  'mark-in-tolerance-zone': [{ distance: -0.1 }],
  'service-crossed': [{ gap: null, over: null, missing: [] }],
  'dig-in-tolerance-zone': [{ handDig: null, length: null, below: null, distance: -0.1 }, { below: -0.3 }],
  'one-call-not-called': [{ days: 2 }],
  'one-call-waiting': [{ from: null }],
  'one-call-expired': [{ until: null }],
  'fall-not-sure': [{ others: 0 }],
  'water-too-near': [
    { crosses: true, sleeve: 1.5, passBelow: null },
    { crosses: true, main: true },
    { above: 0.1, shelf: true },
  ],
  'water-allowed': [
    { by: 'material', asked: 0 },
    { main: true, crosses: true },
  ],
  'water-depth-not-known': [
    { main: true, crosses: true, missing: ['pipe-material', 'service-diameter', 'ground'] },
  ],
};
