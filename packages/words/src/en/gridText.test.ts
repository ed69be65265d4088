import { describe, expect, it } from 'vitest';
import { gridFactorRows, gridNoteText, gridSystemText } from './gridText';

describe('a grid in words', () => {
  it('says which foot it is', () => {
    const zone = {
      kind: 'state-plane',
      epsg: 2272,
      name: 'Pennsylvania South',
      datum: 'NAD83',
      unit: { name: 'us-ft', metres: 1200 / 3937 },
      definition: '',
      area: null,
    } as const;
    expect(gridSystemText(zone)).toBe(
      'State Plane Pennsylvania South, NAD 83, US survey feet (1200/3937 m), EPSG 2272',
    );
    expect(
      gridSystemText({
        ...zone,
        kind: 'typed',
        epsg: null,
        datum: null,
        unit: { name: 'other', metres: 1000 },
      }),
    ).toBe('Pennsylvania South, units of 1000 m');
  });

  it('has factors to eight places, and says to which side the convergence is', () => {
    const factors = {
      convergence: (0.455920353 * Math.PI) / 180,
      pointScale: 1.000014609,
      conformal: true,
      elevationFactor: null,
      combined: null,
    };
    const [convergence, scale, elevation] = gridFactorRows(factors).map(({ text }) => text);
    expect(convergence).toBe('+0.4559°, grid north lies east of true north');
    expect(scale).toBe('1.00001461');
    expect(elevation).toBe('not known without a height');
    expect(gridFactorRows({ ...factors, convergence: -0.01 })[0]?.text).toContain('west');
  });

  // 260 parts in a million short: 0.026 ft in 100 ft
  it('says how much shorter the grid is than the ground', () => {
    expect(gridNoteText({ code: 'ground-is-not-grid', partsPerMillion: -260 })).toContain(
      'is 0.0260 % shorter than on the ground, 0.026 in every 100.',
    );
  });
});
