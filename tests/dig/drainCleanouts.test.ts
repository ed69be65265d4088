// Cleanouts of large sewers, where the drain leaves the house, and how wide they are, against the codes named beside each check.

import { INCH_M, type SiteRules } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { thing } from '../../packages/site/src/testing/yard';
import { inFeet, spot } from './digSite';
import { drain, type Facts, four } from './drainSite';

const straight = (length: number, facts: Facts = {}) =>
  drain(
    [
      [0, 0],
      [length, 0],
    ],
    facts,
  );
const eight = { ...four, diameter: 8 * INCH_M };
const asked = ({ check }: ReturnType<typeof straight>) =>
  check.cleanouts
    .filter((c) => c.reason !== 'head')
    .map((c) => [c.reason, Number(inFeet(c.station).toFixed(3))]);

describe('large sewers', () => {
  // IPC 708.1.2 (from memory): of 8 in and more, a manhole within 200 ft of the junction, then no more than 400 ft apart
  it('have manholes: the first within 200 ft, further ones within 400 ft', () => {
    expect(asked(straight(200, { stretches: [eight] }))).toEqual([]);
    expect(asked(straight(600, { stretches: [eight] }))).toEqual([['manhole', 200]]);
    expect(asked(straight(601, { stretches: [eight] }))).toEqual([
      ['manhole', 200],
      ['manhole', 600],
    ]);
    expect(straight(201, { stretches: [eight] }).codes).toContain('manhole-along');
  });

  it('are served by a manhole, not by a cleanout', () => {
    const at = (kind: 'manhole' | 'cleanout') => ({
      stretches: [eight],
      features: [thing('m', kind, [spot(150, 0)])],
    });
    expect(asked(straight(500, at('manhole')))).toEqual([]);
    expect(asked(straight(500, at('cleanout')))).toEqual([['manhole', 200]]);
  });

  it('begin where the pipe becomes that large; the smaller one before has its cleanouts', () => {
    const stretches = [four, { ...eight, from: 110 * 0.3048 }];
    expect(asked(straight(320, { stretches }))).toEqual([
      ['spacing', 100],
      ['manhole', 310],
    ]);
  });

  // UPC 719 (1995): no more than 100 ft, manholes in lieu
  it('are not told apart by the UPC', () => {
    expect(asked(straight(201, { stretches: [eight], rules: { set: 'us-upc' } }))).toEqual([
      ['spacing', 100],
      ['spacing', 200],
    ]);
  });
});

describe('where the drain leaves the house', () => {
  const house = (to: number) =>
    thing('house', 'building', [spot(-9, -9), spot(to, -9), spot(to, 9), spot(-9, 9)]);
  const leaving = (to: number, more: Facts['features'] = [], rules: Partial<SiteRules> = {}) =>
    straight(60, { features: [house(to), ...(more ?? [])], rules });
  const junction = (result: ReturnType<typeof straight>) =>
    result.check.cleanouts.find((c) => c.reason === 'junction');

  // IPC 708.1.3 (from memory): near the junction of building drain and building sewer; 202 (from memory): 30 in past the wall
  it('is a cleanout, 30 in past the wall', () => {
    expect(inFeet(junction(leaving(20))?.station ?? 0)).toBeCloseTo(22.5, 6);
    expect(leaving(20).codes).toContain('cleanout-at-junction');
    expect(junction(straight(60))).toBeUndefined();
  });

  // 708.3.5 before 2015: none where one on a stack lies within 10 ft of developed length
  it('is none with a cleanout near by, or a stack within 10 ft by the IPC', () => {
    const at = (kind: 'cleanout' | 'stack', x: number) => [thing('o', kind, [spot(x, 0)])];
    expect(junction(leaving(20, at('cleanout', 25)))?.by).toBe('o');
    expect(junction(leaving(20, at('stack', 13)))?.by).toBe('o');
    expect(junction(leaving(20, at('stack', 12)))?.by).toBeNull();
    expect(junction(leaving(20, at('stack', 13), { set: 'us-upc' }))?.by).toBeNull();
  });

  it('serves the upper end too where that is near', () => {
    const reasons = (to: number) => leaving(to).check.cleanouts.map((c) => c.reason);
    expect(reasons(5)).toEqual(['junction']);
    expect(reasons(20)).toEqual(['head', 'junction']);
  });
});

describe('how wide a cleanout is', () => {
  // IPC 708.1.5, Chicago 18-29-708.7: the size of the pipe up to 4 in, 4 in or more for larger
  it.each([
    [3, 3, false],
    [4, 3, true],
    [4, 4, false],
    [6, 4, false],
    [6, 3, true],
  ])('a pipe of %d in with one of %d in: too narrow %s', (size, cleanout, narrow) => {
    const { codes, check } = straight(60, {
      stretches: [{ ...four, diameter: size * INCH_M }],
      features: [thing('c', 'cleanout', [spot(0, 0)], { diameter: cleanout * INCH_M })],
    });
    expect(codes.includes('cleanout-too-small')).toBe(narrow);
    expect(check.narrowCleanouts.map((c) => c.asked / INCH_M)).toEqual(narrow ? [expect.closeTo(4, 9)] : []);
  });

  it('of a size that nobody gave is not judged', () => {
    const features = [thing('c', 'cleanout', [spot(0, 0)])];
    expect(straight(60, { features }).codes).not.toContain('cleanout-too-small');
  });
});
