import type { EdgeClearance } from '@footmark/dig';
import type { Way, WayFacts } from '@footmark/reroute';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { wayRows } from './wayText';

const { site } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });
const FT = 0.3048;

const facts: WayFacts = {
  length: 60 * FT,
  developed: 60 * FT,
  bends: [],
  fall: { required: 0.8 * FT, available: 1.4 * FT },
  cover: 3 * FT,
  cleanouts: { asked: 0, missing: [] },
  nearest: [],
  trees: [],
  dug: { length: 0, deepest: null, volume: null, paved: 0, lawn: 0, beyond: 0 },
  services: [],
  shared: 0,
  others: 0,
  public: 0,
  unknownLand: 0,
  findings: [],
};

function row(name: string, changed: Partial<WayFacts>, is: Partial<Way> = {}): string | undefined {
  const [path] = site.paths;
  if (path === undefined) throw new Error('the yard has no pipe');
  const way: Way = {
    id: 'new-1',
    is: 'new',
    route: null,
    onto: null,
    path,
    digs: [],
    bored: [],
    branches: [],
    facts: { ...facts, ...changed },
    ...is,
  };
  return wayRows(way, site).find((r) => r.name === name)?.text;
}

describe('the fall of a way', () => {
  it.each([
    [1.4 * FT, 'needs 0.8 ft, has 1.4 ft'],
    [-1.6 * FT, 'needs 0.8 ft, rises 1.6 ft'],
    [-0.01, 'needs 0.8 ft, rises less than 0.1 ft'],
    [0, 'needs 0.8 ft, has 0.0 ft'],
    [null, 'needs 0.8 ft, what it has is not known'],
  ])('of %f m', (available, text) => {
    expect(row('Fall', { fall: { required: 0.8 * FT, available } })).toBe(text);
  });
});

describe('the least cover of a way', () => {
  it.each([
    [3 * FT, '3.0 ft'],
    [-0.5 * FT, '0.5 ft above ground'],
    [null, 'not known'],
  ])('of %f m', (cover, text) => {
    expect(row('Least cover', { cover })).toBe(text);
  });
});

describe('what is asked of a way', () => {
  it('are cleanouts where they are missing', () => {
    const cleanouts = { asked: 3, missing: [12 * FT, 40 * FT] };
    expect(row('Cleanouts to set', { cleanouts })).toBe('2 of 3 asked for, at 12.0 ft and 40.0 ft');
    expect(row('Cleanouts to set', {})).toBe('none');
  });

  it('is more cover than it has, and frost', () => {
    const [path] = site.paths;
    const cover = { path: path?.id ?? '', state: 'proposed', station: 0, cover: 3 * FT, sure: true } as const;
    const found = (code: 'cover-too-thin' | 'cover-above-frost', asked: number): WayFacts['findings'] => [
      {
        code,
        severity: 'should',
        at: { kind: 'path', id: cover.path },
        values: { ...cover, asked },
        place: null,
        rule: null,
      },
    ];
    expect(row('Least cover', { findings: found('cover-too-thin', 4 * FT) })).toBe('3.0 ft, 4.0 ft asked');
    expect(row('Least cover', { findings: found('cover-above-frost', 3.5 * FT) })).toBe(
      '3.0 ft, frost goes 3.5 ft deep',
    );
  });

  it('is pipe and bends of its size, and the cleanouts', () => {
    const bends = [{ name: '1/8', turn: Math.PI / 4, count: 2 }];
    const materials = (is: Way['is']) =>
      row('Materials', { bends, cleanouts: { asked: 1, missing: [0] } }, { is });
    expect(materials('new')).toBe('60.0 ft of 3⅞″ clay pipe, 2 × 1/8 bend, 1 cleanout');
    expect(materials('repair')).toBe('60.0 ft of new pipe, 1 cleanout');
    expect(materials('in-place')).toBe('60.0 ft of liner or pulled pipe, 1 cleanout');
  });
});

describe('what a way comes nearest to', () => {
  const to = (feature: string, feet: number, changed: Partial<EdgeClearance> = {}): EdgeClearance => ({
    of: { is: 'path', id: 'p1', state: 'proposed' },
    feature,
    kind: 'pole',
    distance: feet * FT,
    from: { x: 0, y: 0 },
    at: { x: 0, y: 0 },
    station: 0,
    toCentre: false,
    rule: null,
    required: null,
    verdict: null,
    ...changed,
  });

  it('is what lies at the least distance, whether a rule asks for room or not', () => {
    const maple = to('f2', 6, { required: 10 * FT, verdict: 'misses' });
    expect(row('Nearest', { nearest: [maple, to('f4', 2)] })).toBe('Pole 2.0 ft');
    expect(row('Nearest', { nearest: [maple, to('f4', 7)] })).toBe('Maple 6.0 ft, 10.0 ft asked');
  });

  it('is nothing that it crosses, or that it begins or ends at', () => {
    const house = to('f1', 1, { required: 3 * FT, verdict: 'serves' });
    const crossed = to('f5', 0.5, { required: FT, verdict: 'crosses' });
    const within = to('f3', -0.2);
    expect(row('Nearest', { nearest: [house, crossed, within, to('f4', 9)] })).toBe('Pole 9.0 ft');
    expect(row('Nearest', { nearest: [house, crossed, within] })).toBe('nothing');
  });

  it('is to a middle where no size is known', () => {
    expect(row('Nearest', { nearest: [to('f4', 2, { toCentre: true })] })).toBe('Pole 2.0 ft, to its middle');
  });
});

describe('the surfaces that a way takes', () => {
  const dug = { length: 3, deepest: 1, volume: 2, paved: 0, lawn: 10 * FT * FT, beyond: 0 };

  it('are told by their areas, as none, or as not known', () => {
    expect(row('Surfaces to restore', { dug })).toBe('10 sq ft lawn');
    expect(row('Surfaces to restore', {})).toBe('none');
    expect(row('Surfaces to restore', { dug: { ...dug, paved: null, lawn: null, beyond: null } })).toBe(
      'not known',
    );
  });
});
