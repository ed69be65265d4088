import type {
  AnyDigFinding,
  DrainFindingValues,
  ExcavationFindingValues,
  TreeFindingValues,
} from '@footmark/dig';
import type { Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { volumeText } from '../amountText';
import { sampleYard } from '../testing/sampleYard';
import { digFindingText, digFindingTitle } from './digFindingText';
import { acrossText, areaText, shareText } from './digMeasure';
import { boreText, treeTakenText } from './digTreeText';

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

/** One of each; a code without one does not compile. Numbers that would be nonsense in a sentence would show. */
const samples: DrainFindingValues & ExcavationFindingValues & TreeFindingValues = {
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
  'fall-not-sure': { ...drain, ...sloped, others: 1 },
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
  'water-depth-not-known': { ...water, missing: ['service-depth', 'pipe-level'] },
};

const codes = Object.keys(samples) as (keyof typeof samples)[]; // keys of the table above

const findingOf = (code: keyof typeof samples, more: object = {}) =>
  ({
    code,
    severity: 'should',
    at: { kind: 'path', id: 'p1' },
    place: null,
    rule: null,
    values: { ...samples[code], ...more },
  }) as unknown as AnyDigFinding; // one member, by its code

function dugYard(length: 'ft' | 'ft-in' | 'm'): Site {
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

/** Labels, counts and ratios, the only numbers that have no unit. */
const WITHOUT_UNIT = /\b[AB]\d\b|\b[\d.]+ across to 1 down|: \d of them|\b24 hours\b/g;
const NUMBER_WITH_UNIT = /\d[\d.⁄½¼¾]*( ft| in\b| mm\b| m\b| %|°|′|″| sq ft| m²| cu yd| m³)|[½¼¾]″/g;

describe.each(['ft', 'ft-in', 'm'] as const)('in %s', (length) => {
  it.each(codes)('%s is said in whole sentences, with what would cure it', (code) => {
    const said = digFindingText(findingOf(code), dugYard(length));
    for (const text of [said.text, said.cure]) {
      expect(text).toMatch(/^\p{Lu}.*[^.]\.$/u);
      expect(text).not.toMatch(/undefined|null|NaN|\[object|[{}$]|\s\s|,,/);
      expect(text.replace(WITHOUT_UNIT, '').replace(NUMBER_WITH_UNIT, '')).not.toMatch(/\d/);
    }
  });

  it.each(codes)('%s is told in a line that a phone has the room for', (code) => {
    const title = digFindingTitle(findingOf(code), dugYard(length));
    // two lines of a phone's list at the most
    expect(title.length).toBeLessThanOrEqual(62);
    expect(title).toMatch(/^[\p{Lu}\d].*[^.]$/u);
    expect(title).not.toMatch(/undefined|null|NaN|\[object|[{}$]|\s\s|,,/);
    const plain = title.replace(/\b\d (facts|ladders)\b|Type B/, '').replace(NUMBER_WITH_UNIT, '');
    expect(plain).not.toMatch(/\d/);
  });
});

describe('a finding says what, how much and what to do', () => {
  const site = dugYard('ft');
  const said = (code: keyof typeof samples, more: object = {}) => digFindingText(findingOf(code, more), site);

  it('names the dig, the tree, its zone and its share', () => {
    expect(said('dig-in-root-zone').text).toBe(
      'The trench on Lateral from 0.0 ft to 19.69 ft takes 14 % of the critical root zone of Maple, which is protected.',
    );
  });

  it('calls a dig by the name that people gave it', () => {
    const digs = site.digging.digs.map((d) => ({ ...d, name: 'Alley pit' }));
    const named = { ...site, digging: { ...site.digging, digs } };
    expect(digFindingText(findingOf('engineer-designs'), named).text).toMatch(/^Alley pit is 21\.3 ft deep/);
  });

  it('says whether the pipe lies deep enough to bore under a tree', () => {
    expect(said('pipe-in-root-zone').cure).toContain('3.6 ft of cover is planned, too little');
    expect(said('pipe-in-root-zone', { state: 'existing', cover: 1.5, enough: true }).cure).toContain(
      '4.9 ft of cover, enough for that',
    );
    const bore = { asked: 1.3716, row: 'boreDepthNear', cover: 1.5, enough: true } as const;
    expect(boreText(bore, site.units)).toBe(
      'Boring under is asked to be 4.5 ft deep; the pipe has 4.9 ft of cover, which is enough.',
    );
    expect(boreText({ ...bore, cover: 1.1, enough: false }, site.units)).toContain('which is too little');
    expect(boreText({ ...bore, cover: null, enough: null }, site.units)).toContain('cover is not known');
  });

  it('says what a tree was taken as for a zone', () => {
    const assumed = [
      { fact: 'tolerance', as: 'poor' },
      { fact: 'age', as: 'overmature' },
    ] as const;
    expect(treeTakenText(assumed)).toBe('Taken as one that stands root loss poorly and old.');
  });

  it('does not say that a tree is protected when nobody said so', () => {
    expect(said('dig-in-root-zone', { protected: false }).text).not.toContain('protected');
  });

  it('says that a depth that is not known makes the share a least one', () => {
    expect(said('dig-in-root-zone', { atLeast: true }).text).toContain('takes at least 14 %');
  });

  it('says how a side that is planned is to be kept', () => {
    expect(said('protective-system-needed').cure).toContain('Cut the sides back');
    expect(said('protective-system-needed', { planned: 'shield' }).cure).toContain('Set the shield');
  });

  it('says why a depth cannot be told', () => {
    expect(said('depth-not-known', { because: 'no-ground' }).text).toContain('no level of the ground');
    expect(said('depth-not-known', { because: 'indoors' }).cure).toContain('at the wall');
  });

  it('says how deep a pipe lies and how sure that is', () => {
    expect(said('cover-too-thin').text).toMatch(/^Lateral has 0\.7 ft of cover at 29\.5 ft, less than/);
    expect(said('cover-too-thin').text).not.toContain('leave it open');
    expect(said('cover-too-thin', { cover: -0.2 }).text).toContain('out of the ground');
    expect(said('cover-above-frost').text).toContain('the levels leave it open');
  });

  it('says how water lies to a sewer', () => {
    expect(said('water-too-near').text).toContain('below the top of the sewer');
    expect(said('water-too-near', { above: 0.1 }).text).toContain('above the top of the sewer');
    expect(said('water-too-near', { crosses: true, sleeve: 1.524 }).cure).toContain('sleeve');
    const crossing = { main: true, crosses: true };
    expect(said('water-too-near', crossing).text).toContain('between them is asked');
    expect(said('water-depth-not-known', crossing).text).toContain('above or below the sewer');
    expect(said('water-depth-not-known').cure).toBe(
      'Find out how deep the water pipe lies and how deep the sewer lies.',
    );
  });

  it('says what a footing was taken for', () => {
    expect(said('dig-under-footing').text).toContain('as nothing is known of it');
    expect(said('dig-under-footing', { assumed: null }).cure).not.toContain('find out');
  });
});

describe('measures', () => {
  it('are in the units of the site', () => {
    // 1 cu yd = 0.764554857984 m³ and 1 sq ft = 0.09290304 m², exact by the foot of 0.3048 m
    expect(volumeText(0.764554857984, { length: 'ft' })).toBe('1.0 cu yd');
    expect(areaText(0.09290304 * 12, { length: 'ft-in' })).toBe('12 sq ft');
    expect(volumeText(2.04, { length: 'm' })).toBe('2.0 m³');
    expect(areaText(2.04, { length: 'm' })).toBe('2.0 m²');
  });

  it('say a share too small to print, and slopes as they are cut', () => {
    expect(shareText(0.001)).toBe('less than 1 %');
    expect(shareText(0)).toBe('0 %');
    expect(acrossText(0.75)).toBe('0.75 across to 1 down');
  });
});
