import { describe, expect, it } from 'vitest';
import { measureTruth } from './measure';

// The whole table is `pnpm truth`; these are few enough for every run. Limits: 95 % ± 3 standard deviations of a count of SITES
// (binomial), and the least share of blunders to be named.

const SITES = 250;

describe('simulated sites with a known truth', () => {
  const { sites, held, drawn, taken, blunders } = measureTruth(SITES, 41);

  it('have the true point in their 95 % zone in 95 % of the cases', () => {
    const deviation = Math.sqrt((0.95 * 0.05) / sites);
    expect(held / sites).toBeGreaterThan(0.95 - 3 * deviation);
    expect(held / sites).toBeLessThan(0.95 + 3 * deviation);
  });

  it('have no mark left out of that, as drawn and once the evidence was weighed', () => {
    // the marks of one site go wrong together: sites are what is counted
    const deviation = Math.sqrt((0.95 * 0.05) / sites);
    for (const { held: marksHeld, marks } of [drawn, taken]) {
      expect(marksHeld / marks).toBeGreaterThan(0.95 - 3 * deviation);
      expect(marksHeld / marks).toBeLessThan(0.95 + 3 * deviation);
    }
  });

  it('have smaller zones once the evidence was weighed', () => {
    expect(taken.meanSize).toBeLessThan(0.7 * drawn.meanSize);
  });

  it('have their worst blunder named first', () => {
    expect(blunders.large).toBeGreaterThan(30);
    expect(blunders.named / blunders.large).toBeGreaterThanOrEqual(0.8);
  });
});
