import { usualAsk } from '@footmark/reroute';
import { derive, openSiteValue } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import sample from '../../../packages/site/samples/rear-alley.json';
import { lookForWays } from './lookForWays';

const opened = openSiteValue(sample);
if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
const { site } = opened;
const ask = usualAsk(derive(site));
if (ask === null) throw new Error('the sample has no pipe');
const today = '2026-06-01';

describe('where there is nothing to look for', () => {
  it('is said to be for its stations', () => {
    const found = lookForWays({ site, ask: { ...ask, from: 5, to: { is: 'station', station: 5 } }, today });
    expect(found).toEqual({ is: 'nothing', why: 'nothing-between' });
  });

  it('is said to be for a pipe without a line', () => {
    const paths = site.paths.map((p) => (p.id === ask.path ? { ...p, vertices: p.vertices.slice(0, 1) } : p));
    const found = lookForWays({ site: { ...site, paths, runs: [] }, ask, today });
    expect(found).toEqual({ is: 'nothing', why: 'no-line' });
  });
});
