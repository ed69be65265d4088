import type { EdgeClearance } from '@footmark/dig';
import { describe, expect, it } from 'vitest';
import { obstacleText } from './digClearanceText';
import { sampleYard } from './sampleYard';

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
  it('names both things, how far they are apart, and what is asked', () => {
    expect(said()).toEqual({
      text: 'Lateral and House',
      cure: '1.0 ft apart; 2.0 ft asked: nearer than asked.',
    });
    expect(said({ of: { is: 'mark', run: 'r1', reading: 'q1' } }).text).toBe('Mark A1 and House');
  });

  it('says that things overlap, cross, or are told to a middle', () => {
    expect(said({ distance: -0.3048 }).cure).toMatch(/^1\.0 ft into it;/);
    expect(said({ distance: -0.1, verdict: 'crosses' }).cure).toBe('Crosses it; 2.0 ft asked.');
    expect(said({ toCentre: true }).cure).toContain('apart, to its middle');
  });

  it('says where no rule asks, and where the rule is to stay off', () => {
    expect(said({ rule: null, required: null, verdict: null }).cure).toBe('1.0 ft apart; no rule asks.');
    expect(said({ required: 0, verdict: 'meets' }).cure).toBe(
      '1.0 ft apart; to stay clear of it: far enough.',
    );
  });
});
