import { describe, expect, it } from 'vitest';
import { yard } from '../testing/yard';
import type { SettingRow } from './settings';
import { sigmaOf } from './sigmaOf';
import { sigmaNames, sigmas } from './sigmas';

describe('sigmas', () => {
  it.each(Object.entries<SettingRow>(sigmas))('%s says where it comes from', (_, row) => {
    expect(row.title).not.toBe('');
    expect(Number.isFinite(row.value)).toBe(true);
    expect(row.value).toBeGreaterThan(0);
    if (row.basis === 'practice') expect(row.title).toBe('common practice, no source');
    else {
      expect(row.edition).not.toBe('');
      expect(row.clause).not.toBe('');
    }
  });

  it('of locates are told as 95 % of one axis: 1.96 standard deviations (any table of the normal distribution)', () => {
    // plus or minus, in metres and as shares of the depth; PAS 128:2014, Table 1, from memory
    const told = { locateCrossed: 0.15, locateCrossedShare: 0.15, locatePeak: 0.25, locatePeakShare: 0.4 };
    for (const [name, limit] of Object.entries(told)) {
      expect(1.959964 * (sigmas[name as keyof typeof told].value as number)).toBeCloseTo(limit, 4);
    }
  });

  it('are in the order of how sure a locate is: seen, both ways, peak only, in passing', () => {
    const { exposed, locateCrossed, locatePeak, locateRough } = sigmas;
    const values = [exposed, locateCrossed, locatePeak, locateRough].map((row) => row.value);
    expect(values).toEqual(values.toSorted((a, b) => a - b));
    expect(new Set(values).size).toBe(4);
  });
});

describe('sigmaOf', () => {
  it("is the site's own where it has one, and the table's where not", () => {
    const site = { ...yard(), sigmas: { counter: 0.07 } };
    for (const name of sigmaNames) {
      expect(sigmaOf(site, name)).toBe(name === 'counter' ? 0.07 : sigmas[name].value);
    }
  });
});
