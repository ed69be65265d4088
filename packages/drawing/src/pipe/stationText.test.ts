import { FOOT_M, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { stationText, tickSpacing } from './stationText';

const feet: Site['units'] = { length: 'ft-in', diameter: 'in', direction: 'bearing' };
const metres: Site['units'] = { length: 'm', diameter: 'mm', direction: 'azimuth' };

// hundreds of feet + feet; kilometres + metres: common practice, no source
describe('stationText', () => {
  it.each([
    [0, '0+00'],
    [40, '0+40'],
    [99.6, '1+00'],
    [1234, '12+34'],
  ])('%d ft is %s', (station, text) => {
    expect(stationText(station * FOOT_M, feet)).toBe(text);
  });

  it.each([
    [5, '0+005'],
    [1234.4, '1+234'],
  ])('%d m is %s', (station, text) => {
    expect(stationText(station, metres)).toBe(text);
  });

  it('ticks every ten feet or five metres', () => {
    expect([tickSpacing(feet), tickSpacing(metres)]).toEqual([3.048, 5]);
  });
});
