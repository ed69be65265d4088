import { forLink, type LinkChoice, leastChoice, openLink } from '@footmark/link';
import { derive, openSiteValue, type Site } from '@footmark/site';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomSite } from './randomSites';
import { fragmentOf, fullSite, sampleNames, sampleSite } from './samples';

const everything: LinkChoice = { address: true, notes: true, coordinates: true };

const choices = fc.record({ address: fc.boolean(), notes: fc.boolean(), coordinates: fc.boolean() });

const SEQUENCES = 40;
/** Milliseconds: some ten times what it takes, for a machine that is busy. */
const PATIENCE_MS = 120_000;

function there(site: Site, choice: LinkChoice): Site {
  const opened = openLink(fragmentOf(site, choice));
  if (!opened.ok || opened.is !== 'site') throw new Error(JSON.stringify(opened));
  expect(opened.migratedFrom).toBeNull();
  return opened.site;
}

describe('a site that goes through a link', () => {
  it.each([
    ...sampleNames.map((name) => [name, sampleSite(name)] as const),
    ['a site of everything', fullSite()] as const,
  ])('%s comes back bit for bit, with all and with the least', (_, site) => {
    for (const choice of [everything, leastChoice])
      expect(there(site, choice)).toStrictEqual(forLink(site, choice));
  });

  it.each(sampleNames)(
    '%s after random edits comes back bit for bit, whatever goes along',
    (name) => {
      const sample = sampleSite(name);
      fc.assert(
        fc.property(fc.integer({ min: 1, max: 1e6 }), choices, (seed, choice) => {
          const site = randomSite(sample, seed);
          const sent = forLink(site, choice);
          expect(openSiteValue(sent)).toStrictEqual({ ok: true, site: sent, migratedFrom: null });
          expect(there(site, choice)).toStrictEqual(sent);
        }),
        { numRuns: SEQUENCES },
      );
    },
    PATIENCE_MS,
  );

  it.each(sampleNames)('%s has its marks where they were, to the tenth of a millimetre', (name) => {
    const site = sampleSite(name);
    const marks = (of: Site) => derive(of).marks.map(({ label, place }) => ({ label, ...place?.at }));
    const before = marks(site);
    for (const [i, mark] of marks(there(site, leastChoice)).entries()) {
      expect(mark.label).toBe(before[i]?.label);
      expect(Math.abs((mark.x ?? 0) - (before[i]?.x ?? 0))).toBeLessThan(1e-4);
      expect(Math.abs((mark.y ?? 0) - (before[i]?.y ?? 0))).toBeLessThan(1e-4);
    }
  });
});
