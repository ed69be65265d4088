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

  it('what was not seen is asked, with its length', () => {
    expect(en.unseenText(8.5 * FOOT_M, feet)).toBe('? not seen, 8.5 ft');
  });
});
