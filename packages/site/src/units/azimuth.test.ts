import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAzimuth, formatBearing, parseAzimuth } from './azimuth';

const RADIAN = 180 / Math.PI;

function degrees(text: string): number {
  const result = parseAzimuth(text);
  if (!result.ok) throw new Error(`${text}: ${result.code}`);
  expect(result.value).toBeGreaterThanOrEqual(0);
  expect(result.value).toBeLessThan(2 * Math.PI);
  return result.value * RADIAN;
}

const DMS = 45 + 30 / 60 + 15 / 3600;

describe('parseAzimuth', () => {
  it.each([
    ['45.504°', 45.504],
    ['45.504', 45.504],
    ['45,504', 45.504],
    ['45.504 deg', 45.504],
    [`45°30'15"`, DMS],
    ['45°30′15″', DMS],
    [`45° 30' 15.0"`, DMS],
    [`45°30'15`, DMS],
    [`45°30.25'`, DMS],
    ['45-30-15', DMS],
    ['45 30 15', DMS],
    ['45:30:15', DMS],
    ['45d30m15s', DMS],
    ['45-30', 45.5],
    ['45°30', 45.5],
    [`45°36"`, 45.01],
    [`N 45°30'15" E`, DMS],
    ['N45-30-15E', DMS],
    ['n 45 e', 45],
    ['N 45 30 15 W', 360 - DMS],
    [`S 45°30'15" E`, 180 - DMS],
    [`S45d30m15sW`, 180 + DMS],
    ['North 45 East', 45],
    ['N 90 E', 90],
    ['S 0 W', 180],
    ['N 0 W', 0],
    ['due north', 0],
    ['N', 0],
    ['e', 90],
    ['due South', 180],
    ['W', 270],
    ['SW', 225],
    ['north-east', 45],
    ['0', 0],
    ['360', 0],
    ['359.999999999999999999', 0],
    [`360°00'00"`, 0],
  ])('reads %s as %f°', (text, expected) => {
    expect(degrees(text)).toBeCloseTo(expected, 10);
  });

  it.each([
    ['', 'empty'],
    ['up', 'not-a-number'],
    ['45°x', 'not-a-number'],
    ['360.001', 'azimuth-out-of-range'],
    ['-1', 'azimuth-out-of-range'],
    ['--1', 'two-signs'],
    ['45-60-00', 'minutes-too-large'],
    [`45°30'60"`, 'seconds-too-large'],
    ['45.5-30', 'part-not-whole'],
    ['45 1/0', 'zero-denominator'],
    ['N 91 E', 'quadrant-over-90'],
    [`N 90°00'01" E`, 'quadrant-over-90'],
    ['N 45-61 E', 'minutes-too-large'],
    ['N 45', 'not-a-quadrant'],
    ['45 E', 'not-a-quadrant'],
    ['E 45 N', 'not-a-quadrant'],
    ['N 45 S', 'not-a-quadrant'],
  ])('refuses "%s" as %s', (text, code) => {
    expect(parseAzimuth(text)).toMatchObject({ ok: false, code });
  });

  // Source: Wolf & Ghilani, Elementary Surveying, Ex. 10.4 (STANDARDS E9): azimuths as printed, departures and latitudes
  // computed again to 0.001 ft.
  it.each([
    ['126-55-17', 647.25, 517.451, -388.815],
    ['178-18-58', 203.03, 5.966, -202.942],
    ['15-31-54', 720.35, 192.889, 694.045],
    ['284-35-20', 610.24, -590.565, 153.708],
    ['206-09-42', 285.13, -125.715, -255.919],
  ])('gives the departure and latitude of the course %s, %f ft', (text, length, departure, latitude) => {
    const azimuth = degrees(text) / RADIAN;
    expect(Math.abs(length * Math.sin(azimuth) - departure)).toBeLessThan(0.001);
    expect(Math.abs(length * Math.cos(azimuth) - latitude)).toBeLessThan(0.001);
  });
});

describe('formatAzimuth', () => {
  it('prints degrees with decimals or minutes and seconds', () => {
    expect(formatAzimuth(45.504 / RADIAN)).toBe('45.504°');
    expect(formatAzimuth(45.504 / RADIAN, { decimals: 1 })).toBe('45.5°');
    expect(formatAzimuth(DMS / RADIAN, { dms: true })).toBe('45°30′15″');
    expect(formatAzimuth(DMS / RADIAN, { dms: true, plain: true })).toBe(`45°30'15"`);
    expect(formatAzimuth((5 + 4 / 60 + 3.25 / 3600) / RADIAN, { dms: true, decimals: 1 })).toMatch(
      /^5°04′03\.[23]″$/,
    );
  });

  it('carries and comes round to zero', () => {
    expect(formatAzimuth((45 + 59.5 / 60 + 29.6 / 3600) / RADIAN, { dms: true })).toBe('46°00′00″');
    expect(formatAzimuth(359.9999 / RADIAN)).toBe('0.000°');
    expect(formatAzimuth(359.9999 / RADIAN, { dms: true })).toBe('0°00′00″');
    expect(formatAzimuth(-90 / RADIAN)).toBe('270.000°');
    expect(() => formatAzimuth(Number.NaN)).toThrow(RangeError);
  });
});

describe('formatBearing', () => {
  it.each([
    [DMS, 'N 45°30′15″ E'],
    [180 - DMS, 'S 45°30′15″ E'],
    [180 + DMS, 'S 45°30′15″ W'],
    [360 - DMS, 'N 45°30′15″ W'],
    [0, 'N 0°00′00″ E'],
    [90, 'N 90°00′00″ E'],
    [180, 'S 0°00′00″ E'],
    [270, 'N 90°00′00″ W'],
    [359.9999, 'N 0°00′00″ E'],
    [89.9999, 'N 90°00′00″ E'],
    [90.0001, 'N 90°00′00″ E'],
    [44 + 59 / 60 + 59.6 / 3600, 'N 45°00′00″ E'],
  ])('prints %f° as %s', (angle, expected) => {
    expect(formatBearing(angle / RADIAN)).toBe(expected);
  });

  it('prints with the keyboard', () => {
    expect(formatBearing(DMS / RADIAN, { plain: true })).toBe(`N 45°30'15" E`);
  });
});

describe('a printed direction reads back within half a step', () => {
  const direction = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
  const apart = (text: string, radians: number) => {
    const difference = Math.abs(degrees(text) - radians * RADIAN) % 360;
    return Math.min(difference, 360 - difference);
  };
  const FLOAT_DEGREES = 1e-10;

  it('as decimal degrees', () => {
    fc.assert(
      fc.property(direction, fc.integer({ min: 0, max: 6 }), (radians, decimals) => {
        expect(apart(formatAzimuth(radians, { decimals }), radians)).toBeLessThanOrEqual(
          10 ** -decimals / 2 + FLOAT_DEGREES,
        );
      }),
    );
  });

  it('as degrees, minutes and seconds, and as a bearing', () => {
    fc.assert(
      fc.property(direction, fc.integer({ min: 0, max: 2 }), fc.boolean(), (radians, decimals, plain) => {
        const step = 10 ** -decimals / 3600;
        const azimuth = formatAzimuth(radians, { dms: true, decimals, plain });
        expect(apart(azimuth, radians)).toBeLessThanOrEqual(step / 2 + FLOAT_DEGREES);
        const bearing = formatBearing(radians, { decimals, plain });
        expect(apart(bearing, radians)).toBeLessThanOrEqual(step / 2 + FLOAT_DEGREES);
      }),
    );
  });
});
