import { newSite, ruleValue } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { sameTreatment, treatedAs } from './treatedAs';

const site = newSite({
  id: 's',
  name: '',
  createdAt: '2026-01-01T00:00:00Z',
  units: { length: 'm', diameter: 'mm', direction: 'azimuth' },
});

describe('a thing treated otherwise', () => {
  const clear = { as: 'clear', clearance: 3 } as const;
  const cost = { as: 'cost', perMetre: 4 } as const;

  it('is treated as usual where that is what is asked', () => {
    expect(treatedAs(site, clear, 'clear')).toBe(clear);
    expect(treatedAs(site, cost, 'cost')).toBe(cost);
  });

  it('is kept as clear of as a service where it only cost, never touched', () => {
    const kept = ruleValue(site, 'otherService');
    expect(kept).toBeGreaterThan(0);
    expect(treatedAs(site, cost, 'clear')).toEqual({ as: 'clear', clearance: kept });
  });

  it('costs as much again, or nothing', () => {
    expect(treatedAs(site, clear, 'cost')).toEqual({ as: 'cost', perMetre: 1 });
    expect(treatedAs(site, clear, 'free')).toEqual({ as: 'free' });
  });

  it('is the same as what it is equal to, and as nothing else', () => {
    const all = [
      clear,
      { as: 'clear', clearance: 2 },
      cost,
      { as: 'cost', perMetre: 3 },
      { as: 'free' },
    ] as const;
    for (const a of all) for (const b of all) expect(sameTreatment(a, { ...b })).toBe(a === b);
  });
});
