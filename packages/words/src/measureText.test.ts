import type { Units } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { angleText, counterText, directionText, lengthText } from './measureText';

const units = (length: Units['length'], direction: Units['direction'] = 'bearing'): Units => ({
  length,
  direction,
  diameter: 'in',
});

describe('lengths', () => {
  it.each([
    [94.2 * 0.3048, 'ft', '94.2 ft'],
    [94.25 * 0.3048, 'ft', '94.25 ft'],
    [-3.1 * 0.3048, 'ft', '−3.1 ft'],
    [0, 'ft', '0.0 ft'],
    [7.18, 'm', '7.18 m'],
    [7.1, 'm', '7.1 m'],
    [23.5 * 0.3048, 'ft-in', '23′ 6″'],
  ] as const)('%f m in %s is %s', (metres, style, text) => {
    expect(lengthText(metres, units(style))).toBe(text);
  });

  it('of a counter are decimal', () => {
    expect(counterText(94.2 * 0.3048, units('ft-in'))).toBe('94.2 ft');
    expect(counterText(28.71, units('m'))).toBe('28.71 m');
  });
});

describe('directions and angles', () => {
  it('follow the site', () => {
    expect(directionText(Math.PI / 4, units('ft'))).toBe('N 45°00′00″ E');
    expect(directionText(Math.PI / 4, units('ft', 'azimuth'))).toBe('45.0°');
  });

  it('have no side', () => {
    expect([angleText(Math.PI / 6), angleText(-Math.PI / 6), angleText(0)]).toEqual(['30°', '30°', '0°']);
  });
});
