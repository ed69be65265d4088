import { addDig, changeRule, fitRuns, openSiteValue, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import sample from '../../../packages/site/samples/rear-alley.json';
import { derivedFrom } from '../session/siteSession';
import { diggingFrom } from './digging';

const RANK = { must: 0, should: 1, note: 2 };

function sampleSite(): Site {
  const opened = openSiteValue(sample);
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return opened.site;
}

const said = { name: '', note: '' } as const;
const withPit = (site: Site) =>
  addDig(site, { dig: { id: 'd1', is: 'pit', at: { run: 'r1', reading: 'a8' }, ...said } });
const withTrench = (site: Site) =>
  addDig(site, { dig: { id: 'd2', is: 'trench', path: 'p1', from: 11, to: 18, ...said } });

describe('what stands in the way', () => {
  it('is ranked, the most pressing first', () => {
    const { findings } = diggingFrom(withTrench(sampleSite()), null);
    const ranks = findings.map((f) => RANK[f.severity]);
    expect(new Set(ranks).size).toBe(3);
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  });

  it('is computed once for each state of the site and each fit of it', () => {
    const site = withPit(sampleSite());
    const fit = fitRuns(site, derivedFrom(site));
    expect(diggingFrom(site, fit)).toBe(diggingFrom(site, fit));
    expect(diggingFrom(site, null)).not.toBe(diggingFrom(site, fit));
  });

  it('has no size for a pit before the fit says how large its hole is, and says so', () => {
    const site = withPit(sampleSite());
    const before = diggingFrom(site, null);
    expect(before.excavations[0]?.bottom).toBeNull();
    expect(before.findings.map((f) => f.code)).toContain('pit-without-size');
    const fit = fitRuns(site, derivedFrom(site));
    const after = diggingFrom(site, fit);
    const hole = fit.marks.get('a8')?.zone.hole;
    // room to work, a foot, on all sides
    expect(after.excavations[0]?.bottom?.width).toBeCloseTo((hole?.width ?? Number.NaN) + 2 * 0.3048, 9);
    expect(after.findings.map((f) => f.code)).not.toContain('pit-without-size');
  });

  it('lists what a rule asks to stay far from, however far that is', () => {
    const site = sampleSite();
    const far = changeRule(site, { change: { rule: 'waterService', value: 200, who: '', why: '' } });
    expect(diggingFrom(far, null).clearances.length).toBeGreaterThan(
      diggingFrom(site, null).clearances.length,
    );
  });
});
