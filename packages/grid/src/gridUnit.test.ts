import { describe, expect, it } from 'vitest';
import { gridUnitOf } from './gridUnit';

describe('a unit by its metres', () => {
  // the register writes the US survey foot as 0.304800609601219, proj4 as 0.3048006096012192
  it.each([
    [1, 'm'],
    [0.3048, 'ft'],
    [0.304800609601219, 'us-ft'],
    [0.3048006096012192, 'us-ft'],
    [1200 / 3937, 'us-ft'],
    [0.3047972654, 'other'], // Clarke's foot
    [1000, 'other'],
  ])('%s m is %s', (metres, name) => {
    expect(gridUnitOf(metres).name).toBe(name);
  });
});
