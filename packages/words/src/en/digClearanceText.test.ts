import type { EdgeClearance } from '@footmark/dig';
import { describe, expect, it } from 'vitest';
import { sampleYard } from '../testing/sampleYard';
import { dimensionText, obstacleText } from './digClearanceText';

const { site } = sampleYard({ length: 'ft', diameter: 'in', direction: 'bearing' });

const near: EdgeClearance = {
  of: { is: 'path', id: 'p1', state: 'existing' },
  feature: 'f1',
  kind: 'building',
  distance: 0.3048,
  from: { x: 0, y: 0 },
  at: { x: 0, y: 0.3048 },
  station: 3,
  toCentre: false,
  rule: 'building',
  required: 0.6096,
  verdict: 'misses',
};

const said = (more: Partial<EdgeClearance> = {}) => obstacleText({ ...near, ...more }, site);

describe('a clearance', () => {
  it('says how far two things are apart, and what is asked', () => {
    expect(said()).toBe('1.0 ft apart; 2.0 ft asked: nearer than asked.');
  });

  it('says that things overlap, cross, or are told to a middle', () => {
    expect(said({ distance: -0.3048 })).toMatch(/^1\.0 ft into it;/);
    expect(said({ distance: -0.1, verdict: 'crosses' })).toBe('Crosses it; 2.0 ft asked.');
    expect(said({ toCentre: true })).toContain('apart, to its middle');
  });

  it('says what decides where water is nearer than asked: of a main the depth alone', () => {
    const water = { kind: 'service', verdict: 'by-depth' } as const;
    expect(said({ ...water, rule: 'waterService' })).toMatch(
      /: its depth and what the sewer is made of decide\.$/,
    );
    expect(said({ ...water, rule: 'waterMain' })).toMatch(/: its depth decides\.$/);
  });

  it('says what decides instead beside a dig', () => {
    const dig = { of: { is: 'outline', dig: 'd1' }, rule: null, required: null, verdict: null } as const;
    expect(said({ ...dig, distance: -0.3048 })).toBe('1.0 ft into it; its footing decides.');
    expect(said({ ...dig, kind: 'fence', distance: -0.3048 })).toBe('1.0 ft into it; the dig takes it.');
    expect(said({ ...dig, kind: 'fence' })).toBe('1.0 ft apart; no rule asks.');
  });

  it('says where no rule asks, where a tree’s zone does, and where the rule is to stay off', () => {
    const none = { rule: null, required: null, verdict: null } as const;
    expect(said(none)).toBe('1.0 ft apart; no rule asks.');
    expect(said({ ...none, kind: 'tree' })).toBe('1.0 ft apart; its root zone decides.');
    expect(said({ required: 0, verdict: 'meets' })).toBe('1.0 ft apart; to stay clear of it: far enough.');
  });
});

describe('a dimension line', () => {
  const to = (clearance: Partial<EdgeClearance>, other: Parameters<typeof dimensionText>[1]) =>
    dimensionText({ ...near, ...clearance }, other, 'full', site);

  it('says how far it is to its other end, and what is asked where that is more', () => {
    const path = { kind: 'path', id: 'p1' } as const;
    expect(to({}, path)).toBe('1.0 ft to Lateral, 2.0 ft asked');
    expect(dimensionText(near, path, 'brief', site)).toBe('1.0 ft to Lateral');
    expect(to({ verdict: 'meets' }, path)).toBe('1.0 ft to Lateral');
    expect(to({ distance: -0.3048, verdict: null }, path)).toBe('1.0 ft into Lateral');
  });

  it('calls a dig by its name, else by what it is', () => {
    const dig = { id: 'd1', is: 'pit', at: { run: 'r1', reading: 'q1' }, name: '', note: '' } as const;
    const withDig = (name: string) => ({ ...site, digging: { ...site.digging, digs: [{ ...dig, name }] } });
    const other = { kind: 'dig', id: 'd1' } as const;
    expect(dimensionText({ ...near, verdict: null }, other, 'full', withDig(''))).toBe('1.0 ft to the pit');
    expect(dimensionText({ ...near, verdict: null }, other, 'full', withDig('Alley pit'))).toBe(
      '1.0 ft to Alley pit',
    );
  });
});
