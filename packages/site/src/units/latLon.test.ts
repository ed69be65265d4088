import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLatLon, parseLatLon } from './latLon';

function place(text: string): readonly [number, number] {
  const read = parseLatLon(text);
  if (!read.ok) throw new Error(`${text}: ${read.code} ${JSON.stringify(read.values)}`);
  return [read.value.latitudeDeg, read.value.longitudeDeg];
}

// degrees, minutes and seconds by their definition
const LATITUDE = 40 + 26 / 60 + 46.3 / 3600;
const LONGITUDE = -(79 + 56 / 60 + 55.9 / 3600);

describe('parseLatLon', () => {
  it.each([
    '40.446195, -79.948862',
    '40.446195,-79.948862',
    '40.446195 -79.948862',
    '40.446195; -79.948862',
    '40,446195; -79,948862',
    '40,446195, -79,948862',
    '40,446195 -79,948862',
    ' 40.446195°, −79.948862° ',
    '40.446195 N, 79.948862 W',
    '40.446195° N 79.948862° W',
    'N 40.446195, W 79.948862',
    'N40.446195 W79.948862',
    'W 79.948862, N 40.446195',
    '79.948862 W, 40.446195 N',
    '40.446195 north, 79.948862 west',
  ])('reads %s', (text) => {
    const [latitude, longitude] = place(text);
    expect(latitude).toBeCloseTo(40.446195, 12);
    expect(longitude).toBeCloseTo(-79.948862, 12);
  });

  it.each([
    `40°26'46.3"N 79°56'55.9"W`,
    '40°26′46.3″ N, 79°56′55.9″ W',
    `40° 26' 46.3" N 79° 56' 55.9" W`,
    `N 40°26'46.3" W 79°56'55.9"`,
    '40 26 46.3 N 79 56 55.9 W',
    '40-26-46.3 N, 79-56-55.9 W',
    `40°26'46.3", -79°56'55.9"`,
    `W 79°56'55.9" N 40°26'46.3"`,
  ])('reads %s', (text) => {
    const [latitude, longitude] = place(text);
    expect(latitude).toBeCloseTo(LATITUDE, 12);
    expect(longitude).toBeCloseTo(LONGITUDE, 12);
  });

  it('takes the poles and the date line, and has one zero', () => {
    expect(place('90, 180')).toEqual([90, 180]);
    expect(place('90 S, 180 W')).toEqual([-90, -180]);
    expect(place('-0, 0')).toEqual([0, 0]);
  });

  it.each([
    ['', 'empty', {}],
    ['40.446195', 'not-a-position', { text: '40.446195' }],
    ['1, 2, 3', 'not-a-position', { text: '1, 2, 3' }],
    ['40 N, 79 N', 'not-a-position', { text: '40 n, 79 n' }],
    ['40 N 79', 'not-a-position', { text: '40 n 79' }],
    ['here', 'not-a-position', { text: 'here' }],
    ['90.0001, 0', 'latitude-out-of-range', { degrees: 90.0001, limit: 90 }],
    ['-97.7, 30.2', 'latitude-out-of-range', { degrees: -97.7, limit: 90 }],
    ['0, 180.5', 'longitude-out-of-range', { degrees: 180.5, limit: 180 }],
    ['200 W, 10 S', 'longitude-out-of-range', { degrees: -200, limit: 180 }],
    ['-40 N, 79 W', 'sign-and-hemisphere', { text: '-40' }],
    [`40°61'0"N 79°0'0"W`, 'minutes-too-large', { minutes: 61, limit: 60 }],
    [`40°6'60"N 79°0'0"W`, 'seconds-too-large', { seconds: 60, limit: 60 }],
    ['40.5 30 N, 79 W', 'part-not-whole', { part: 40.5 }],
  ])('refuses %j: %s', (text, code, values) => {
    expect(parseLatLon(text)).toEqual({ ok: false, code, values });
  });

  it('never throws', () => {
    const typed = fc.string({ unit: fc.constantFrom(...`0123456789.,;-+°'"nsew `) });
    fc.assert(fc.property(typed, (text) => typeof parseLatLon(text).ok === 'boolean'));
  });
});

describe('formatLatLon', () => {
  it('prints what is read back to a millimetre', () => {
    expect(formatLatLon({ latitudeDeg: 40.446195, longitudeDeg: -79.948862 })).toBe('40.446195, -79.948862');
    const degrees = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });
    fc.assert(
      fc.property(degrees(90), degrees(180), (latitudeDeg, longitudeDeg) => {
        const [latitude, longitude] = place(formatLatLon({ latitudeDeg, longitudeDeg }));
        expect(Math.abs(latitude - latitudeDeg)).toBeLessThanOrEqual(5.1e-9);
        expect(Math.abs(longitude - longitudeDeg)).toBeLessThanOrEqual(5.1e-9);
      }),
    );
  });
});
