import { FOOT_M, type Units } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { en } from './en';

const feet: Units = { length: 'ft', diameter: 'in', direction: 'bearing' };
const metres: Units = { length: 'm', diameter: 'mm', direction: 'azimuth' };

describe('on the plan', () => {
  it('a locate is said with its mark, and how far off it is where that is told', () => {
    expect(en.locatedText('A7', null, feet)).toBe('A7 located');
    expect(en.locatedText('A7', 1.42 * FOOT_M, feet)).toBe('A7 located, 1.4 ft off');
    expect(en.locatedText('A7', 0.432, metres)).toBe('A7 located, 0.43 m off');
  });

  it('a hole is said along and across the pipe, rounded up', () => {
    expect(en.digText({ length: 0.71, width: 1.12 }, metres)).toBe('Hole 0.8 × 1.2 m');
  });

  it('a heap is said by what it holds, and a footing by the line that bears it', () => {
    // 1 cu yd = 0.764554857984 m³ exactly
    expect(en.spoilText(2 * 0.764554857984, feet)).toBe('Spoil 2.0 cu yd');
    expect(en.footingLineText(1, 1.5, metres)).toBe('45° line of the footing, 1.50 m off');
    expect(en.footingLineText(null, 2.25, metres)).toBe('Cut back it meets the footing, 2.25 m off');
  });

  it('a dig is said by its depth, from the least to the most, and the width of its top', () => {
    const depth = { least: 4 * FOOT_M, most: 5.5 * FOOT_M, sigma: 0, from: 'pipe' } as const;
    const top = { width: 12 * FOOT_M, length: 9, outline: [], area: 0, points: [] };
    expect(en.excavationText({ depth, top }, 'full', feet)).toBe('4.0 ft to 5.5 ft deep, top 12.0 ft wide');
    expect(en.excavationText({ depth: { ...depth, least: depth.most }, top }, 'brief', feet)).toBe(
      '5.5 ft deep',
    );
    expect(en.excavationText({ depth: null, top: null }, 'full', feet)).toBe('Depth not known');
  });

  it('a root zone is said by its rule or by its roots, with its radius', () => {
    expect(en.rootZoneText({ is: 'chosen', rule: 'bs-5837', radius: 3.6 }, metres)).toBe('BS 5837 3.60 m');
    const structural = { is: 'structural-root-zone', rule: 'as-4970', radius: 2.25 } as const;
    expect(en.rootZoneText(structural, metres)).toBe('structural root zone 2.25 m');
  });

  it('what was not seen is asked, with its length', () => {
    expect(en.unseenText(8.5 * FOOT_M, feet)).toBe('? not seen, 8.5 ft');
  });
});
